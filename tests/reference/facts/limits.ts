// Readings beside a limit. u from display step and gauge error as rectangular distributions, U = 2u: JCGM 100 and 106,
// from memory; zones after ILAC-G8:09/2019 4.2.3, opened, the two middle ones taken together.

export const GAUGED = [
  { y: 3.1, d: 0.1, e: 0.1, lower: 3, u: 0.06455, U: 0.1291, zone: "close", p: 0.9393 },
  { y: 2.8, d: 0.1, e: 0.1, lower: 3, u: 0.06455, U: 0.1291, zone: "past", p: 0.001 },
  { y: 3, d: 0.1, e: 0.1, lower: 3, u: 0.06455, U: 0.1291, zone: "close", p: 0.5 },
  { y: 3.2, d: 0.1, e: 0.1, lower: 3, u: 0.06455, zone: "clear" },
  { y: 24.03, d: 0.01, e: 0.01, lower: 24, u: 0.00645, U: 0.01291, zone: "clear", p: 1 },
  { y: 24.02, d: 0.01, e: 0.01, lower: 24, u: 0.00645, zone: "clear" },
  { y: 24.01, d: 0.01, e: 0.01, lower: 24, u: 0.00645, zone: "close" },
  { y: 0.09, d: 0.01, e: 0.01, upper: 0.1, u: 0.00645, U: 0.01291, zone: "close", p: 0.9393 },
  { y: 0.08, d: 0.01, e: 0.01, upper: 0.1, u: 0.00645, zone: "clear" },
  { y: 0.12, d: 0.01, e: 0.01, upper: 0.1, u: 0.00645, U: 0.01291, zone: "past", p: 0.001 },
] as const;

/** Examples of JCGM 106, from memory: a speed limit, a breakdown voltage. */
export const BESIDE_A_LIMIT = [
  { limit: 100, relU: 0.02, confidence: 0.999, threshold: 106.59 },
  { upper: -5.4, y: -5.47, u: 0.05, p: 0.9192 },
] as const;

/** Worked by hand. */
export const SEVERAL = [
  { rule: "min", in: [24.31, 24.28, 24.33, 24.3, 24.27, 24.32, 24.29, 24.31], out: 24.27 },
  { rule: "mean", in: [6.1, 6.3, 5.9, 6.1], out: 6.1 },
  { rule: "minOfMeans", in: { innerL: [6.1, 6.3], outerL: [5.2, 5.4] }, out: 5.3 },
] as const;
/** Mean range of n readings that only chance sets apart, in standard deviations: standard constants, from memory. */
export const RANGE_BY_CHANCE = { 2: 1.128, 3: 1.693, 4: 2.059, 5: 2.326, 8: 2.847, 12: 3.258 };
