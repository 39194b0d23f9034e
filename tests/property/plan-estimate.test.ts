// Laws of estimates: sums, shares that add up, what a shared cause does, tax that mirrors.
import fc from "fast-check";
import { expect, test } from "vitest";
import {
  COLUMNS,
  type EstimateInput,
  estimate,
  figuresOf,
  type HouseTerms,
  type SpreadFigures,
  spreadOf,
  TAX_LEVELS,
  type TaxProfile,
  taxOn,
  timesShared,
  together,
} from "../../src/core/plan/index.js";
import type { Three } from "../../src/core/plan/terms.js";
import { ROUNDINGS } from "../../src/core/units/index.js";

const RUNS = { numRuns: 150, seed: 36_252 };
const threeUpTo = (most: number) =>
  fc
    .tuple(fc.nat(most), fc.nat(most), fc.nat(most))
    .map((all) => [...all].sort((a, b) => a - b))
    .map(([low = 0, likely = 0, high = 0]): Three => [low, likely, high]);
const rule = fc.constantFrom("pert" as const, "beta" as const);
const threes = fc.array(threeUpTo(900), { minLength: 1, maxLength: 12 });
const sumOf = (all: readonly Three[], by: "pert" | "beta"): SpreadFigures =>
  figuresOf(together(all.map((three) => spreadOf(three, by))));

test("[PE1] low ≤ mean ≤ high, P80 not under the mean and not over the high, whatever the order of the sum", () => {
  fc.assert(
    fc.property(threes, rule, (all, by) => {
      const sum = sumOf(all, by);
      const at = (i: 0 | 1 | 2) => all.reduce((total, three) => total + three[i], 0);
      expect(sum.mean).toBeGreaterThanOrEqual(at(0) - 1e-9);
      expect(sum.p80).toBeGreaterThanOrEqual(sum.p50);
      expect(sum.p80).toBeLessThanOrEqual(at(2) + 1e-9);
      expect(sumOf([...all].reverse(), by)).toEqual(sum);
    }),
    RUNS,
  );
});

test("[PE1] the same work in a unit a sixtieth as large has sixty times the mean and the deviation", () => {
  fc.assert(
    fc.property(threes, rule, (all, by) => {
      const hours = sumOf(all, by);
      const minutes = sumOf(
        all.map(([a, m, b]): Three => [a * 60, m * 60, b * 60]),
        by,
      );
      expect(minutes.mean).toBeCloseTo(hours.mean * 60, 6);
      expect(minutes.sd).toBeCloseTo(hours.sd * 60, 6);
    }),
    RUNS,
  );
});

test("[PE2] a factor of one changes nothing; a shared one that varies is never narrower than the work on its own", () => {
  fc.assert(
    fc.property(threes, threeUpTo(3), rule, (all, factor, by) => {
      const alone = together(all.map((three) => spreadOf(three, by)));
      const one = figuresOf(timesShared(alone, spreadOf([1, 1, 1], by)));
      expect(one.mean).toBeCloseTo(figuresOf(alone).mean, 9);
      expect(one.sd).toBeCloseTo(figuresOf(alone).sd, 9);
      const shared = figuresOf(timesShared(alone, spreadOf(factor, by)));
      const fixed = figuresOf(spreadOf(factor, by)).mean * figuresOf(alone).sd;
      expect(shared.sd).toBeGreaterThanOrEqual(fixed - 1e-9);
    }),
    RUNS,
  );
});

