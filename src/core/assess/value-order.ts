/**
 * What is asked in order of value against the clock: what can make one walk away first, in danger or in papers, and
 * within that place by place; what the time is not enough for comes last. Changes the order only: everything asked stays asked.
 */
import type { Asked } from "./contract.js";
import { roomFor } from "./value-room.js";
import { byChance, byWorth, type Row, rowsOf, type StateMarks } from "./value-row.js";
import type { Worth } from "./worth.js";

export interface ValueOrder {
  readonly asked: readonly Asked[];
  /** How many of them, at the end, the time is not enough for. */
  readonly beyond: number;
  /** Those a gate waits for or that can decide a major or dangerous fault, the worthiest first. */
  readonly gravest: readonly Asked[];
}

/**
 * `asked` comes in walking order. Without `seconds` there is no clock and everything fits. How long one has looked
 * already changes nothing: the order must not shift under the hand.
 */
export function valueOrder(
  asked: readonly Asked[],
  worths: ReadonlyMap<string, Worth>,
  seconds = Number.POSITIVE_INFINITY,
  marksOf: (state: string) => StateMarks = () => ({}),
): ValueOrder {
  const rows = rowsOf(asked, worths, marksOf);
  const fitting = roomFor(rows, seconds);
  const late = (row: Row): number => (fitting.has(row) ? 0 : 1);
  const ordered = rows.toSorted(
    (a, b) => late(a) - late(b) || a.state - b.state || a.lap - b.lap || a.place - b.place || byWorth(a, b),
  );
  return {
    asked: ordered.map(({ one }) => one),
    beyond: rows.length - fitting.size,
    gravest: rows
      .filter(({ lap }) => lap === 0)
      .toSorted(byChance)
      .map(({ one }) => one),
  };
}
