/** Puts what is asked in the order this visit is looked through in. Decides nothing that is asked. */
import {
  type Asked,
  type Assessment,
  type ValueOrder,
  valueOrder,
  type Worth,
  worthOf,
} from "../../core/assess/index.js";
import { lookingTimeOf, type VisitState } from "../../core/record/index.js";
import type { Linked } from "./desk.js";
import { isAskedHere } from "./stops.js";

/** The worth of points depends on the sheets alone. */
const worths = new WeakMap<Linked["engine"], ReadonlyMap<string, Worth>>();
function worthsOf({ engine, common, sheets }: Linked): ReadonlyMap<string, Worth> {
  const made = worths.get(engine) ?? worthOf(engine, common, sheets);
  worths.set(engine, made);
  return made;
}

const liftedIn =
  ({ laid: { known } }: Linked) =>
  (state: string): boolean =>
    known.states.get(state)?.lifted === true;

/** What of these points there is time for in so many seconds, in order of value, and how many at the end there is not. */
export const fitting = (set: Linked, asked: readonly Asked[], seconds: number): ValueOrder =>
  valueOrder(asked, worthsOf(set), seconds, liftedIn(set));

/** The judgement with its points in order of value; what this person is not asked comes after. */
export function inOrder(judged: Assessment, visit: VisitState, set: Linked): Assessment {
  const who = visit.opened?.value.who ?? "technician";
  const here = judged.asked.filter((one) => isAskedHere(set.laid.known, who, one));
  const elsewhere = judged.asked.filter((one) => !here.includes(one));
  const minutes = lookingTimeOf(visit)?.minutes;
  const { asked } = valueOrder(here, worthsOf(set), minutes === undefined ? undefined : minutes * 60, liftedIn(set));
  return { ...judged, asked: [...asked, ...elsewhere] };
}
