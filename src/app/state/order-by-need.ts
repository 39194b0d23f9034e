/** Fetches the order of value when a visit first wants it: most never do. Orders nothing itself. */
import { signal } from "@preact/signals";
import type { Asked, Assessment, ValueOrder, Worth } from "../../core/assess/index.js";
import type { VisitState } from "../../core/record/index.js";
import type { Linked } from "./desk.js";
import type { TextShelf } from "./settings.js";
import { wayOf } from "./way.js";

type Ordering = Pick<typeof import("./asked-order.js"), "fitting" | "inOrder" | "worthsOf">;

/** Read in the effects and screens that wait for it. Null: it did not come, and the way round the car has to do. */
const ordering = signal<Ordering | null | undefined>(undefined);
let isAsked = false;
/** What each visit was last judged with, by its stream. */
const judgedWith = new Map<string, Linked>();

function fetched(): Ordering | null | undefined {
  if (!isAsked) {
    isAsked = true;
    import("./asked-order.js").then(
      ({ fitting: fits, inOrder: puts, worthsOf }) => {
        ordering.value = { fitting: fits, inOrder: puts, worthsOf };
      },
      () => {
        ordering.value = null;
      },
    );
  }
  return ordering.value;
}

/** The judgement with its points in the order this visit is looked through in; undefined until that order is there. */
export function inOrder(judged: Assessment, visit: VisitState, set: Linked, shelf: TextShelf): Assessment | undefined {
  judgedWith.set(visit.stream, set);
  if (!wayOf(shelf, visit).byValue) return judged;
  const there = fetched();
  return there === null ? judged : there?.inOrder(judged, visit, set);
}

/** What of these points there is time for in so many seconds, in order of value, and how many at the end there is not. */
export function fitting(visit: string, asked: readonly Asked[], seconds: number): ValueOrder | undefined {
  const set = judgedWith.get(visit);
  return set && fetched()?.fitting(set, asked, seconds);
}

/** The worth of every point of a visit's sheets; undefined until that can be told. */
export function worthIn(visit: string): ReadonlyMap<string, Worth> | undefined {
  const set = judgedWith.get(visit);
  return set && fetched()?.worthsOf(set);
}
