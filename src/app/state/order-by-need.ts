/** Fetches what orders a visit by something else than the way round the car, when one first wants it: most never do. Orders nothing itself. */
import { signal } from "@preact/signals";
import type { Asked, Assessment, ValueOrder, Worth } from "../../core/assess/index.js";
import type { VisitState } from "../../core/record/index.js";
import type { DeskNeeds, Linked } from "./desk.js";
import { wayOf } from "./way.js";

/** Read in the effects and screens that wait for it. Null: it did not come, and the way round the car has to do. */
function byNeed<Fetched>(load: () => Promise<Fetched>): () => Fetched | null | undefined {
  const fetched = signal<Fetched | null | undefined>(undefined);
  let isAsked = false;
  return () => {
    if (!isAsked) {
      isAsked = true;
      load().then(
        (there) => {
          fetched.value = there;
        },
        () => {
          fetched.value = null;
        },
      );
    }
    return fetched.value;
  };
}

const byValue = byNeed(async () => {
  const { fitting: fits, inOrder: puts, worthsOf } = await import("./asked-order.js");
  return { fitting: fits, inOrder: puts, worthsOf };
});
const byDue = byNeed(async () => (await import("./due-order.js")).inDueOrder);

/** What each visit was last judged with, by its stream. */
const judgedWith = new Map<string, Linked>();

/** The judgement with its points in the order this visit is looked through in; undefined until that order is there. */
export function inOrder(judged: Assessment, visit: VisitState, set: Linked, needs: DeskNeeds): Assessment | undefined {
  judgedWith.set(visit.stream, set);
  const { order } = wayOf(needs.remembered, visit);
  if (order === "walk") return judged;
  if (order === "due") {
    const puts = byDue();
    return puts === null ? judged : puts?.(judged, visit, set, needs);
  }
  const there = byValue();
  return there === null ? judged : there?.inOrder(judged, visit, set);
}

/** What of these points there is time for in so many seconds, in order of value, and how many at the end there is not. */
export function fitting(visit: string, asked: readonly Asked[], seconds: number): ValueOrder | undefined {
  const set = judgedWith.get(visit);
  return set && byValue()?.fitting(set, asked, seconds);
}

/** The worth of every point of a visit's sheets; undefined until that can be told. */
export function worthIn(visit: string): ReadonlyMap<string, Worth> | undefined {
  const set = judgedWith.get(visit);
  return set && byValue()?.worthsOf(set);
}
