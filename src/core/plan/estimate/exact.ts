/** Fractions of whole numbers, so that no sum depends on its order, and shares that add up. Knows no hours, no money. */
import { roundedQuotient } from "../../units/index.js";

/** over/under, `under` above zero. */
export interface Ratio {
  readonly over: bigint;
  readonly under: bigint;
}

export const ratio = (over: bigint, under: bigint): Ratio => ({ over, under });
export const NOTHING: Ratio = { over: 0n, under: 1n };

export const plus = (a: Ratio, b: Ratio): Ratio =>
  a.under === b.under ? ratio(a.over + b.over, a.under) : ratio(a.over * b.under + b.over * a.under, a.under * b.under);
export const times = (a: Ratio, b: Ratio): Ratio => ratio(a.over * b.over, a.under * b.under);
export const added = (all: readonly Ratio[]): Ratio => all.reduce(plus, NOTHING);

/** As a number with a point. */
export const numberOf = (a: Ratio): number => Number(a.over) / Number(a.under);
/** As a whole number, a half away from zero. */
export const wholeOf = (a: Ratio): number => Number(roundedQuotient(a.over, a.under));

/**
 * Whole shares of a rounded total that add up to it: each its exact value rounded down, what is left one each to the
 * largest remainders, earlier ones first when equal. No share strays a whole unit from its exact value. `total` is the
 * sum of the exact values rounded up or down.
 */
export function allot(total: number, exact: readonly Ratio[]): readonly number[] {
  const sign = total < 0 ? -1n : 1n;
  const floors = exact.map(({ over, under }, index) => {
    const mirrored = sign * over;
    const rest = ((mirrored % under) + under) % under;
    return { index, whole: (mirrored - rest) / under, rest: ratio(rest, under) };
  });
  const left = Number(sign * BigInt(total) - floors.reduce((sum, { whole }) => sum + whole, 0n));
  const largest = [...floors].sort((a, b) => compare(b.rest, a.rest) || a.index - b.index).slice(0, left);
  const raised = new Set(largest.map(({ index }) => index));
  return floors.map(({ index, whole }) => Number(sign * (whole + (raised.has(index) ? 1n : 0n))) || 0);
}

function compare(a: Ratio, b: Ratio): number {
  const difference = a.over * b.under - b.over * a.under;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}
