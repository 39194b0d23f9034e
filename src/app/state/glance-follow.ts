/** What a visit's judgement leaves at a glance for the car list: how far it is, the worst caution, where to go on. */
import { effect } from "@preact/signals";
import type { Assessment } from "../../core/assess/contract.js";
import type { PlaceTree } from "../../core/sheet/run.js";
import { t } from "../texts/round.js";
import type { Desk } from "./desk.js";
import { placesAtAGlance } from "./glance.js";
import { type Glance, keepGlance } from "./glance-kept.js";
import { capital, type Knowledge, placeName } from "./knowledge.js";
import type { TextShelf } from "./settings.js";
import type { PointAt } from "./standing.js";
import { type Stop, stopAt, stopsOf } from "./stops.js";
import { wayOf } from "./way.js";
import { recallPoint } from "./where-one-was.js";

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

function glanceOf(
  known: Knowledge,
  tree: PlaceTree,
  stops: readonly Stop[],
  assessment: Assessment,
  spot: PointAt | undefined,
  quiet: boolean,
): Glance {
  const stop = spot && stopAt(stops, spot);
  const caution = quiet ? undefined : worstDue(known, assessment.cautions);
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
    places: placesAtAGlance(known, tree, stops, assessment, spot?.place, quiet),
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
    const quiet = opened.state.closed === undefined && wayOf(shelf, opened.state).quiet;
    const stops = stopsOf(known, opened.state.opened?.value.who ?? "technician", assessment, opened.state.replies);
    keepGlance(
      shelf,
      desk.stream,
      glanceOf(known, tree, stops, assessment, recallPoint(shelf, desk.stream, opened.state.replies), quiet),
    );
  });
}
