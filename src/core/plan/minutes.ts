/** Sums over low, likely, high. Knows no job. */
import type { Three } from "./terms.js";

export const NO_MINUTES: Three = [0, 0, 0];

/** Part by part; low with low, high with high, no cancelling claimed. */
export const addThree = (a: Three, b: Three): Three => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];

export const sumThree = (all: readonly Three[]): Three => all.reduce(addThree, NO_MINUTES);

/** The likely one of the three. */
export const likely = (a: Three): number => a[1];

/** Whole, none negative, none above the next. */
export const isThree = (a: readonly number[]): boolean =>
  a.length === 3 && a.every((x, i) => Number.isSafeInteger(x) && x >= (i === 0 ? 0 : (a[i - 1] ?? 0)));
