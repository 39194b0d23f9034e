/**
 * Several readings of one part made into one value with its uncertainty. Knows the gauge, not the limit.
 * u² = d²/12 + e²/3 + s²/n: display step d, gauge error ±e, scatter s of n repeats (JCGM 100:2008, from memory).
 */
import type { Measured } from "../expr/run.js";
import { type Direction, isUpper } from "./band.js";

/** Numbers in the canonical unit of the quantity, step and error in canonical size. */
export interface Shots {
  readonly values: readonly number[];
  readonly resolution: number;
  /** Gauge error ±. */
  readonly error: number;
  /** Set-up error ± of the point, added whatever gauge is used. */
  readonly setUp: number;
}

/** How readings become one; `each`: every one is judged, so the worst for the direction stands for all. */
export type Aggregate = "max" | "min" | "mean" | "median" | "spread" | "each";

/** Standard uncertainty of one reading: e² = gauge² + set-up². */
export function singleU(shots: Pick<Shots, "resolution" | "error" | "setUp">): number {
  const { resolution: d, error, setUp } = shots;
  return Math.sqrt((d * d) / 12 + (error * error + setUp * setUp) / 3);
}

/**
 * The aggregate with its uncertainty; undefined for no readings (never 0). Largest, smallest and each: the u of one
 * reading. Mean and median: scatter s²/n added. Spread (largest less smallest): √2 · u.
 */
export function aggregate(shots: Shots, how: Aggregate, direction: Direction = "over"): Measured | undefined {
  const { values } = shots;
  const n = values.length;
  if (n === 0) return undefined;
  const u = singleU(shots);
  if (n === 1 && how !== "spread") return { value: values[0] ?? Number.NaN, u };
  const max = Math.max(...values);
  const min = Math.min(...values);
  switch (how) {
    case "max":
      return { value: max, u };
    case "min":
      return { value: min, u };
    case "each":
      return { value: isUpper(direction) ? max : min, u };
    case "spread":
      return { value: max - min, u: Math.SQRT2 * u };
    case "mean":
      return { value: meanOf(values), u: withScatter(u, values) };
    case "median":
      return { value: medianOf(values), u: withScatter(u, values) };
  }
}

/** Whether further readings can only make the aggregate worse, so that a past edge stays past. */
export const onlyGrows = (how: Aggregate, direction: Direction): boolean =>
  how === "each" || how === (isUpper(direction) ? "max" : "min") || (how === "spread" && isUpper(direction));

function meanOf(values: readonly number[]): number {
  let sum = 0;
  for (const v of values) sum += v;
  return sum / values.length;
}

function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  const upper = sorted[middle] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? Number.NaN) + upper) / 2;
}

function withScatter(u: number, values: readonly number[]): number {
  const mean = meanOf(values);
  let squares = 0;
  for (const v of values) squares += (v - mean) * (v - mean);
  const n = values.length;
  return Math.sqrt(u * u + squares / (n - 1) / n);
}
