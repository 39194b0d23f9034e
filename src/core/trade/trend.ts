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

/** The slope between every two readings of different times. */
function pairSlopes(x: readonly number[], y: readonly number[]): number[] {
  const slopes: number[] = [];
  for (const [i, xi] of x.entries())
    for (const [j, xj] of x.entries()) {
      const [yi, yj] = [y[i], y[j]];
      if (j > i && xi !== xj && yi !== undefined && yj !== undefined) slopes.push((yj - yi) / (xj - xi));
    }
  return slopes;
}

/** Theil–Sen line: median of all pairwise slopes, then the median intercept. Undefined when nothing lies apart. */
export function medianLine(x: readonly number[], y: readonly number[]): Line | undefined {
  const slopes = pairSlopes(x, y);
  if (slopes.length === 0) return undefined;
  const slope = median(slopes);
  return { slope, intercept: median(x.map((xi, i) => (y[i] ?? Number.NaN) - slope * xi)) };
}

/** Two-sided 90 % points of Student's t, by degrees of freedom from 1 on. */
const STUDENT_90 = [
  6.313752, 2.919986, 2.353363, 2.131847, 2.015048, 1.94318, 1.894579, 1.859548, 1.833113, 1.812461, 1.795885, 1.782288,
  1.770933, 1.76131, 1.75305,
];
/** Of the normal distribution, which many readings come to. */
const NORMAL_90 = 1.644854;
/** Beyond the table by one over the degrees of freedom, as tables of Student's t are read. */
const student90 = (freedom: number): number => {
  const last = STUDENT_90.at(-1) ?? NORMAL_90;
  return STUDENT_90[freedom - 1] ?? NORMAL_90 + ((last - NORMAL_90) * STUDENT_90.length) / freedom;
};

/** The least-squares line, how far readings lie off it, and how sure its slope is (standard deviations). */
export interface Fitted extends Line {
  readonly scatter: number;
  readonly slopeError: number;
}

/** Line of least squares; undefined below three readings or where all were taken at one time. */
export function fittedLine(x: readonly number[], y: readonly number[]): Fitted | undefined {
  const [mx, my] = [mean(x), mean(y)];
  const sxx = x.reduce((sum, xi) => sum + (xi - mx) ** 2, 0);
  if (x.length < 3 || sxx === 0) return undefined;
  const slope = x.reduce((sum, xi, i) => sum + (xi - mx) * ((y[i] ?? my) - my), 0) / sxx;
  const rest = x.reduce((sum, xi, i) => sum + ((y[i] ?? my) - my - slope * (xi - mx)) ** 2, 0);
  const scatter = Math.sqrt(rest / (x.length - 2));
  return { slope, intercept: my - slope * mx, scatter, slopeError: scatter / Math.sqrt(sxx) };
}

export interface Crossing {
  /** Least squares crossing; the interval is Fieller's, absent where the slope may be nothing. */
  readonly at: number;
  readonly from?: number;
  readonly to?: number;
  /** Share of the slope that its error may be, squared (t² s² / b² Sxx): from 1 on there is no interval. */
  readonly g: number;
}

/** Where the least-squares line reaches `edge`, with its 90 % interval (Fieller). Needs three readings. */
export function leastSquaresCrossing(x: readonly number[], y: readonly number[], edge: number): Crossing | undefined {
  const line = fittedLine(x, y);
  if (line === undefined || line.slope === 0) return undefined;
  const { slope, intercept, scatter, slopeError } = line;
  const n = x.length;
  const mx = mean(x);
  const at = (edge - intercept) / slope;
  const t = student90(n - 2);
  const g = ((t * slopeError) / slope) ** 2;
  if (g >= 1) return { at, g };
  const d = at - mx;
  const sxx = x.reduce((sum, xi) => sum + (xi - mx) ** 2, 0);
  const middle = mx + d / (1 - g);
  const half = ((t * scatter) / Math.abs(slope)) * (Math.sqrt((1 - g) / n + d ** 2 / sxx) / (1 - g));
  return { at, from: middle - half, to: middle + half, g };
}

/**
 * Between which slopes the median one lies, nine times of ten: how many pairs may lie on the wrong side by chance
 * (variance of Kendall's count, equals taken off). Wide, and honest, where readings are few; needs three.
 */
export function medianSlopeRange(x: readonly number[], y: readonly number[]): readonly [number, number] | undefined {
  const slopes = pairSlopes(x, y).sort((a, b) => a - b);
  const n = x.length;
  if (n < 3 || slopes.length === 0) return undefined;
  const spread = (k: number): number => k * (k - 1) * (2 * k + 5);
  const equals = [x, y].flatMap((all) => [...new Set(all)].map((one) => spread(all.filter((it) => it === one).length)));
  const variance = (spread(n) - equals.reduce((sum, one) => sum + one, 0)) / 18;
  const off = NORMAL_90 * Math.sqrt(Math.max(0, variance));
  const low = slopes[Math.max(0, Math.round((slopes.length - off) / 2) - 1)];
  const high = slopes[Math.min(slopes.length - 1, Math.round((slopes.length + off) / 2))];
  return low === undefined || high === undefined ? undefined : [low, high];
}

const unequal = (x: readonly number[], y: readonly number[]) =>
  x.length === y.length
    ? undefined
    : refusal("unequal-lists", { argument: "readings", found: y.length, expected: x.length });

type End = "earliest" | "latest";

/** What is left of the way to the limit at one time, and its own uncertainty (±). */
export interface LeftAt {
  readonly when: number;
  readonly left: number;
  readonly u: number;
}

/**
 * Where nothing is left at the earliest or latest that two readings allow, each within its own uncertainty; undefined
 * where that line leads away.
 */
export function lineWithin(first: LeftAt, last: LeftAt, end: End): number | undefined {
  const sign = end === "earliest" ? 1 : -1;
  const lastLeft = last.left - sign * last.u;
  // Ahead of the newest reading the steepest line is the earliest; before it, the one that starts nearest the limit.
  const firstLeft = first.left + (lastLeft > 0 ? sign : -sign) * first.u;
  if (firstLeft <= 0 && lastLeft <= 0) return first.when;
  const fall = firstLeft - lastLeft;
  return fall > 0 ? first.when + (firstLeft * (last.when - first.when)) / fall : undefined;
}

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
  // Wear that goes up is wear that goes down seen in a mirror.
  const way = Math.sign(first.read - edge) || Math.sign(first.read - last.read);
  const leftAt = ({ when, read }: typeof first): LeftAt => ({ when, left: way * (read - edge), u });
  const reached = lineWithin(leftAt(first), leftAt(last), end);
  if (reached !== undefined) return reached;
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
