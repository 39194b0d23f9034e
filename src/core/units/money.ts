/**
 * Money in whole minor units (cents, pence). Exact: no sum, share or split loses or makes a cent. Knows no
 * currency's name and no tax. A result beyond whole-number precision is our own mistake: it throws.
 */
import { type Rounding, roundedQuotient } from "./rounding.js";

declare const minorUnits: unique symbol;
/** A whole number of minor units. Opaque, as amounts are. */
export interface Money {
  readonly [minorUnits]: true;
}

// The only place where a number becomes Money, and it is checked to be whole and exact.
function made(minor: number): Money {
  if (!Number.isSafeInteger(minor)) throw new RangeError(`${minor} is no exact number of minor units.`);
  return (minor === 0 ? 0 : minor) as unknown as Money;
}

/** A whole number of minor units as money. */
export const money = (minor: number): Money => made(minor);
/** The minor units. */
export const minorOf = (a: Money): number => a as unknown as number;
export const sum = (...amounts: readonly Money[]): Money => made(amounts.reduce((total, a) => total + minorOf(a), 0));
export const less = (a: Money, b: Money): Money => made(minorOf(a) - minorOf(b));

/**
 * Money times over/under (whole numbers), one rounding: 5 × 1/2 = 3, −5 × 1/2 = −3 where nothing else is said.
 * Hours in minutes times an hourly rate: `share(rate, minutes, 60)`.
 */
export function share(a: Money, over: number, under: number, how: Rounding = "half-up"): Money {
  if (!Number.isSafeInteger(over) || !Number.isSafeInteger(under) || under <= 0) {
    throw new RangeError(`${over}/${under} is no share.`);
  }
  return made(Number(roundedQuotient(BigInt(minorOf(a)) * BigInt(over), BigInt(under), how)));
}

/**
 * Money split by weights (whole, not negative, one above 0) so that the parts add up to it: whole parts first,
 * what is left one each to the largest remainders, earlier ones first when equal.
 */
export function split(a: Money, weights: readonly number[]): readonly Money[] {
  const total = weights.reduce((all, weight) => all + weight, 0);
  if (total <= 0 || weights.some((weight) => !Number.isSafeInteger(weight) || weight < 0)) {
    throw new RangeError("Weights must be whole numbers, not negative, one of them above zero.");
  }
  const sign = minorOf(a) < 0 ? -1 : 1;
  const size = BigInt(Math.abs(minorOf(a)));
  const exact = weights.map((weight) => size * BigInt(weight));
  const parts = exact.map((product) => Number(product / BigInt(total)));
  const rests = exact.map((product, index) => ({ index, rest: product % BigInt(total) }));
  rests.sort((x, y) => (x.rest === y.rest ? x.index - y.index : x.rest > y.rest ? -1 : 1));
  const left = Number(size) - parts.reduce((all, part) => all + part, 0);
  for (const { index } of rests.slice(0, left)) parts[index] = (parts[index] ?? 0) + 1;
  return parts.map((part) => made(sign * part));
}
