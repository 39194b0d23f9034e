// Laws of shared access over random cars: paid once, order-free, dearer by company never, shares that add up.
import fc from "fast-check";
import { expect, test } from "vitest";
import {
  type AccessJob,
  type AccessState,
  accessOf,
  type BundlePart,
  bundlesOf,
  equalSplit,
  hours,
  marginal,
  minutesOf,
  opened,
  type ReachedJob,
  settleWays,
  type Three,
} from "../../src/core/plan/index.js";

const RUNS = { numRuns: 150, seed: 8820 };
const minutes = fc
  .tuple(fc.nat(60), fc.nat(60), fc.nat(200))
  .map(([low, more, most]): Three => [low, low + more, low + more + most]);
const some = (most: number) => fc.array(fc.nat(1_000_000), { maxLength: most });

/** States need earlier ones only, so no circle is drawn; jobs need any. */
const car = fc
  .record({
    states: fc.array(fc.tuple(minutes, minutes, some(2)), { minLength: 1, maxLength: 10 }),
    jobs: fc.array(fc.tuple(minutes, some(3)), { minLength: 1, maxLength: 9 }),
  })
  .map(({ states, jobs }) => ({
    states: states.map(
      ([setUp, putBack, needs], i): AccessState => ({
        id: `s${i}`,
        setUp,
        putBack,
        parents: i === 0 ? [] : needs.map((n) => `s${n % i}`),
      }),
    ),
    jobs: jobs.map(
      ([own, needs], i): AccessJob => ({ id: `j${i}`, own, access: needs.map((n) => `s${n % states.length}`) }),
    ),
  }));
const jobsOf = (drawn: { states: readonly AccessState[]; jobs: readonly AccessJob[] }) => {
  const got = accessOf(drawn.states, drawn.jobs);
  expect(got.problems).toEqual([]);
  return got.jobs;
};
const PARTS = [0, 1, 2] as const;

test("PA2: minutes depend on which jobs, not on their order or that of the states", () => {
  fc.assert(
    fc.property(car, (drawn) => {
      const turned = jobsOf({ states: [...drawn.states].reverse(), jobs: [...drawn.jobs].reverse() });
      expect(hours(turned)).toEqual(hours(jobsOf(drawn)));
    }),
    RUNS,
  );
});

test("PA2: own ≤ added to more ≤ added to fewer ≤ alone, and what is added one by one is the whole", () => {
  fc.assert(
    fc.property(car, fc.nat(9), (drawn, cut) => {
      const jobs = jobsOf(drawn);
      const few = jobs.slice(0, cut % jobs.length);
      let sum = 0;
      jobs.forEach((job, i) => {
        const toAll = marginal(job, jobs.slice(0, i));
        sum += toAll.added[1];
        for (const p of PARTS) {
          expect(toAll.added[p]).toBeGreaterThanOrEqual(job.own[p]);
          expect(toAll.standAlone[p]).toBeGreaterThanOrEqual(toAll.added[p]);
          if (i >= few.length) expect(marginal(job, few).added[p]).toBeGreaterThanOrEqual(toAll.added[p]);
        }
      });
      expect(sum).toBe(hours(jobs)[1]);
    }),
    RUNS,
  );
});

test("PA2: the car opens parents first, each state once", () => {
  fc.assert(
    fc.property(car, (drawn) => {
      const order = opened(jobsOf(drawn));
      expect(new Set(order).size).toBe(order.length);
      order.forEach((state, i) => {
        for (const parent of state.parents) expect(order.slice(0, i)).toContain(parent);
      });
    }),
    RUNS,
  );
});

test("PA3: shares add up to the visit, hold each job's own and never pass what it takes alone", () => {
  fc.assert(
    fc.property(car, (drawn) => {
      const jobs = jobsOf(drawn);
      const shares = equalSplit(jobs);
      for (const p of PARTS) expect(shares.reduce((sum, s) => sum + s.minutes[p], 0)).toBe(hours(jobs)[p]);
      jobs.forEach((job, i) => {
        const share = shares[i]?.minutes ?? [0, 0, 0];
        for (const p of PARTS) {
          expect(share[p]).toBeGreaterThanOrEqual(job.own[p]);
          expect(share[p]).toBeLessThanOrEqual(hours([job])[p]);
          expect(share[p]).toBeGreaterThanOrEqual(share[p === 2 ? 1 : 0]);
        }
      });
    }),
    RUNS,
  );
});

const lines = (part: BundlePart): { jobs: string[]; states: string[] } =>
  part.kind === "job"
    ? { jobs: [part.job], states: part.alone.map(({ state }) => state) }
    : {
        jobs: part.parts.flatMap((p) => lines(p).jobs),
        states: [...part.states.map(({ state }) => state), ...part.parts.flatMap((p) => lines(p).states)],
      };

test("PA4: the forest shows every job and every opened state once, and its minutes are the visit's", () => {
  fc.assert(
    fc.property(car, (drawn) => {
      const jobs = jobsOf(drawn);
      const forest = bundlesOf(jobs);
      expect(forest.flatMap((p) => lines(p).jobs).sort()).toEqual(jobs.map(({ id }) => id).sort());
      const states = opened(jobs).map(({ id }) => id);
      expect(forest.flatMap((p) => lines(p).states).sort()).toEqual(states.sort());
      for (const part of PARTS) expect(forest.reduce((sum, p) => sum + minutesOf(p)[part], 0)).toBe(hours(jobs)[part]);
      const first = forest[0];
      expect(first?.kind === "job" ? first.job : first?.first).toBe(jobs[0]?.id);
    }),
    RUNS,
  );
});

test("PA5: no other combination of ways makes the visit shorter", () => {
  const withWays = fc.record({ drawn: car, ways: fc.array(fc.tuple(some(2), some(2)), { maxLength: 4 }) });
  fc.assert(
    fc.property(withWays, ({ drawn, ways }) => {
      const state = (n: number) => `s${n % drawn.states.length}`;
      const jobs = jobsOf({
        states: drawn.states,
        jobs: drawn.jobs.map((job, i) => {
          const [a, b] = ways[i] ?? [];
          return a === undefined || b === undefined ? job : { ...job, ways: [a.map(state), b.map(state)] };
        }),
      });
      let all: readonly (readonly ReachedJob[])[] = [[]];
      for (const job of jobs) all = all.flatMap((some) => job.ways.map(({ needs }) => [...some, { ...job, needs }]));
      const got = settleWays(jobs);
      expect(got.proven).toBe(true);
      expect(hours(got.jobs)[1]).toBe(Math.min(...all.map((some) => hours(some)[1])));
    }),
    RUNS,
  );
});
