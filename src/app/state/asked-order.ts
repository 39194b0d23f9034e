/** Puts what is asked in the order this visit is looked through in. Decides nothing that is asked. */
import {
  type Asked,
  type Assessment,
  type StateMarks,
  type ValueOrder,
  valueOrder,
  type Worth,
  worthOf,
} from "../../core/assess/index.js";
import { lookingTimeOf, type VisitState } from "../../core/record/index.js";
import { engineIn } from "../../core/sheet/run.js";
import type { Linked } from "./desk.js";
import { isAskedHere } from "./stops.js";

/** What of the open sheets an order is made from. */
type Ordered = Pick<Linked, "engine" | "common" | "sheets"> & { readonly laid: Pick<Linked["laid"], "known"> };

const worths = new WeakMap<Linked["engine"], ReadonlyMap<string, Worth>>();
/** The worth of every point of the open sheets: it depends on them alone. */
export function worthsOf({ engine, common, sheets }: Ordered): ReadonlyMap<string, Worth> {
  const made = worths.get(engine) ?? worthOf(engine, common, sheets);
  worths.set(engine, made);
  return made;
}

const marksIn =
  ({ laid: { known } }: Ordered) =>
  (id: string): StateMarks => {
    const state = known.states.get(id);
    return state ? { lifted: state.lifted, engine: engineIn(state) } : {};
  };

/** What of these points there is time for in so many seconds, in order of value, and how many at the end there is not. */
export const fitting = (set: Ordered, asked: readonly Asked[], seconds: number): ValueOrder =>
  valueOrder(asked, worthsOf(set), seconds, marksIn(set));

/** How points were ordered last: a reply seldom changes what is asked, and then the order stands as it is. */
interface Put {
  readonly here: readonly Asked[];
  readonly seconds: number | undefined;
  /** Where each stood in `here`. */
  readonly from: readonly number[];
}
const lastPut = new WeakMap<Linked["engine"], Put>();

const isSame = (a: Asked, b: Asked | undefined): boolean =>
  a === b ||
  (a.point === b?.point && a.place === b.place && a.state === b.state && a.with.join(" ") === b.with.join(" "));

function putInOrder(set: Ordered, here: readonly Asked[], seconds: number | undefined): readonly Asked[] {
  const last = lastPut.get(set.engine);
  if (
    last?.seconds === seconds &&
    last?.here.length === here.length &&
    here.every((one, at) => isSame(one, last.here[at]))
  )
    return last.from.flatMap((at) => here[at] ?? []);
  const places = new Map(here.map((one, at) => [one, at]));
  const { asked } = valueOrder(here, worthsOf(set), seconds, marksIn(set));
  lastPut.set(set.engine, { here, seconds, from: asked.flatMap((one) => places.get(one) ?? []) });
  return asked;
}

/** The judgement with its points in order of value; what this person is not asked comes after. */
export function inOrder<Judged extends Pick<Assessment, "asked">>(
  judged: Judged,
  visit: Pick<VisitState, "opened" | "clock" | "ledger">,
  set: Ordered,
): Judged {
  const who = visit.opened?.value.who ?? "technician";
  const here: Asked[] = [];
  const elsewhere: Asked[] = [];
  for (const one of judged.asked) (isAskedHere(set.laid.known, who, one) ? here : elsewhere).push(one);
  const minutes = lookingTimeOf(visit)?.minutes;
  const asked = putInOrder(set, here, minutes === undefined ? undefined : minutes * 60);
  return { ...judged, asked: [...asked, ...elsewhere] };
}
