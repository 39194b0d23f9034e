// Laws of choosing within a budget over drawn choices: what every answer keeps to, and which way it moves when asked otherwise.
import fc from "fast-check";
import { expect, test } from "vitest";
import { type ChoiceProblem, type ChoiceResult, choose, nextStep, tieredValues } from "../../src/core/plan/index.js";
import { everyPlan, needed } from "../support/choice-by-hand.js";
import { choiceCase, KINDS } from "../support/choice-cases.js";

const RUNS = { numRuns: 40, seed: 20140045 };
const kind = fc.record({
  kind: fc.constantFrom(...KINDS),
  hasMandatory: fc.boolean(),
  jobs: fc.integer({ min: 1, max: 10 }),
  states: fc.integer({ min: 1, max: 6 }),
  seed: fc.nat(1e6),
});
const small = kind.map(({ seed, kind: of, ...rest }) => choiceCase({ ...of, ...rest }, seed));
const larger = kind.map(({ seed, kind: of, hasMandatory }) =>
  choiceCase({ ...of, hasMandatory, jobs: 18, states: 8 }, seed),
);

function chosen(asked: ChoiceProblem): ChoiceResult {
  const got = choose(asked);
  if (!got.ok) throw new Error(JSON.stringify(got.problems));
  return got.value;
}
const musts = (asked: ChoiceProblem): number => {
  const { cost, overBy } = chosen({ ...asked, budget: 0 });
  return overBy === undefined ? 0 : cost;
};

test("[PC4] [PC5] [PC8] as by trying every set of jobs: worth, least cost, and the next step", () => {
  fc.assert(
    fc.property(small, (asked) => {
      const got = chosen(asked);
      const limit = asked.budget + (got.overBy ?? 0);
      const all = everyPlan(asked);
      const best = Math.max(...all.filter((plan) => plan.cost <= limit).map((plan) => plan.value));
      expect([got.value, got.bound, got.proven]).toEqual([best, best, true]);
      const cheapest = Math.min(...all.filter((plan) => plan.value === best).map((plan) => plan.cost));
      expect(got.cost).toBe(cheapest);
      const dearer = all.filter((plan) => plan.value > best).map((plan) => plan.cost);
      const step = nextStep(asked, got);
      expect(step.ok && step.value.plan?.cost).toBe(dearer.length === 0 ? undefined : Math.min(...dearer));
    }),
    { ...RUNS, numRuns: 80 },
  );
});

test("[PC1] [PC2] [PC3] every answer holds the mandatory jobs, opens exactly what is needed, and keeps to budget, groups and sets", () => {
  fc.assert(
    fc.property(larger, (asked) => {
      const got = chosen(asked);
      const has = new Set(got.chosen);
      for (const job of asked.jobs) {
        if (job.mandatory === true) expect(has).toContain(job.id);
        if (has.has(job.id)) for (const id of job.needs ?? []) expect(has).toContain(id);
      }
      const jobs = asked.jobs.filter((job) => has.has(job.id));
      const groups = jobs.flatMap((job) => job.oneOf ?? []);
      expect(new Set(groups).size).toBe(groups.length);
      for (const { together, id } of asked.jobs)
        if (together !== undefined)
          expect(asked.jobs.filter((j) => j.together === together).every((j) => has.has(j.id))).toBe(has.has(id));
      const open = needed(asked, jobs);
      expect(got.open).toEqual([...open].sort());
      const paid = [...jobs, ...asked.states.filter((s) => open.has(s.id))].reduce((sum, { cost }) => sum + cost, 0);
      expect(got.cost).toBe(paid);
      expect(got.cost).toBeLessThanOrEqual(asked.budget + (got.overBy ?? 0));
      expect(got.overBy ?? 0).toBe(Math.max(0, musts(asked) - asked.budget));
    }),
    RUNS,
  );
});

