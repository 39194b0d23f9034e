/** Undo. Refuses to know screens; texts are theirs. */
import type { Act, Draft, FoldedState, IdText, Ledger, Stamp } from "./contract.js";
import { draft } from "./draft.js";
import { byCode, idText, isEntry, parseId } from "./identity.js";
import type { Known } from "./kinds.js";
import { knownIn } from "./ledger.js";
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
export const NO_STEP: ReadonlySet<string> = new Set(["car.begun", "visit.opened", "plan.begun", "undo", "erase"]);

export interface Placed {
  readonly entry: Known;
  readonly id: IdText;
  /** Highest stamp up to here in its stream: keeps seq's order where a clock was set back. */
  readonly at: Stamp;
}

/** A writer's entries in the order they were made, oldest first. */
export function madeBy(ledger: Ledger, writer: string): readonly Placed[] {
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

/** Entries put together by the act they were made in, newest act first. */
export function stepsOf(placed: readonly Placed[]): readonly Step[] {
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
