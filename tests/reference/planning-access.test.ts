// Access and shared minutes against worked figures. The garage case: worked by hand, arithmetic re-run in code, minutes
// illustrative without a source. Shares: an airport cost-sharing example (encyclopaedia copies; method of 1973), a web
// worked example and a maths question-and-answer page, all opened. While it is apart: follows from our own rule.
import { expect, test } from "vitest";
import {
  type AccessJob,
  type AccessState,
  accessOf,
  equalSplit,
  exactShares,
  hours,
  marginal,
  opened,
  opportunity,
  type ReachedJob,
} from "../../src/core/plan/index.js";
import { GARAGE, NESTED, OFFERS } from "./facts/access.js";

const state = (id: string, setUp: number, putBack: number, ...parents: string[]): AccessState => ({
  id,
  parents,
  setUp: [setUp, setUp, setUp],
  putBack: [putBack, putBack, putBack],
});
const job = (id: string, own: number, ...access: string[]): AccessJob => ({ id, own: [own, own, own], access });

const garage = accessOf(
  GARAGE.states.map(({ id, parents, setup, putback }) => state(id, setup, putback, ...parents)),
  GARAGE.jobs.map(({ id, own, access }) => job(id, own, ...access)),
);
const named = (...ids: string[]): ReachedJob[] => garage.jobs.filter(({ id }) => ids.includes(id));
const one = (id: string): ReachedJob => {
  const found = named(id)[0];
  if (found === undefined) throw new Error(`no job ${id}`);
  return found;
};

test.each(GARAGE.total)("$jobs in one visit take $minutes minutes", ({ jobs, minutes }) => {
  expect(garage.problems).toEqual([]);
  expect(hours(named(...jobs))).toEqual([minutes, minutes, minutes]);
});

test.each(GARAGE.marginal)("$job beside $given adds $marginal minutes of $standAlone alone", (row) => {
  const got = marginal(one(row.job), named(...row.given));
  expect([got.added[1], got.standAlone[1]]).toEqual([row.marginal, row.standAlone]);
  expect(got.ratio).toBeCloseTo(row.ratio, 4);
});

test("of all nested pairs of the seven jobs none makes a job dearer by company", () => {
  const subsets = Array.from({ length: 128 }, (_, bits) => garage.jobs.filter((_, i) => (bits >> i) & 1));
  let pairs = 0;
  for (const small of subsets)
    for (const extra of garage.jobs) {
      if (small.includes(extra)) continue;
      const large = [...small, extra];
      for (const j of garage.jobs) {
        if (large.includes(j)) continue;
        pairs += 1;
        expect(marginal(j, large).added[1]).toBeLessThanOrEqual(marginal(j, small).added[1]);
      }
    }
  expect(pairs).toBe(7 * 6 * 32);
});

test("the car opens from the outside in", () => {
  expect(opened(named("sumpGasket", "wheelBearingFL")).map(({ id }) => id)).toEqual([
    "lift",
    "gearbox",
    "engine",
    "wheelFL",
    "hubFL",
  ]);
});

// Nested costs: the k-th job needs the first k stretches; each stretch costs the step between two figures.
const nested = (costs: readonly number[]) =>
  accessOf(
    costs.map((cost, i) => state(`s${i}`, cost - (costs[i - 1] ?? 0), 0, ...(i === 0 ? [] : [`s${i - 1}`]))),
    costs.map((_, i) => job(`j${i}`, 0, `s${i}`)),
  ).jobs;

test.each(NESTED)("nested costs %j are shared as %j ÷ %i", (costs, shares, times) => {
  const jobs = nested(costs);
  const exact = exactShares(jobs, 1).map(({ over, under }) => (Number(over) * times) / Number(under));
  expect(exact).toEqual(shares);
  const minutes = equalSplit(jobs).map((share) => share.minutes[1]);
  expect(minutes.reduce((a, b) => a + b, 0)).toBe(costs.at(-1));
  minutes.forEach((share, i) => {
    expect(Math.abs(share - (shares[i] ?? Number.NaN) / times)).toBeLessThan(1);
  });
});

test.each(OFFERS)("$job while the clutch is done saves against what it throws away", (row) => {
  const got = opportunity({
    job: row.job,
    marginal: marginal(one(row.job), named("clutch")),
    rate: row.ratePerHourMinor,
    partPrice: row.partPriceMinor,
    lifeLeft: row.remainingLife * 100,
  });
  const { savingMinor: moneySaved, lossMinor: moneyThrownAway, suggest, why } = row;
  expect(got).toMatchObject({ ok: true, value: { moneySaved, moneyThrownAway, suggest, why } });
});