test("[PC10] more budget or one more optional job never lowers the worth, dearer access never raises it", () => {
  fc.assert(
    fc.property(larger, fc.nat(1e5), fc.nat(), (asked, more, at) => {
      const { value } = chosen(asked);
      expect(chosen({ ...asked, budget: asked.budget + more }).value).toBeGreaterThanOrEqual(value);
      const joined = {
        id: "one more",
        value: more % 20,
        cost: more,
        access: asked.states.slice(0, 1).map((s) => s.id),
      };
      expect(chosen({ ...asked, jobs: [...asked.jobs, joined] }).value).toBeGreaterThanOrEqual(value);
      const states = asked.states.map((s, i) => (i === at % asked.states.length ? { ...s, cost: s.cost + more } : s));
      // Mandatory work that gets dearer lifts the limit once it is over: asked with room for it.
      if (musts({ ...asked, states }) <= asked.budget)
        expect(chosen({ ...asked, states }).value).toBeLessThanOrEqual(value);
    }),
    RUNS,
  );
});

test("[PC10] the worth and the cost do not hang on the order things are given in", () => {
  const shuffled = larger.chain((asked) =>
    fc.record({
      asked: fc.constant(asked),
      jobs: fc.shuffledSubarray([...asked.jobs], { minLength: asked.jobs.length }),
      states: fc.shuffledSubarray([...asked.states], { minLength: asked.states.length }),
    }),
  );
  fc.assert(
    fc.property(shuffled, ({ asked, jobs, states }) => {
      expect(chosen({ ...asked, jobs, states })).toEqual(chosen(asked));
    }),
    RUNS,
  );
});

test("[PC10] without access costs it is the plain knapsack", () => {
  const job = fc.record({ value: fc.nat(20), cost: fc.nat(30) });
  fc.assert(
    fc.property(fc.array(job, { maxLength: 25 }), fc.nat(300), (drawn, budget) => {
      const jobs = drawn.map((j, i) => ({ ...j, id: `j${i}`, access: ["lift"] }));
      const best = Array.from({ length: budget + 1 }, () => 0);
      for (const { value, cost } of jobs)
        for (let room = budget; room >= cost; room -= 1)
          best[room] = Math.max(best[room] ?? 0, (best[room - cost] ?? 0) + value);
      expect(chosen({ budget, jobs, states: [{ id: "lift", cost: 0, parents: [] }] }).value).toBe(best[budget]);
    }),
    RUNS,
  );
});

test("[PC6] cut short anywhere, the answer is a plan, and its bound is kept by the best plan there is", () => {
  fc.assert(
    fc.property(larger, fc.integer({ min: 1, max: 30 }), (asked, nodeCap) => {
      const whole = chosen(asked);
      const cut = chosen({ ...asked, nodeCap });
      expect(cut.cost).toBeLessThanOrEqual(asked.budget + (cut.overBy ?? 0));
      expect(cut.value).toBeLessThanOrEqual(whole.value);
      expect(cut.bound).toBeGreaterThanOrEqual(whole.value);
      if (cut.proven) expect([cut.value, cut.bound, cut.cost]).toEqual([whole.value, whole.value, whole.cost]);
      const step = nextStep({ ...asked, nodeCap }, whole);
      const best = nextStep(asked, whole);
      if (step.ok && best.ok && best.value.plan !== undefined)
        expect(step.value.atLeast).toBeLessThanOrEqual(best.value.plan.cost);
    }),
    RUNS,
  );
});

test("[PC9] by tiers one job of a band is worth more than all of the bands below", () => {
  const ranked = fc.array(
    fc.record({ rank: fc.integer({ min: 1, max: 20 }), after: fc.constantFrom("gone", "watched") }),
    {
      maxLength: 60,
    },
  );
  const lowest = [5, 9, 17];
  fc.assert(
    fc.property(ranked, (drawn) => {
      const jobs = drawn.map((j, i) => ({ ...j, id: `j${i}` }) as const);
      const values = tieredValues(jobs);
      expect(values.size).toBe(jobs.length);
      for (const last of lowest) {
        const below = jobs.filter((j) => j.rank > last).reduce((sum, j) => sum + (values.get(j.id) ?? 0), 0);
        for (const j of jobs) if (j.rank <= last) expect(values.get(j.id)).toBeGreaterThan(below);
      }
    }),
    RUNS,
  );
});
