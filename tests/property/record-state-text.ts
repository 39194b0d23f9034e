/** A folded state as one text, the same for equal states: what the laws of the record compare. Knows no law. */
import type { FoldedState, Logged, RecordState } from "../../src/core/record/index.js";
import { canonicalText } from "../../src/core/record/merge.js";

/** Everything a state holds; of the ledger's log the ids and whether a body is left. */
export function stateText(state: RecordState): string {
  const log = [...state.ledger.log].map(([id, logged]) => `${id}${logged.kind === undefined ? " stub" : ""}`);
  return canonicalText(plain({ ...state, ledger: { ...state.ledger, log: log.sort() } }));
}

/** What a state shows, for a file: maps as objects, the ledger left out. */
export function stateJson({ ledger: _ledger, ...shown }: FoldedState): unknown {
  return plain(shown);
}

function plain(value: unknown): unknown {
  if (value instanceof Map) return Object.fromEntries([...value].map(([key, inner]) => [String(key), plain(inner)]));
  if (value instanceof Set) return [...value].map(String).sort();
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, plain(inner)]));
}

/** One log as text, whatever its order. */
export const logText = (log: Iterable<Logged>): string => [...log].map(canonicalText).sort().join("\n");
