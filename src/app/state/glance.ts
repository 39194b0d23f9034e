/**
 * What the car list shows of the last visit at a glance, remembered so that the list needs no judging: how far the
 * round is, which places are inked, the worst mark per place. Disposable; never part of the record.
 */
import type { Assessment } from "../../core/assess/contract.js";
import type { VisitState } from "../../core/record/index.js";
import type { PlaceTree } from "../../core/sheet/run.js";
import { type Grade, levelOf } from "../../core/terms/index.js";
import { t } from "../texts/index.js";
import { type Knowledge, placeName } from "./knowledge.js";
import type { TextShelf } from "./settings.js";
import type { PointAt } from "./standing.js";
import { type Stop, stopAt } from "./stops.js";

export interface GlancePlace {
  readonly id: string;
  readonly look: "not-looked" | "done" | "here";
  readonly at?: readonly [number, number];
  readonly mark?: Grade;
  readonly words: string;
  readonly says: string;
}
export interface Glance {
  readonly done: number;
  readonly all: number;
  /** `Rear left, 5 of 12 points`. */
  readonly spot?: string;
  readonly places: readonly GlancePlace[];
  readonly danger: boolean;
}

/** The places of a visit with how they stand. `quiet` leaves grades away, as a buyer's screen does while looking. */
export function placesAtAGlance(
  known: Knowledge,
  tree: PlaceTree,
  stops: readonly Stop[],
  assessment: Pick<Assessment, "faults">,
  here: string | undefined,
  quiet: boolean,
): readonly GlancePlace[] {
  const byPlace = new Map<string, { done: number; all: number }>();
  for (const stop of stops) {
    const sum = byPlace.get(stop.place) ?? { done: 0, all: 0 };
    byPlace.set(stop.place, { done: sum.done + stop.done, all: sum.all + stop.asked.length });
  }
  return [...byPlace]
    .filter(([place]) => place !== "car")
    .map(([id, { done, all }]) => {
      const worst = assessment.faults
        .filter((fault) => fault.place === id)
        .reduce<Grade | undefined>(
          (bad, fault) => (bad !== undefined && levelOf(bad) >= levelOf(fault.grade) ? bad : fault.grade),
          undefined,
        );
      const at = tree.at(id);
      return {
        id,
        look: id === here ? "here" : done === all ? "done" : "not-looked",
        words: placeName(known, id),
        says: t("round.place-says", { done, all }),
        ...(at ? { at } : {}),
        ...(worst !== undefined && !quiet ? { mark: worst } : {}),
      };
    });
}

export function glanceOf(
  known: Knowledge,
  tree: PlaceTree,
  stops: readonly Stop[],
  visit: VisitState,
  assessment: Assessment,
  spot: PointAt | undefined,
): Glance {
  const stop = spot && stopAt(stops, spot);
  return {
    done: stops.reduce((sum, one) => sum + one.done, 0),
    all: stops.reduce((sum, one) => sum + one.asked.length, 0),
    ...(stop
      ? { spot: t("cars.go-on-says", { place: placeName(known, stop.place), done: stop.done, all: stop.asked.length }) }
      : {}),
    places: placesAtAGlance(known, tree, stops, assessment, spot?.place, visit.opened?.value.who === "buyer"),
    danger: assessment.cautions.some((caution) => caution.signal === "danger"),
  };
}

const keyOf = (visit: string): string => `leadlamp.glance.${visit}`;

export const keepGlance = (shelf: TextShelf, visit: string, glance: Glance): void =>
  shelf.put(keyOf(visit), JSON.stringify(glance));

/** What was remembered; undefined when nothing was or it is of another shape. */
export function recallGlance(shelf: TextShelf, visit: string): Glance | undefined {
  try {
    const kept: unknown = JSON.parse(shelf.get(keyOf(visit)) ?? "null");
    if (typeof kept !== "object" || kept === null || !("places" in kept) || !Array.isArray(kept.places))
      return undefined;
    const places = kept.places.every(
      (place: unknown) => typeof place === "object" && place !== null && "id" in place && "look" in place,
    );
    const counted = "done" in kept && typeof kept.done === "number" && "all" in kept && typeof kept.all === "number";
    // Written by keepGlance only; anything else was refused above.
    return places && counted ? (kept as unknown as Glance) : undefined;
  } catch {
    return undefined;
  }
}
