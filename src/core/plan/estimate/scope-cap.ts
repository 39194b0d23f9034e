/**
 * How far work may go before somebody is asked: a cap of minutes, of money, or both. Knows no estimate. The mark at
 * four fifths is common practice, no source.
 */
import type { Problem } from "../../terms/index.js";
import { figureProblems, MOST_MINUTES, MOST_MONEY } from "./checks.js";

/** What was allowed, and what is spent so far. */
export interface CapLine {
  readonly cap: number;
  /** Missing: not known, which is never taken for nothing. */
  readonly spent?: number;
}

export interface Caps {
  readonly minutes?: CapLine;
  /** Minor units, with tax. */
  readonly money?: CapLine;
}

/** `ask`: stop and ask, four fifths are spent; `reached`: stop, all is spent. `not-known` asks too. */
export type CapState = "within" | "ask" | "reached" | "not-known";

export interface CapTold {
  readonly what: "minutes" | "money";
  readonly state: CapState;
  readonly cap: number;
  readonly spent?: number;
  /** Below zero: spent beyond the cap. */
  readonly left?: number;
}

export interface ScopeCap {
  /** The gravest state of any cap; `within` where there is none. */
  readonly state: CapState;
  /** Which caps are in that state. */
  readonly by: readonly CapTold["what"][];
  /** Whether to stop and ask. */
  readonly ask: boolean;
  readonly caps: readonly CapTold[];
  readonly problems: readonly Problem[];
}

const GRAVITY: readonly CapState[] = ["within", "ask", "not-known", "reached"];

/** Where each cap stands, and whether to stop and ask. */
export function scopeCap({ minutes, money }: Caps): ScopeCap {
  const read = [
    ...(minutes === undefined ? [] : [capOf("minutes", minutes, MOST_MINUTES)]),
    ...(money === undefined ? [] : [capOf("money", money, MOST_MONEY)]),
  ];
  const caps = read.map(({ told }) => told);
  const state = GRAVITY[Math.max(0, ...caps.map((cap) => GRAVITY.indexOf(cap.state)))] ?? "not-known";
  return {
    state,
    by: caps.filter((cap) => cap.state === state).map(({ what }) => what),
    ask: state !== "within",
    caps,
    problems: read.flatMap(({ problems }) => problems),
  };
}

function capOf(
  what: CapTold["what"],
  { cap, spent }: CapLine,
  most: number,
): { readonly told: CapTold; readonly problems: readonly Problem[] } {
  const owner = (field: string) => ({ id: `cap of ${what}`, what: field, path: `${what}.${field}` });
  const problems = [...figureProblems(cap, most, owner("cap")), ...figureProblems(spent, most, owner("spent"))];
  if (spent === undefined || problems.length > 0) return { told: { what, state: "not-known", cap }, problems };
  // whole numbers on both sides: 80 % is reached at exactly four fifths
  const state = spent >= cap ? "reached" : spent * 5 >= cap * 4 ? "ask" : "within";
  return { told: { what, state, cap, spent, left: cap - spent }, problems };
}
