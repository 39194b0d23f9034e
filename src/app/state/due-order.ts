/** Puts what is due again first in each car state of a visit. Decides nothing that is asked. */
import type { Asked, Assessment } from "../../core/assess/contract.js";
import { dueFirst } from "../../core/plan/index.js";
import type { VisitState } from "../../core/record/index.js";
import type { DeskNeeds, Linked } from "./desk.js";
import { dueIn } from "./due-earlier.js";
import { dueAt } from "./due-points.js";
import { isAskedHere } from "./stops.js";

/** Undefined until it is known what is due; as it is where nothing is. What this person is not asked comes after. */
export function inDueOrder(
  judged: Assessment,
  visit: VisitState,
  set: { readonly laid: Pick<Linked["laid"], "known"> },
  needs: DeskNeeds,
): Assessment | undefined {
  const due = dueIn(needs, visit);
  if (!due) return due === null ? judged : undefined;
  const who = visit.opened?.value.who ?? "technician";
  const isHere = (one: Asked): boolean => isAskedHere(set.laid.known, who, one);
  const here = dueFirst(judged.asked.filter(isHere), (one) => dueAt(due, one) !== undefined);
  return { ...judged, asked: [...here, ...judged.asked.filter((one) => !isHere(one))] };
}