/** Draws in [0, 1) that are the same on every machine. */
function draws(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

test("[PE2] the closed form of the shared factor against forty thousand drawn cars, and against independence", () => {
  const next = draws(20_260);
  // a triangle of low, likely, high: mean and variance of its own, so nothing here leans on the three-point rule
  const triangle = ([a, m, b]: Three) => ({
    mean: (a + m + b) / 3,
    variance: (a * a + m * m + b * b - a * m - a * b - m * b) / 18,
    draw: () => {
      const u = next();
      const peak = (m - a) / (b - a);
      return u < peak ? a + Math.sqrt(u * (b - a) * (m - a)) : b - Math.sqrt((1 - u) * (b - a) * (b - m));
    },
  });
  const jobs = (
    [
      [48, 60, 120],
      [240, 300, 540],
      [30, 36, 90],
      [60, 90, 240],
    ] as const
  ).map((t) => triangle(t));
  const factor = triangle([90, 120, 200]);
  const sums = Array.from({ length: 40_000 }, () => {
    const f = factor.draw() / 100;
    return f * jobs.reduce((sum, job) => sum + job.draw(), 0);
  });
  const mean = sums.reduce((sum, one) => sum + one, 0) / sums.length;
  const variance = sums.reduce((sum, one) => sum + (one - mean) ** 2, 0) / sums.length;
  // ten-thousandths, as whole fractions, of the triangles' own means and variances
  const exact = (value: number) => ({ over: BigInt(Math.round(value * 10_000)), under: 10_000n });
  const work = together(jobs.map((job) => ({ mean: exact(job.mean), variance: exact(job.variance) })));
  const shared = { mean: exact(factor.mean / 100), variance: exact(factor.variance / 10_000) };
  const closed = figuresOf(timesShared(work, shared));
  expect(Math.abs(mean / closed.mean - 1)).toBeLessThan(0.005);
  expect(Math.abs(Math.sqrt(variance) / closed.sd - 1)).toBeLessThan(0.015);
  const drawn80 = [...sums].sort((a, b) => a - b)[Math.floor(sums.length * 0.8)] ?? Number.NaN;
  expect(Math.abs(drawn80 / closed.p80 - 1)).toBeLessThan(0.015);
  // as if every job had met a condition of its own: far too narrow
  const apart = figuresOf(
    together(jobs.map((job) => timesShared({ mean: exact(job.mean), variance: exact(job.variance) }, shared))),
  );
  expect(apart.mean).toBeCloseTo(closed.mean, 3);
  expect(apart.sd).toBeLessThan(closed.sd * 0.9);
});

const GROUPS = [
  { id: "full", name: "Full", basisPoints: 1900 },
  { id: "half", name: "Half", basisPoints: 775 },
];
const profile = fc.record({
  label: fc.constant("Somewhere"),
  groups: fc.constant(GROUPS),
  labourGroup: fc.constantFrom("full", "half"),
  partsGroup: fc.constantFrom("full", "half"),
  rounding: fc.constantFrom(...ROUNDINGS),
  level: fc.constantFrom(...TAX_LEVELS),
  digits: fc.integer({ min: 0, max: 4 }),
});
const taxed = fc.array(
  fc.record({ group: fc.constantFrom("full", "half"), net: fc.integer({ min: -99_999, max: 99_999 }) }),
  {
    maxLength: 8,
  },
);
const total = (lines: Parameters<typeof taxOn>[0], by: TaxProfile) =>
  taxOn(lines, by, 2).reduce((sum, { tax }) => sum + tax, 0);

test("[PE10] a credit mirrors its invoice, at every level and rounding", () => {
  fc.assert(
    fc.property(taxed, profile, (lines, by) => {
      const credit = lines.map(({ group, net }) => ({ group, net: -net }));
      expect(total(credit, by) + total(lines, by)).toBe(0);
    }),
    RUNS,
  );
});

test("[PE10] once on the whole, to the coin: within half a unit of the exact tax, and the rates' shares add up to it", () => {
  fc.assert(
    fc.property(taxed, fc.constantFrom("half-up" as const, "half-even" as const), (lines, rounding) => {
      const by = { groups: GROUPS, rounding, level: "invoice" as const };
      const groups = taxOn(lines, by, 2);
      const exact = (group: { net: number; basisPoints: number }) => (group.net * group.basisPoints) / 10_000;
      const sum = groups.reduce((all, group) => all + exact(group), 0);
      expect(Math.abs(groups.reduce((all, { tax }) => all + tax, 0) - sum)).toBeLessThanOrEqual(0.5 + 1e-6);
      for (const group of groups) expect(Math.abs(group.tax - exact(group))).toBeLessThan(1);
    }),
    RUNS,
  );
});

const input: fc.Arbitrary<EstimateInput> = fc
  .record({
    jobs: fc.array(fc.record({ own: threeUpTo(500), rate: fc.constantFrom("a", "b") }), { maxLength: 6 }),
    opened: fc.array(fc.record({ setUp: threeUpTo(200), putBack: threeUpTo(200) }), { maxLength: 3 }),
    parts: fc.array(
      fc.record({
        count: fc.integer({ min: 1, max: 5 }),
        price: threeUpTo(90_000),
        deposit: fc.nat(900),
        carriage: threeUpTo(2000),
      }),
      { maxLength: 5 },
    ),
    condition: threeUpTo(300),
    spread: rule,
    perHour: fc.integer({ min: 1, max: 20_000 }),
    profile,
  })
  .map(({ perHour, profile: tax, ...rest }) => {
    const named = <T>(kind: string, all: readonly T[]) => all.map((one, i) => ({ ...one, id: `${kind}${i}` }));
    const terms: HouseTerms = {
      currency: "EUR",
      labourRates: [
        { id: "a", name: "A", perHour },
        { id: "b", name: "B", perHour: 9500 },
      ],
      tax,
    };
    return {
      ...rest,
      terms,
      asOf: "2026-03-31",
      jobs: named("job", rest.jobs),
      opened: named("state", rest.opened),
      parts: named("part", rest.parts),
    };
  });
const made = (given: EstimateInput) => {
  const result = estimate(given);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

test("[PE6] the lines add up to every total of every column, and the columns rise", () => {
  fc.assert(
    fc.property(input, (given) => {
      const got = made(given);
      for (const column of COLUMNS) {
        const lines = got.lines.filter(({ kind }) => kind !== "deposit");
        expect(lines.reduce((sum, { net }) => sum + net[column], 0)).toBe(got.net[column]);
        expect(got.tax.reduce((sum, { net }) => sum + net[column], 0)).toBe(got.net[column]);
        expect(got.tax.reduce((sum, { tax }) => sum + tax[column], got.net[column])).toBe(got.gross[column]);
        expect(lines.reduce((sum, { minutes }) => sum + (minutes?.[column] ?? 0), 0)).toBe(got.labour.minutes[column]);
        expect(Math.min(...lines.map(({ net }) => net[column]), 0)).toBe(0);
      }
      for (const { low, likely, p50, p80, high } of [got.net, got.labour.net, got.labour.minutes]) {
        expect(low <= likely && likely <= high && low <= p50 && p50 <= p80 && p80 <= high).toBe(true);
      }
    }),
    RUNS,
  );
});

test("[PE6] the order in which jobs, states and parts are given changes no total", () => {
  fc.assert(
    fc.property(input, (given) => {
      const back = {
        jobs: [...given.jobs].reverse(),
        opened: [...given.opened].reverse(),
        parts: [...given.parts].reverse(),
      };
      const [one, other] = [made(given), made({ ...given, ...back })];
      expect([other.net, other.labour, other.tax, other.outlay]).toEqual([one.net, one.labour, one.tax, one.outlay]);
    }),
    RUNS,
  );
});
