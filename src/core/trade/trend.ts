/**
 * Wear over time or distance: rate, when a limit is reached, and between which dates honestly. Readings closer than
 * their uncertainty carry no rate. Refuses to draw one line through a part that was renewed.
 */
import { refusal } from "./calculate.js";
import { row } from "./contract.js";
import { published } from "./sources.js";

const THEIL_SEN = published(
  "Sen 1968, Estimates of the regression coefficient based on Kendall's tau",
  "median of pairwise slopes",
  "the method from memory, its figures recomputed",
);
const FIELLER = published(
  "Fieller 1954, Some problems in interval estimation",
  "interval for a ratio",
  "the method from memory, its figures recomputed",
);

const at = { name: "at", says: "When, in years or thousand km", kind: "number", atLeast: 2 } as const;
const readings = { name: "readings", says: "Reading each time", kind: "number", atLeast: 2 } as const;
const limit = { name: "limit", says: "Limit", kind: "number" } as const;
const uncertainty = { name: "uncertainty", says: "Uncertainty of a reading (±)", kind: "number", over: 0 } as const;

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  const [low, high] = [sorted[Math.ceil(half) - 1], sorted[Math.floor(half)]];
  return low === undefined || high === undefined ? Number.NaN : (low + high) / 2;
};
const mean = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0) / values.length;

/** Slope and value at zero of the median line. */
export interface Line {
  readonly slope: number;
  readonly intercept: number;
}

/** Theil–Sen line: median of all pairwise slopes, then the median intercept. Undefined when nothing lies apart. */
export function medianLine(x: readonly number[], y: readonly number[]): Line | undefined {
  const slopes: number[] = [];
  for (const [i, xi] of x.entries())
    for (const [j, xj] of x.entries()) {
      const [yi, yj] = [y[i], y[j]];
      if (j > i && xi !== xj && yi !== undefined && yj !== undefined) slopes.push((yj - yi) / (xj - xi));
    }
  if (slopes.length === 0) return undefined;
  const slope = median(slopes);
  return { slope, intercept: median(x.map((xi, i) => (y[i] ?? Number.NaN) - slope * xi)) };
}

/** Two-sided 90 % points of Student's t, by degrees of freedom from 1 on. */
const STUDENT_90 = [
  6.314, 2.92, 2.353, 2.132, 2.015, 1.943, 1.895, 1.86, 1.833, 1.812, 1.796, 1.782, 1.771, 1.761, 1.753,
];
/** Of the normal distribution, which many readings come to. */
const NORMAL_90 = 1.6449;
/** Beyond the table by one over the degrees of freedom, as tables of Student's t are read. */
const student90 = (freedom: number): number => {
  const last = STUDENT_90.at(-1) ?? NORMAL_90;
  return STUDENT_90[freedom - 1] ?? NORMAL_90 + ((last - NORMAL_90) * STUDENT_90.length) / freedom;
};

export interface Crossing {
  /** Least squares crossing; the interval is Fieller's, absent where the slope may be nothing. */
  readonly at: number;
  readonly from?: number;
  readonly to?: number;
}

/** Where the least-squares line reaches `edge`, with its 90 % interval (Fieller). Needs three readings. */
export function leastSquaresCrossing(x: readonly number[], y: readonly number[], edge: number): Crossing | undefined {
  const n = x.length;
  const [mx, my] = [mean(x), mean(y)];
  const sxx = x.reduce((sum, xi) => sum + (xi - mx) ** 2, 0);
  const slope = x.reduce((sum, xi, i) => sum + (xi - mx) * ((y[i] ?? my) - my), 0) / sxx;
  if (x.length < 3 || sxx === 0 || slope === 0) return undefined;
  const rest = x.reduce((sum, xi, i) => sum + ((y[i] ?? my) - my - slope * (xi - mx)) ** 2, 0);
  const s2 = rest / (n - 2);
  const t = student90(n - 2);
  const d = (edge - my) / slope;
  const g = (t ** 2 * s2) / (slope ** 2 * sxx);
  if (g >= 1) return { at: mx + d };
  const middle = mx + d / (1 - g);
  const half = ((t * Math.sqrt(s2)) / Math.abs(slope)) * (Math.sqrt((1 - g) / n + d ** 2 / sxx) / (1 - g));
  return { at: mx + d, from: middle - half, to: middle + half };
}

const unequal = (x: readonly number[], y: readonly number[]) =>
  x.length === y.length
    ? undefined
    : refusal("unequal-lists", { argument: "readings", found: y.length, expected: x.length });

type End = "earliest" | "latest";

/**
 * When the limit is reached at the earliest or latest that the uncertainty of the oldest and newest reading allows.
 * Readings may come in any order; it wears towards the limit, up or down.
 */
