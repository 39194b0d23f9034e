/** Puts what is due again first in each car state of a visit. Decides nothing that is asked. */
import { type Signal, signal } from "@preact/signals";
import type { Asked, Assessment } from "../../core/assess/contract.js";
import { dueFirst } from "../../core/plan/index.js";
import type { VisitState } from "../../core/record/index.js";
import type { DeskNeeds, Linked } from "./desk.js";
import { dueIn } from "./due-earlier.js";
import { dueAt } from "./due-points.js";
import { isAskedHere } from "./stops.js";

/** A round that begins waits so long at most for what is due to begin there; own choice. */
const PATIENCE_MS = 1500;

/** The way round the car was taken meanwhile. */
interface Meanwhile {
  readonly isOver: Signal<boolean>;
  /** How much was said when it began, and when what is due became known. */
  readonly from: number;
  at?: number;
}

const meanwhiles = new WeakMap<DeskNeeds["journal"], Map<string, Meanwhile>>();

function meanwhileOf({ journal }: Pick<DeskNeeds, "journal">, { stream, ledger }: VisitState): Meanwhile {
  const own = meanwhiles.get(journal) ?? new Map<string, Meanwhile>();
  meanwhiles.set(journal, own);
  const there = own.get(stream);
  if (there) return there;
  const isOver = signal(false);
  setTimeout(() => {
    isOver.value = true;
  }, PATIENCE_MS);
  const made = { isOver, from: ledger.log.size };
  own.set(stream, made);
  return made;
}

/** Whether something was said on the way meanwhile: then the order changes with the next reply, not between two. */
function isHeld(journal: DeskNeeds["journal"], { stream, ledger }: VisitState): boolean {
  const meanwhile = meanwhiles.get(journal)?.get(stream);
  if (!meanwhile) return false;
  const size = ledger.log.size;
  meanwhile.at ??= size;
  return size !== meanwhile.from && meanwhile.at === size;
}

/**
 * The way round the car until it is known what is due, and where that can't be known. Undefined for a moment in a visit in
 * which nothing is said yet. What this person is not asked comes after.
 */
export function inDueOrder(
  judged: Assessment,
  visit: VisitState,
  set: { readonly laid: Pick<Linked["laid"], "known"> },
  needs: DeskNeeds,
): Assessment | undefined {
  const due = dueIn(needs, visit);
  if (due === null) return judged;
  if (!due?.looks) {
    const { isOver } = meanwhileOf(needs, visit);
    return due === undefined && visit.replies.size === 0 && !isOver.value ? undefined : judged;
  }
  if (isHeld(needs.journal, visit)) return judged;
  meanwhiles.get(needs.journal)?.delete(visit.stream);
  const who = visit.opened?.value.who ?? "technician";
  const isHere = (one: Asked): boolean => isAskedHere(set.laid.known, who, one);
  const here = dueFirst(judged.asked.filter(isHere), (one) => dueAt(due, one) !== undefined);
  return { ...judged, asked: [...here, ...judged.asked.filter((one) => !isHere(one))] };
}
