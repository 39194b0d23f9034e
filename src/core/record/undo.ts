/** Undo, redo and the history of a slot. Refuses to know screens; texts are theirs. */
import type { Act, Draft, FoldedState, IdText, Ledger, Stamp } from "./contract.js";
import { draft } from "./draft.js";
import { byCode, compareShown, idText, isEntry, parseId } from "./identity.js";
import type { Known } from "./kinds.js";
import { knownIn } from "./ledger.js";
import { standingIn } from "./standing.js";
import { compareStamps } from "./time.js";

/** One act that can be undone (or redone) in one step. */
export interface Step {
  /** What undo (or redo) has to name. */
  readonly ids: readonly IdText[];
  readonly kinds: readonly string[];
  readonly at: Stamp;
  readonly by: string;
}

/** Beginnings and openings are not offered as a step; erasing cannot be taken back. */
const NO_STEP: ReadonlySet<string> = new Set(["car.begun", "visit.opened", "plan.begun", "undo", "erase"]);

interface Placed {
  readonly entry: Known;
  readonly id: IdText;
  /** Highest stamp up to here in its stream: keeps seq's order where a clock was set back. */
  readonly at: Stamp;
}

/** A writer's entries in the order they were made, oldest first. */
function madeBy(ledger: Ledger, writer: string): readonly Placed[] {
  const own = [...ledger.log.values()].filter((one) => one.writer === writer && isEntry(one));
  own.sort((a, b) => byCode(a.stream, b.stream) || a.seq - b.seq || byCode(a.nonce, b.nonce));
  const placed: Placed[] = [];
  let highest: { readonly stream: string; readonly at: Stamp } | undefined;
  for (const logged of own) {
    const isHigher = highest?.stream !== logged.stream || compareStamps(logged.at, highest.at) > 0;
    highest = isHigher || !highest ? { stream: logged.stream, at: logged.at } : highest;
    const entry = knownIn(ledger, idText(logged));
    if (entry) placed.push({ entry, id: idText(logged), at: highest.at });
  }
  // Sorting is stable: within a stream seq's order holds.
  return placed.sort((a, b) => compareStamps(a.at, b.at));
}

/** Acts of this writer that stand undone by nobody, newest first. */
export function undoable(state: FoldedState, writer: string): readonly Step[] {
  const { ledger } = state;
  return stepsOf(madeBy(ledger, writer).filter(({ entry, id }) => !NO_STEP.has(entry.kind) && !ledger.dead.has(id)));
}

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

function stepsOf(placed: readonly Placed[]): readonly Step[] {
  const steps = new Map<string, { ids: IdText[]; kinds: string[]; at: Stamp; by: string }>();
  for (const { entry, id } of [...placed].reverse()) {
    const act = entry.act ?? id;
    const step = steps.get(act) ?? { ids: [], kinds: [], at: entry.at, by: entry.by };
    step.ids.unshift(id);
    if (!step.kinds.includes(entry.kind)) step.kinds.unshift(entry.kind);
    steps.set(act, step);
  }
  return [...steps.values()];
}

/** Undoes entries (or, naming undos, redoes); one draft per stream. What is undone already is left out. */
export function draftUndo(act: Act, state: FoldedState, ids: readonly IdText[]): readonly Draft[] {
  const named = ids.filter((id) => state.ledger.log.has(id) && !state.ledger.dead.has(id));
  return [...byStream(named)].map(([stream, of]) => draft(act, stream, "undo", { of }));
}

/** Brings back what these undos (a step of `redoable`) undid. */
export const draftRedo = draftUndo;

/** Ids by the stream of their entry. */
export function byStream(ids: readonly IdText[]): ReadonlyMap<string, readonly IdText[]> {
  const streams = new Map<string, IdText[]>();
  for (const id of new Set(ids)) {
    const stream = parseId(id)?.stream;
    if (stream === undefined) throw new Error(`${id} is no entry id`);
    streams.set(stream, [...(streams.get(stream) ?? []), id]);
  }
  return streams;
}

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
