/** What a figure of an estimate must be, and how a faulty one is told. Knows no sums. */
import { type Problem, problem } from "../../terms/index.js";
import { dayNumber } from "../schedule/days.js";
import type { IsoDate, Three } from "../terms.js";

/** Low, likely, high as somebody gave them: any may be missing. */
export type MaybeThree = readonly (number | null | undefined)[];

/** Beyond these nothing on a car lies; they keep every sum exact. */
export const MOST_MINUTES = 100_000;
export const MOST_MONEY = 1e11;
export const MOST_PIECES = 1000;

/** Whose figure it is, and where it stands. */
export interface Owner {
  readonly id: string;
  /** `minutes`, `price`, … */
  readonly what: string;
  readonly path: string;
}

const NAMES = ["low", "likely", "high"] as const;

/** What is wrong with one figure that must be whole, not below zero and not beyond what can be. */
export function figureProblems(
  value: number | null | undefined,
  most: number,
  owner: Owner,
  figure = "",
): readonly Problem[] {
  const what = figure === "" ? owner.what : `${figure} ${owner.what}`;
  const told = (code: string) =>
    problem(code, { path: owner.path }, { id: owner.id, what, figure, found: `${value}`, most });
  if (value === undefined || value === null) return [told("estimate.missing")];
  if (!Number.isSafeInteger(value)) return [told("estimate.not-whole")];
  if (value < 0) return [told("estimate.negative")];
  return value > most ? [told("estimate.too-large")] : [];
}

/** Three sound figures in order, or every problem of them. */
export function checkedThree(
  given: MaybeThree | undefined,
  most: number,
  owner: Owner,
): { readonly three: Three } | { readonly problems: readonly Problem[] } {
  const [low, likely, high] = given ?? [];
  const problems = [low, likely, high].flatMap((value, i) => figureProblems(value, most, owner, NAMES[i]));
  if (problems.length > 0) return { problems };
  const three: Three = [low ?? 0, likely ?? 0, high ?? 0];
  if (three[0] <= three[1] && three[1] <= three[2]) return { three };
  const params = { id: owner.id, what: owner.what, found: three.join(", ") };
  return { problems: [problem("estimate.order", { path: owner.path }, params)] };
}

/** Whether a text is a day of the calendar. */
export const isDay = (text: IsoDate): boolean => dayNumber(text) !== undefined;

/** Days from one day to another; negative when the other lies before. Both must be days of the calendar. */
export const daysBetween = (from: IsoDate, to: IsoDate): number =>
  (dayNumber(to) ?? Number.NaN) - (dayNumber(from) ?? Number.NaN);

/** Rows whose id stands only once before them, and a problem for every other. */
export function onlyOnce<T extends { readonly id: string }>(
  rows: readonly T[],
  list: string,
): { readonly rows: readonly { readonly row: T; readonly path: string }[]; readonly problems: readonly Problem[] } {
  const seen = new Set<string>();
  const kept: { row: T; path: string }[] = [];
  const problems: Problem[] = [];
  for (const [i, row] of rows.entries()) {
    const path = `${list}[${i}]`;
    if (seen.has(row.id)) problems.push(problem("estimate.twice", { path }, { id: row.id, list }));
    else kept.push({ row, path });
    seen.add(row.id);
  }
  return { rows: kept, problems };
}
