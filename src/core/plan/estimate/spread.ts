/**
 * Low, likely and high as a mean and a spread, sums of them, and what one shared cause does to the sum. Every figure
 * is a fraction of whole numbers until the root is taken. Knows no job and no money.
 * Mean and variance: Introduction to Management Science (Cengage 2014) ch. 9, equations 9.4 and 9.5.
 */
import type { Three } from "../terms.js";
import { added, numberOf, plus, type Ratio, ratio, times } from "./exact.js";

/**
 * `pert`: the textbook's sixth of the range, ((b−a)/6)². `beta`: the variance of the beta distribution that the mean
 * (a+4m+b)/6 implies, (μ−a)(b−μ)/7: wider where likely lies amid the range, narrower where it lies at an end.
 */
export const SPREAD_RULES = ["pert", "beta"] as const;
export type SpreadRule = (typeof SPREAD_RULES)[number];

/** Mean and variance, exact. */
export interface Spread {
  readonly mean: Ratio;
  readonly variance: Ratio;
}

/** Mean, deviation and the two figures that are shown. */
export interface SpreadFigures {
  readonly mean: number;
  readonly variance: number;
  readonly sd: number;
  /** As likely over as under: of the normal distribution, the mean. */
  readonly p50: number;
  /** Kept four times of five: mean + 0.8416 deviations of the normal distribution. */
  readonly p80: number;
}

/** The normal distribution's 80 % point, from memory; a test sums the curve up to it. */
export const Z80 = 0.841621;

/** Both variances stand over 36 · 7, so that a sum of many stays one fraction. */
const UNDER = 252n;
const NO_SPREAD: Spread = { mean: ratio(0n, 6n), variance: ratio(0n, UNDER) };

/** Mean and variance of three points, each `weight` times over (an hourly rate turns minutes into money). */
export function spreadOf(three: Three, rule: SpreadRule = "pert", weight = 1n): Spread {
  const [a, m, b] = [BigInt(three[0]), BigInt(three[1]), BigInt(three[2])];
  const range = b - a;
  const variance = rule === "pert" ? 7n * range * range : (4n * m + b - 5n * a) * (5n * b - a - 4n * m);
  return { mean: ratio(weight * (a + 4n * m + b), 6n), variance: ratio(weight * weight * variance, UNDER) };
}

/** What varies independently: means and variances add up. */
export const together = (all: readonly Spread[]): Spread => ({
  mean: added([NO_SPREAD.mean, ...all.map(({ mean }) => mean)]),
  variance: added([NO_SPREAD.variance, ...all.map(({ variance }) => variance)]),
});

/**
 * A sum times one factor drawn once for all of it, independent of what is summed. The rusted car takes longer at every
 * job alike, so that the jobs no longer even each other out: var(F·T) = μF²·var T + μT²·var F + var F·var T.
 */
export function timesShared(sum: Spread, factor: Spread): Spread {
  const square = (a: Ratio): Ratio => times(a, a);
  return {
    mean: times(sum.mean, factor.mean),
    variance: [
      times(square(factor.mean), sum.variance),
      times(square(sum.mean), factor.variance),
      times(factor.variance, sum.variance),
    ].reduce(plus),
  };
}

/** A spread measured in another unit: every value divided by a whole number above zero. */
export const dividedBy = (spread: Spread, by: bigint): Spread => ({
  mean: times(spread.mean, ratio(1n, by)),
  variance: times(spread.variance, ratio(1n, by * by)),
});

/** The figures that are shown. */
export function figuresOf({ mean: exact, variance: exactVariance }: Spread): SpreadFigures {
  const mean = numberOf(exact);
  const variance = numberOf(exactVariance);
  const sd = Math.sqrt(variance);
  return { mean, variance, sd, p50: mean, p80: mean + Z80 * sd };
}