function reachedAt(x: readonly number[], y: readonly number[], edge: number, u: number, end: End) {
  const lists = unequal(x, y);
  if (lists) return lists;
  const inTime = x.flatMap((when, i) => [{ when, read: y[i] ?? Number.NaN }]).sort((a, b) => a.when - b.when);
  const [first, last] = [inTime[0], inTime.at(-1)];
  if (!first || !last || first.when === last.when) return refusal("same-time", { argument: "at" });
  const sign = end === "earliest" ? 1 : -1;
  // Wear that goes up is wear that goes down seen in a mirror.
  const way = Math.sign(first.read - edge) || Math.sign(first.read - last.read);
  const lastLeft = way * (last.read - edge) - sign * u;
  // Ahead of the newest reading the steepest line is the earliest; before it, the one that starts nearest the limit.
  const firstLeft = way * (first.read - edge) + (lastLeft > 0 ? sign : -sign) * u;
  if (firstLeft <= 0 && lastLeft <= 0) return first.when;
  const fall = firstLeft - lastLeft;
  if (fall > 0) return first.when + (firstLeft * (last.when - first.when)) / fall;
  return end === "earliest"
    ? refusal("leads-away", { argument: "limit" })
    : refusal("no-trend", { argument: "readings" });
}

/** A date before the first reading is none: the readings lead away from the limit. */
const notBefore = (x: readonly number[], crossing: number) =>
  crossing < Math.min(...x) ? refusal("leads-away", { argument: "limit" }) : crossing;

/** Where the median line meets the limit; refused where it leads away from it. */
function medianCrossing(x: readonly number[], y: readonly number[], edge: number) {
  const line = medianLine(x, y);
  if (!line) return refusal("same-time", { argument: "at" });
  if (line.slope === 0) return refusal("no-trend", { argument: "readings" });
  return notBefore(x, (edge - line.intercept) / line.slope);
}

/** Where the least-squares line meets the limit; refused where it leads away from it. */
function fittedCrossing(x: readonly number[], y: readonly number[], edge: number) {
  const crossing = leastSquaresCrossing(x, y, edge);
  return crossing ? notBefore(x, crossing.at) : refusal("no-trend", { argument: "readings" });
}

/** Part renewed or a doubtful reading: wear that comes back by more than chance. */
const hasBreak = (y: readonly number[], u: number, falls: boolean): boolean =>
  y.some((value, i) => {
    const before = y[i - 1] ?? value;
    return (falls ? value - before : before - value) > Math.SQRT2 * u;
  });

export const TREND = [
  row({
    name: "wear_rate",
    says: "Change per year or thousand km, by the median of all pairs",
    arguments: [at, readings],
    gives: "number",
    formula: "median of (yⱼ − yᵢ) / (xⱼ − xᵢ)",
    source: THEIL_SEN,
    work: (x, y) => unequal(x, y) ?? medianLine(x, y)?.slope ?? refusal("same-time", { argument: "at" }),
  }),
  row({
    name: "limit_reached",
    says: "When the limit is reached, by the median line",
    arguments: [at, readings, limit],
    gives: "number",
    formula: "x = (limit − median intercept) / median slope",
    source: THEIL_SEN,
    work: (x, y, edge) => unequal(x, y) ?? medianCrossing(x, y, edge),
  }),
  row({
    name: "limit_reached_earliest",
    says: "Earliest that two readings and their uncertainty allow",
    arguments: [at, readings, limit, uncertainty],
    gives: "number",
    formula:
      "x₁ + (y₁ + U − L) Δx / ((y₁ + U) − (y₂ − U)), for wear that goes down; y₁ − U where the newest may be past it; mirrored for wear that goes up",
    source: { basis: "arithmetic", note: "the steepest line both readings' uncertainty allows" },
    work: (x, y, edge, u) => reachedAt(x, y, edge, u, "earliest"),
  }),
  row({
    name: "limit_reached_latest",
    says: "Latest that two readings and their uncertainty allow",
    arguments: [at, readings, limit, uncertainty],
    gives: "number",
    formula:
      "x₁ + (y₁ − U − L) Δx / ((y₁ − U) − (y₂ + U)), for wear that goes down; y₁ + U where the newest is past it; mirrored for wear that goes up",
    source: { basis: "arithmetic", note: "none while the two are within their uncertainty" },
    work: (x, y, edge, u) => reachedAt(x, y, edge, u, "latest"),
  }),
  row({
    name: "limit_reached_fitted",
    says: "When the limit is reached, by least squares",
    arguments: [{ ...at, atLeast: 4 }, { ...readings, atLeast: 4 }, limit],
    gives: "number",
    formula: "least squares line at the limit",
    source: FIELLER,
    work: (x, y, edge) => unequal(x, y) ?? fittedCrossing(x, y, edge),
  }),
  row({
    name: "part_renewed",
    says: "Whether the readings come back further than chance: renewed, or one to be doubted",
    arguments: [
      readings,
      uncertainty,
      { name: "wear", says: "Which way it wears", kind: "word", words: ["down", "up"] },
    ],
    gives: "yes",
    formula: "a step against the wear larger than √2 · U",
    source: { basis: "arithmetic", note: "the difference of two readings has √2 times the uncertainty of one" },
    work: (y, u, wear) => hasBreak(y, u, wear === "down"),
  }),
];
