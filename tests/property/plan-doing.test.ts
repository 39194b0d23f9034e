// Laws of the doing order over random jobs: nothing lost, what must come first does, each state opened once.
import fc from "fast-check";
import { expect, test } from "vitest";
import { accessOf, type DoingJob, doingOrder } from "../../src/core/plan/index.js";

const RUNS = { numRuns: 100, seed: 5312 };
const some = fc.array(fc.nat(1_000_000), { maxLength: 3 });
const drawn = fc
  .record({
    parents: fc.array(some, { minLength: 1, maxLength: 8 }),
    jobs: fc.array(fc.record({ access: some, follows: some, last: fc.boolean(), ends: fc.boolean() }), {
      minLength: 1,
      maxLength: 10,
    }),
    /** Jobs follow earlier ones only: no circle. */
    straight: fc.boolean(),
  })
  .map(({ parents, jobs, straight }) => {
    const access = accessOf(
      parents.map((needs, i) => ({
        id: `s${i}`,
        parents: i === 0 ? [] : needs.map((n) => `s${n % i}`),
        setUp: [i, i, i] as const,
        putBack: [1, 1, 1] as const,
      })),
      jobs.map((job, i) => ({
        id: `j${i}`,
        own: [1, 1, 1] as const,
        access: job.access.map((n) => `s${n % parents.length}`),
      })),
    );
    const given = access.jobs.map(({ id, needs }, i): DoingJob => {
      const { follows = [], last = false, ends = false } = jobs[i] ?? {};
      const upTo = straight ? i : jobs.length;
      return {
        id,
        needs,
        follows: upTo === 0 ? [] : follows.map((n) => `j${n % upTo}`),
        last: last && !straight,
        endsIn: ends ? ["bleed"] : [],
      };
    });
    return { given, straight };
  });
const BLEED: DoingJob = { id: "bleed", needs: [] };

test("PB1 PB4 PB5: every job once, and without a circle each after all it follows; the bleed after all that end in it", () => {
  fc.assert(
    fc.property(drawn, ({ given, straight }) => {
      const { steps, problems } = doingOrder(given, [BLEED]);
      const order = steps.map(({ job }) => job);
      const isBled = given.some(({ endsIn }) => endsIn?.length);
      expect([...order].sort()).toEqual([...given.map(({ id }) => id), ...(isBled ? ["bleed"] : [])].sort());
      if (straight) expect(problems).toEqual([]);
      if (problems.length > 0) return;
      for (const { id, follows = [], endsIn = [] } of given) {
        for (const first of follows) if (first !== id) expect(order.indexOf(first)).toBeLessThan(order.indexOf(id));
        if (endsIn.length > 0) expect(order.indexOf(id)).toBeLessThan(order.indexOf("bleed"));
      }
    }),
    RUNS,
  );
});

test("PB2: each state is opened once, after its parents and before its jobs, and put back after the last of them", () => {
  fc.assert(
    fc.property(drawn, ({ given }) => {
      const open: string[] = [];
      const opened: string[] = [];
      for (const step of doingOrder(given, [BLEED]).steps) {
        const needs = given.find(({ id }) => id === step.job)?.needs ?? [];
        opened.push(...step.opens);
        open.push(...step.opens);
        for (const state of needs) expect(open).toContain(state.id);
        for (const id of step.closes) open.splice(open.indexOf(id), 1);
      }
      expect(new Set(opened).size).toBe(opened.length);
      expect(open).toEqual([]);
    }),
    RUNS,
  );
});
