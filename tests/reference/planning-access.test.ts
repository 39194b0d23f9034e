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

const state = (id: string, setUp: number, putBack: number, ...parents: string[]): AccessState => ({
  id,
  parents,
  setUp: [setUp, setUp, setUp],
  putBack: [putBack, putBack, putBack],
});
const job = (id: string, own: number, ...access: string[]): AccessJob => ({ id, own: [own, own, own], access });

const garage = accessOf(
  [
    state("lift", 10, 10),
    state("wheelFL", 10, 10, "lift"),
    state("hubFL", 45, 60, "wheelFL"),
    state("gearbox", 180, 210, "lift"),
    state("engine", 240, 300, "gearbox"),
    state("carpets", 60, 75),
  ],
  [
    job("clutch", 60, "gearbox"),
    job("rearSeal", 35, "gearbox"),
    job("relBearing", 10, "gearbox"),
    job("discFL", 25, "wheelFL"),
    job("wheelBearingFL", 70, "hubFL"),
    job("sumpGasket", 90, "engine"),
    job("floorRust", 120, "carpets", "lift"),
  ],
);
const named = (...ids: string[]): ReachedJob[] => garage.jobs.filter(({ id }) => ids.includes(id));
const one = (id: string): ReachedJob => {
  const found = named(id)[0];
  if (found === undefined) throw new Error(`no job ${id}`);
  return found;
};

test.each([
  [["clutch"], 470],
  [["clutch", "rearSeal"], 505],
  [["clutch", "rearSeal", "relBearing"], 515],
  [["clutch", "sumpGasket"], 1100],
  [["discFL", "wheelBearingFL"], 240],
  [["clutch", "discFL"], 515],
  [["floorRust", "clutch"], 725],
])("%j in one visit take %i minutes", (ids, minutes) => {
  expect(garage.problems).toEqual([]);
  expect(hours(named(...ids))).toEqual([minutes, minutes, minutes]);
});

test.each([
  ["rearSeal", ["clutch"], 35, 445, 0.0787],
  ["rearSeal", [], 445, 445, 1],
  ["sumpGasket", ["clutch"], 630, 1040, 0.6058],
  ["sumpGasket", [], 1040, 1040, 1],
  ["wheelBearingFL", ["discFL"], 175, 215, 0.814],
  ["wheelBearingFL", [], 215, 215, 1],
  ["discFL", ["clutch"], 45, 65, 0.6923],
  ["discFL", [], 65, 65, 1],
  ["floorRust", ["clutch"], 255, 275, 0.9273],
  ["floorRust", [], 275, 275, 1],
])("%s beside %j adds %i minutes of %i alone", (id, given, added, standAlone, ratio) => {
  const got = marginal(one(id), named(...given));
  expect([got.added[1], got.standAlone[1]]).toEqual([added, standAlone]);
  expect(got.ratio).toBeCloseTo(ratio, 4);
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

test.each([
  [[8, 11, 13, 18], [2, 3, 4, 9], 1],
  [[1500, 2200, 3000], [500, 850, 1650], 1],
  [[40, 50, 60, 70, 80, 90], [40, 52, 67, 87, 117, 177], 6],
])("nested costs %j are shared as %j ÷ %i", (costs, shares, times) => {
  const jobs = nested(costs);
  const exact = exactShares(jobs, 1).map(({ over, under }) => (Number(over) * times) / Number(under));
  expect(exact).toEqual(shares);
  const minutes = equalSplit(jobs).map((share) => share.minutes[1]);
  expect(minutes.reduce((a, b) => a + b, 0)).toBe(costs.at(-1));
  minutes.forEach((share, i) => {
    expect(Math.abs(share - (shares[i] ?? Number.NaN) / times)).toBeLessThan(1);
  });
});

test.each([
  ["rearSeal", ["clutch"], 1800, 50, 61_500, 900, true, "saves-more"],
  // only the lift is shared: too little to call it 'while it is apart', and the money says no as well
  ["discFL", ["clutch"], 14_000, 60, 3000, 8400, false, "little-shared"],
])("%s while %j is done saves against what it throws away", (id, given, price, life, saved, lost, suggest, why) => {
  const got = opportunity({
    job: id,
    marginal: marginal(one(id), named(...given)),
    rate: 9000,
    partPrice: price,
    lifeLeft: life,
  });
  expect(got).toMatchObject({ ok: true, value: { moneySaved: saved, moneyThrownAway: lost, suggest, why } });
});
