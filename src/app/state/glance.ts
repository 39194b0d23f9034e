/** Places of a visit at a glance: how far each is looked at, and its worst mark. */
import type { Assessment } from "../../core/assess/contract.js";
import type { PlaceTree } from "../../core/sheet/run.js";
import { type Grade, levelOf } from "../../core/terms/index.js";
import { t } from "../texts/round.js";
import type { GlancePlace } from "./glance-kept.js";
import { capital, type Knowledge, placeName } from "./knowledge.js";
import type { Stop } from "./stops.js";

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
        words: capital(placeName(known, id)),
        says: t("round.place-says", { done, all }),
        ...(at ? { at } : {}),
        ...(worst !== undefined && !quiet ? { mark: worst } : {}),
      };
    });
}
