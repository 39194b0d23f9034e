/**
 * Who carries the shared minutes, where a share per job is wanted: each state is divided equally among the jobs that
 * need it. For such costs that is the Shapley value: it adds up, and no job carries more than it would alone.
 */
import type { Three } from "../terms.js";
import { once, opened } from "./hours.js";
import type { ReachedJob } from "./terms.js";

export interface JobShare {
  readonly job: string;
  /** Whole minutes; all shares together are exactly the minutes of the visit. */
  readonly minutes: Three;
}

/** A share before rounding: `over` ÷ `under`. */
export interface ExactShare {
  readonly job: string;
  readonly over: bigint;
  readonly under: bigint;
}

/** Each job's own minutes and its part of what it shares, as a fraction; `part` 0 low, 1 likely, 2 high. */
export function exactShares(jobs: readonly ReachedJob[], part: 0 | 1 | 2): readonly ExactShare[] {
  return sharesOf(jobs, (three) => three[part]);
}

/**
 * Each job's minutes with its part of what it shares, in whole minutes by largest remainder (equals by id). Low is
 * shared out first, then what likely adds to it, then what high adds: so no share has its low above its high.
 */
export function equalSplit(jobs: readonly ReachedJob[]): readonly JobShare[] {
  const none = sharesOf(jobs, () => 0);
  const [low, likely, high] = [exactShares(jobs, 0), exactShares(jobs, 1), exactShares(jobs, 2)];
  const a = raise(
    once(jobs).map(() => 0),
    none,
    low,
  );
  const b = raise(a, low, likely);
  const c = raise(b, likely, high);
  return once(jobs).map(({ id }, i) => ({ job: id, minutes: [a[i] ?? 0, b[i] ?? 0, c[i] ?? 0] }));
}

function sharesOf(jobs: readonly ReachedJob[], pick: (minutes: Three) => number): readonly ExactShare[] {
  const all = once(jobs);
  const states = opened(all).map((state) => ({ state, among: all.filter((job) => job.needs.includes(state)).length }));
  const under = states.reduce((common, { among }) => multiple(common, BigInt(among)), 1n);
  return all.map(({ id, own, needs }) => ({
    job: id,
    over: states.reduce(
      (sum, { state, among }) =>
        needs.includes(state) ? sum + (BigInt(pick(state.minutes)) * under) / BigInt(among) : sum,
      BigInt(pick(own)) * under,
    ),
    under,
  }));
}

/**
 * Adds to each whole share what its exact one grows by, rounded down; the minutes left over go one each to those that
 * are furthest behind their exact share. Who grows by whole minutes gets no more: alone it would not take more either.
 */
function raise(shares: readonly number[], from: readonly ExactShare[], to: readonly ExactShare[]): readonly number[] {
  const grown = to.map(({ job, over, under }, at) => {
    const by = over - (from[at]?.over ?? 0n);
    const minutes = (shares[at] ?? 0) + Number(by / under);
    return { at, job, minutes, rest: by % under, under, behind: over - BigInt(minutes) * under };
  });
  const left = grown.reduce((sum, { rest }) => sum + rest, 0n) / (grown[0]?.under ?? 1n);
  const furthest = grown
    .filter(({ rest }) => rest > 0n)
    .sort((a, b) => (a.behind === b.behind ? (a.job < b.job ? -1 : 1) : a.behind > b.behind ? -1 : 1));
  const more = new Set(furthest.slice(0, Number(left)).map(({ at }) => at));
  return grown.map(({ at, minutes }) => minutes + (more.has(at) ? 1 : 0));
}

/** The least common multiple. */
function multiple(a: bigint, b: bigint): bigint {
  let [x, y] = [a, b];
  while (y > 0n) [x, y] = [y, x % y];
  return (a / x) * b;
}
