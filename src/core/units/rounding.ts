/** One rounding of an exact quotient to a whole number. Knows no money, no tax and no country. */

export const ROUNDINGS = ["half-up", "half-even", "down", "up"] as const;
/**
 * `half-up`: the nearer one, a half away from zero, so that a credit mirrors its invoice; `half-even`: the nearer one,
 * a half to the even one; `down`: towards zero; `up`: away from zero.
 */
export type Rounding = (typeof ROUNDINGS)[number];

/** over/under as a whole number; `under` is above zero. */
export function roundedQuotient(over: bigint, under: bigint, how: Rounding = "half-up"): bigint {
  if (under <= 0n) throw new RangeError(`Nothing can be divided by ${under}.`);
  const size = over < 0n ? -over : over;
  const whole = size / under;
  const rounded = isNext(size % under, under, whole, how) ? whole + 1n : whole;
  return over < 0n ? -rounded : rounded;
}

function isNext(rest: bigint, under: bigint, whole: bigint, how: Rounding): boolean {
  if (how === "down" || rest === 0n) return false;
  if (how === "up" || 2n * rest > under) return true;
  return 2n * rest === under && (how === "half-up" || whole % 2n === 1n);
}
