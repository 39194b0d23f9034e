/**
 * Places of a visit at a glance: how far each is looked at, and its worst mark. For the plan of the round, and
 * remembered for the car list.
 */

import { effect } from "@preact/signals";
import type { Assessment } from "../../core/assess/contract.js";
import type { VisitState } from "../../core/record/index.js";
import type { PlaceTree } from "../../core/sheet/run.js";
import { type Grade, levelOf } from "../../core/terms/index.js";
import { t } from "../texts/round.js";
import type { Desk } from "./desk.js";
import { type Glance, type GlancePlace, keepGlance } from "./glance-kept.js";
import { capital, type Knowledge, placeName } from "./knowledge.js";
import type { TextShelf } from "./settings.js";
import type { PointAt } from "./standing.js";
import { type Stop, stopAt, stopsOf } from "./stops.js";
import { recallPoint } from "./where-one-was.js";

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

/** Every caution's rank among those of its signal word: the order the shared files list them in. */
function worstDue(known: Knowledge, due: Assessment["cautions"]): Glance["caution"] {
  const listed = [...known.cautions.keys()];
  const worst = (signal: "danger" | "warning") =>
    due
      .filter((one) => one.signal === signal)
      .sort((a, b) => listed.indexOf(a.caution) - listed.indexOf(b.caution))
      .map((one) => ({ signal, not: known.words.cautions[one.caution]?.not ?? one.caution }))[0];
  return worst("danger") ?? worst("warning");
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
  const caution = worstDue(known, assessment.cautions);
  return {
    done: stops.reduce((sum, one) => sum + one.done, 0),
    all: stops.reduce((sum, one) => sum + one.asked.length, 0),
    ...(stop
      ? {
          spot: t("cars.go-on-says", {
            place: capital(placeName(known, stop.place)),
            done: stop.done,
            all: stop.asked.length,
          }),
        }
      : {}),
    places: placesAtAGlance(known, tree, stops, assessment, spot?.place, visit.opened?.value.who === "buyer"),
    ...(caution ? { caution } : {}),
  };
}

/** Remembers the glance of a visit whenever its judgement changes. */
export function followGlance(shelf: TextShelf, desk: Desk): void {
  effect(() => {
    const [known, tree, assessment] = [desk.known.value, desk.tree.value, desk.assessment.value];
    // A reply kept changes the judgement; one not kept yet is no news.
    const opened = desk.visit.peek();
    if (!known || !tree || !assessment || opened.is !== "open") return;
    const stops = stopsOf(known, opened.state.opened?.value.who ?? "technician", assessment, opened.state.replies);
    keepGlance(
      shelf,
      desk.stream,
      glanceOf(known, tree, stops, opened.state, assessment, recallPoint(shelf, desk.stream, opened.state.replies)),
    );
  });
}
