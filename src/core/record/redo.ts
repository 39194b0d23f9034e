/** Redo, and everything ever said in a slot: what the history page asks. Refuses to know screens; texts are theirs. */
import type { FoldedState, IdText, Ledger } from "./contract.js";
import { compareShown, idText } from "./identity.js";
import type { Known } from "./kinds.js";
import { knownIn } from "./ledger.js";
import { standingIn } from "./standing.js";
import { draftUndo, madeBy, NO_STEP, type Placed, type Step, stepsOf } from "./undo.js";

/** Undone acts that can come back, newest first: those undone since this writer's last other act. */
export function redoable(state: FoldedState, writer: string): readonly Step[] {
  const { ledger } = state;
  let undos: Placed[] = [];
  for (const placed of madeBy(ledger, writer)) {
    if (ledger.dead.has(placed.id)) continue;
    if (!NO_STEP.has(placed.entry.kind)) undos = [];
    else if (placed.entry.kind === "undo" && bringsBack(ledger, placed.entry.body.of)) undos.push(placed);
  }
  return stepsOf(undos);
}

/** Whether taking an undo back would bring back an act; an undo of an undo has nothing to redo. */
function bringsBack(ledger: Ledger, of: readonly IdText[]): boolean {
  return of.some((id) => {
    const entry = knownIn(ledger, id);
    return entry !== undefined && entry.kind !== "undo";
  });
}

/** Brings back what these undos (a step of `redoable`) undid. */
export const draftRedo = draftUndo;

/** One entry of a slot as the history list shows it. */
export interface Past {
  readonly entry: Known;
  readonly id: IdText;
  readonly is: "standing" | "replaced" | "undone";
}

/** Everything ever said in a slot and not erased, oldest first. `slot` e.g. from `replySlot`. */
export function historyOf(state: FoldedState, slot: string): readonly Past[] {
  const { ledger } = state;
  const standing = new Set(standingIn(ledger, slot).map(idText));
  const past: Past[] = [];
  for (const id of ledger.slots.get(slot) ?? []) {
    const entry = knownIn(ledger, id);
    if (!entry) continue;
    past.push({ entry, id, is: ledger.dead.has(id) ? "undone" : standing.has(id) ? "standing" : "replaced" });
  }
  return past.sort((a, b) => compareShown(a.entry, b.entry));
}
