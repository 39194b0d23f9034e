// Estimates against outside and worked figures. Three points: Introduction to Management Science (Cengage 2014) ch. 9,
// equations 9.4 and 9.5, table 9.4, pages 383 to 386 (opened; 0.9656 from memory), and a web textbook's example (opened).
// Five jobs in hours: computed by formula and by a simulation of a million draws. Tax and splitting: worked by hand.
// Currencies: ISO 4217 from memory, beside what this machine's locale data say.
import { expect, test } from "vitest";
import {
  figuresOf,
  type SpreadRule,
  spreadOf,
  type TaxLevel,
  taxOn,
  together,
  Z80,
} from "../../src/core/plan/index.js";
import type { Three } from "../../src/core/plan/terms.js";
import { minorDigitsOf, minorOf, money, ROUNDINGS, type Rounding, share, split } from "../../src/core/units/index.js";
import { CENGAGE, FIVE_JOBS, FIVE_JOBS_EACH, TAX } from "./facts/estimate.js";
import { SHARED_OUT } from "./facts/money.js";

/** Share of the normal distribution under z, summed up strip by strip. */
function underNormal(z: number): number {
  const strips = 2000;
  const width = z / strips;
  const heights = Array.from({ length: strips }, (_, i) => Math.exp(-(((i + 0.5) * width) ** 2) / 2));
  return 0.5 + (heights.reduce((sum, one) => sum + one, 0) * width) / Math.sqrt(2 * Math.PI);
}

/** Points with decimals as whole numbers of the smaller unit, and the sum back in the larger one. */
function sumIn(per: number, points: readonly (readonly [number, number, number])[], rule: SpreadRule = "pert") {
  const whole = points.map(([a, m, b]): Three => [Math.round(a * per), Math.round(m * per), Math.round(b * per)]);
  const { mean, variance, sd, p80 } = figuresOf(together(whole.map((three) => spreadOf(three, rule))));
  return { mean: mean / per, variance: variance / per ** 2, sd: sd / per, p80: p80 / per };
}

test("the 80 % point: the normal curve summed up to it", () => {
  expect(underNormal(Z80)).toBeCloseTo(0.8, 6);
});

test.each(Object.entries(CENGAGE))("table 9.4, activity %s: mean and variance", (_, [a, m, b, mean, variance]) => {
  const got = sumIn(2, [[a, m, b]]);
  expect(got.mean).toBe(mean);
  expect(got.variance).toBeCloseTo(variance, 2);
});

test("path A-E-H-I-J: 17 weeks, variance 2.7222, within 20 weeks with 0.9655, four times of five within 18.389", () => {
  const { A, E, H, I, J } = CENGAGE;
  const path = sumIn(
    2,
    [A, E, H, I, J].map(([a, m, b]) => [a, m, b] as const),
  );
  expect(path.mean).toBe(17);
  expect(path.variance).toBeCloseTo(2.7222, 4);
  expect(path.sd).toBeCloseTo(1.6499, 4);
  expect((20 - path.mean) / path.sd).toBeCloseTo(1.8183, 3);
  expect(underNormal((20 - path.mean) / path.sd)).toBeCloseTo(0.9655, 4);
  expect(path.p80).toBeCloseTo(18.389, 3);
});

test("web textbook: mean 24, variance 5, within 28 with 0.9632", () => {
  const path = sumIn(1, [
    [5, 8, 17],
    [3, 5, 7],
    [4, 6, 8],
    [3, 4, 5],
  ]);
  expect([path.mean, path.variance]).toEqual([24, 5]);
  expect(underNormal(4 / path.sd)).toBeCloseTo(0.9632, 4);
});

test("five jobs in hours: each mean and variance, 9.600 together, P80 10.447", () => {
  const each = FIVE_JOBS.map((job) => sumIn(60, [job]));
  FIVE_JOBS_EACH.means.forEach((mean, i) => {
    expect(each[i]?.mean).toBeCloseTo(mean, 4);
  });
  FIVE_JOBS_EACH.vars.forEach((variance, i) => {
    expect(each[i]?.variance).toBeCloseTo(variance, 5);
  });
  const sum = sumIn(60, FIVE_JOBS);
  expect(sum.mean).toBeCloseTo(9.6, 9);
  expect(sum.variance).toBeCloseTo(1.0133, 4);
  expect(sum.sd).toBeCloseTo(1.0066, 4);
  expect(sum.p80).toBeCloseTo(10.447, 3);
});

test("five jobs with the variance of the implied beta: 1.0762, P80 10.473; a million draws gave 10.481", () => {
  const sum = sumIn(60, FIVE_JOBS, "beta");
  expect(sum.variance).toBeCloseTo(1.0762, 4);
  expect(sum.p80).toBeCloseTo(10.473, 3);
  expect(Math.abs(sum.p80 / 10.481 - 1)).toBeLessThan(0.001);
  expect(Math.abs(sumIn(60, FIVE_JOBS).p80 / 10.481 - 1)).toBeLessThan(0.01);
});

test("one lopsided job of 4, 5, 9 hours: P80 6.201, where the exact beta has 6.251", () => {
  const one = sumIn(60, [[4, 5, 9]]);
  expect(one.p80).toBeCloseTo(6.201, 3);
  expect(Math.abs(one.p80 / 6.251 - 1)).toBeLessThan(0.01);
});

const taxOf = (nets: readonly number[], basisPoints: number, rounding: Rounding, level: TaxLevel) =>
  taxOn(
    nets.map((net) => ({ group: "g", net })),
    { groups: [{ id: "g", name: "G", basisPoints }], rounding, level },
    2,
  ).map(({ tax }) => tax);

test.each(TAX)("tax on %i at %i basis points, rounded four ways at every level", (net, basisPoints, ...taxes) => {
  for (const [i, how] of ROUNDINGS.entries()) {
    for (const level of ["line", "group", "invoice"] as const)
      expect(taxOf([net], basisPoints, how, level)).toEqual([taxes[i]]);
    expect(minorOf(share(money(net), basisPoints, 10_000, how))).toBe(taxes[i]);
  }
});

test("three lines of 0.99 at 19 %: 57 line by line, 56 on the total", () => {
  expect(taxOf([99, 99, 99], 1900, "half-up", "line")).toEqual([57]);
  expect(taxOf([99, 99, 99], 1900, "half-up", "group")).toEqual([56]);
  expect(taxOf([99, 99, 99], 1900, "half-up", "invoice")).toEqual([56]);
});

test.each(SHARED_OUT)("$total split by $weights", ({ total, weights, shares }) => {
  expect(split(money(total), weights).map(minorOf)).toEqual(shares);
});

/** Where what browsers offer follows the use in shops, not the standard: with none behind the point. */
const OTHER_IN_SHOPS = ["HUF", "IQD"];

test("digits behind the point: none, two and three, as the locale data have them but for forint and Iraqi dinar", () => {
  const shown = (currency: string) =>
    new Intl.NumberFormat("en", { style: "currency", currency }).resolvedOptions().maximumFractionDigits;
  expect(["JPY", "ISK", "EUR", "HUF", "KWD", "IQD", "XTS"].map(minorDigitsOf)).toEqual([0, 0, 2, 2, 3, 3, undefined]);
  const others = Intl.supportedValuesOf("currency").filter((code) => {
    const digits = minorDigitsOf(code);
    return digits !== undefined && digits !== shown(code);
  });
  expect(others).toEqual(OTHER_IN_SHOPS);
});
