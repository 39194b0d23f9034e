/**
 * A measured value against the edges of a limit, its uncertainty counted at the severe edges. Pure arithmetic:
 * knows no reply, gauge or rule. Numbers are in one unit, whichever it is.
 */
import { GRADES, type Grade, type GradeLevel, levelOf } from "../terms/index.js";
import { worstOf } from "./levels.js";

export type Direction = "over" | "at-or-over" | "under" | "at-or-under";
export type Bands = Readonly<Partial<Record<Grade, number>>>;

/** Coverage factor k of U = k·u, about 95 % (JCGM 100:2008, from memory). */
export const COVERAGE = 2;
/** Two numbers that differ by less than this share of the larger are one: 3.0 − 0.1 is 2.9. */
const NOISE = 1e-9;
/** Only these edges are guarded; milder ones are judged by the value alone. */
const GUARDED: ReadonlySet<Grade> = new Set(["major", "dangerous"]);

/** −1, 0, 1; equal within the noise of binary fractions. */
export function compareNumbers(a: number, b: number): -1 | 0 | 1 {
  if (Math.abs(a - b) <= NOISE * Math.max(Math.abs(a), Math.abs(b))) return 0;
  return a < b ? -1 : 1;
}

/** Whether the limit looks at too much (over) or too little (under). */
export const isUpper = (direction: Direction): boolean => direction === "over" || direction === "at-or-over";

/** Whether a value has passed an edge. */
export function isPast(value: number, edge: number, direction: Direction): boolean {
  const sign = compareNumbers(value, edge);
  if (direction === "over") return sign > 0;
  if (direction === "at-or-over") return sign >= 0;
  return direction === "under" ? sign < 0 : sign <= 0;
}

/** The worst grade whose edge a value has passed, among the given grades; 0 inside all. */
function levelAt(value: number, bands: Bands, direction: Direction, guarded: boolean): GradeLevel {
  for (let i = GRADES.length - 1; i >= 0; i -= 1) {
    const grade = GRADES[i];
    if (grade === undefined || GUARDED.has(grade) !== guarded) continue;
    const edge = bands[grade];
    if (edge !== undefined && isPast(value, edge, direction)) return levelOf(grade);
  }
  return 0;
}

export interface Span {
  /** Grade at the mild end of the uncertainty. */
  readonly low: GradeLevel;
  /** Grade at the severe end. */
  readonly high: GradeLevel;
}

/**
 * The grade at both ends of y ± U, U = 2u (guard band w = U; pass up to the edge less U, past beyond the edge plus U,
 * after ILAC-G8:09/2019 4.2.3). Lower limits mirror. Advisory and minor edges use y alone.
 */
export function spanOf(value: number, u: number, bands: Bands, direction: Direction): Span {
  const half = COVERAGE * u;
  const sign = isUpper(direction) ? 1 : -1;
  const plain = levelAt(value, bands, direction, false);
  const mild = levelAt(value - sign * half, bands, direction, true);
  const severe = levelAt(value + sign * half, bands, direction, true);
  return { low: worstOf(plain, mild), high: worstOf(plain, severe) };
}

/** How a reading stands to a limit as a whole. */
export type Standing = "clear" | "inside" | "too close" | "past";

/** `inside`: past a milder edge, clear of the severe ones. `past`: certainly beyond a major or dangerous edge. */
export function standingOf(span: Span): Standing {
  if (span.low !== span.high) return "too close";
  if (span.low === 0) return "clear";
  return span.low >= levelOf("major") ? "past" : "inside";
}

/** The edges of `outer` that still lie beyond `edge` in the direction of the limit. */
export function isBeyond(edge: number, other: number, direction: Direction): boolean {
  const sign = compareNumbers(other, edge);
  return isUpper(direction) ? sign > 0 : sign < 0;
}
