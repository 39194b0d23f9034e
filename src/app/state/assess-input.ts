/**
 * From the folded record to what assessing takes: the replies, facts, places and limits that stand. Pure; where
 * people differ, all that stands goes along.
 */
import type { AssessInput, EarlierVisit, StandingReply } from "../../core/assess/contract.js";
import type { CarState, FactValue, Odometer, VisitState } from "../../core/record/contract.js";
import type { CarLimit } from "../../core/sheet/run.js";
import { figureOf } from "./odometer.js";

/** Facts of the car that assessing knows by their own names. */
export const OWN_FACTS = { firstUsed: "first-used", country: "country", seat: "seat" } as const;

const newest = <T>(list: readonly { readonly value: T }[] | undefined): T | undefined => list?.at(-1)?.value;

/** When the car was looked at: the newest date that stands, ISO 8601. */
export const lookedOn = (visit: VisitState): string => newest(visit.on) ?? visit.opened?.value.on ?? "";

function odometerOf(
  list: readonly { readonly value: Odometer }[],
): { readonly value: number; readonly unit: string } | undefined {
  const stands = newest(list);
  const value = stands && figureOf(stands);
  return stands && value !== undefined ? { value, unit: stands.unit } : undefined;
}

/** Every reply that stands, several under one key where people differ. */
export const repliesOf = (visit: VisitState): readonly StandingReply[] =>
  [...visit.replies.values()].flatMap(({ key, standing }) => standing.map(({ id, value }) => ({ key, value, id })));

function carOf(car: CarState, limits: readonly CarLimit[]): AssessInput["car"] {
  const facts: Record<string, FactValue> = {};
  const otherFacts: Record<string, readonly FactValue[]> = {};
  for (const [name, standing] of car.facts) {
    const values = [...new Set(standing.map(({ value }) => value))];
    const [last] = values.slice(-1);
    if (last === undefined) continue;
    facts[name] = last;
    if (values.length > 1) otherFacts[name] = values.slice(0, -1);
  }
  const { firstUsed, country, seat } = {
    firstUsed: facts[OWN_FACTS.firstUsed],
    country: facts[OWN_FACTS.country],
    seat: facts[OWN_FACTS.seat],
  };
  return {
    facts,
    ...(Object.keys(otherFacts).length > 0 ? { otherFacts } : {}),
    limits,
    places: [...car.places.values()].flatMap((standing) => standing.map(({ value }) => value)),
    ...(firstUsed === undefined ? {} : { firstUsed: String(firstUsed) }),
    ...(typeof country === "string" ? { country } : {}),
    ...(seat === "left" || seat === "right" ? { seat } : {}),
  };
}

/** An earlier visit as comparing needs it. */
export function earlierOf(visit: VisitState): EarlierVisit {
  const odometer = odometerOf(visit.odometer);
  return { at: lookedOn(visit), ...(odometer ? { odometer } : {}), replies: repliesOf(visit) };
}

/** What assessing takes for one visit. `limits` are those in force when it was opened. */
export function assessInput(
  car: CarState,
  visit: VisitState,
  limits: readonly CarLimit[],
  earlier: readonly VisitState[],
): AssessInput {
  const odometer = odometerOf(visit.odometer);
  return {
    at: lookedOn(visit),
    ...(odometer ? { odometer } : {}),
    who: visit.opened?.value.who ?? "technician",
    car: carOf(car, limits),
    sheets: visit.sheets.map(({ id }) => id),
    complaints: visit.complaints.map(({ value }) => value.complaint ?? value.text),
    replies: repliesOf(visit),
    earlier: earlier.map(earlierOf),
    exposure: 0,
  };
}
