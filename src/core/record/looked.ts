/** What stands in a folded car or visit, read as one value: the date, the odometer's figure, places, limits. Judges nothing. */
import type { CarLimit, PlaceChange } from "../sheet/car.js";
import type { CarState, Odometer, Stands, VisitState } from "./contract.js";
import { byCode } from "./identity.js";

/** When the car was looked at, as ISO text: the date said last. */
export const lookedOn = (visit: VisitState): string => newest(visit.on) ?? "";

/** Figures standing in the limits book; two where people differ, and then the worse grade rules. */
export const limitsOf = (car: CarState): readonly CarLimit[] => valuesOf(car.limits);

/** A car's changes of places; where one says there is and another there isn't, there is: it will be looked at. */
export function placesOf(car: CarState): readonly PlaceChange[] {
  const changes: PlaceChange[] = [];
  for (const [, standing] of sorted(car.places)) {
    const adding = standing.find(({ value }) => "add" in value);
    const one = adding ?? standing[0];
    if (one) changes.push(one.value);
  }
  return changes;
}

/**
 * The figure of an odometer text: digits, grouped in threes by blank, point, comma or apostrophe, or with up to two
 * decimals. Undefined for anything else, never a guess.
 */
export function figureOf({ value }: Odometer): number | undefined {
  const typed = value.trim().replace(/[\u00a0\u202f\u2009]/g, " ");
  if (/^\d{1,3}(?:([ .,'])\d{3})(?:\1\d{3})*$/.test(typed)) return Number(typed.replace(/[ .,']/g, ""));
  return /^\d{1,9}(?:[.,]\d{1,2})?$/.test(typed) ? Number(typed.replace(",", ".")) : undefined;
}

/** What was said last. */
export const newest = <T>(list: readonly Stands<T>[] | undefined): T | undefined => list?.at(-1)?.value;
/** The slots of a map in one order, whatever order they were filled in. */
export const sorted = <T>(map: ReadonlyMap<string, T>): readonly (readonly [string, T])[] =>
  [...map].sort(([a], [b]) => byCode(a, b));
const valuesOf = <T>(map: ReadonlyMap<string, readonly Stands<T>[]>): readonly T[] =>
  sorted(map).flatMap(([, standing]) => standing.map(({ value }) => value));
