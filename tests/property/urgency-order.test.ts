// Laws of the urgency order over random lists of findings and jobs.
import fc from "fast-check";
import { expect, test } from "vitest";
import type { Fault } from "../../src/core/assess/contract.js";
import {
  compareKeys,
  order,
  rankOf,
  type Urgency,
  type Urgent,
  urgencyOf,
  urgentFaults,
  whyKeys,
} from "../../src/core/plan/index.js";
import { GRADES } from "../../src/core/terms/index.js";

const RUNS = { numRuns: 500, seed: 20140045 };
const CONSEQUENCES = [4, 3, 2, 1] as const;
const LIKELIHOODS = ["E", "D", "C", "B", "A"] as const;
const EXPOSURES = [-1, 0, 1] as const;

const urgent = fc.record({
  grade: fc.constantFrom(...GRADES),
  consequence: fc.constantFrom(...CONSEQUENCES),
  likelihood: fc.constantFrom(...LIKELIHOODS),
  mustStand: fc.boolean(),
  exposure: fc.constantFrom(...EXPOSURES),
  close: fc.boolean(),
  limitPassed: fc.boolean(),
  left: fc.option(fc.double({ min: -1, max: 4, noNaN: true }), { nil: undefined }),
  position: fc.nat(400),
});
type Drawn = typeof urgent extends fc.Arbitrary<infer T> ? T : never;
const withId = (d: Drawn, id: string): Urgent => {
  const { left, ...rest } = d;
  return left === undefined ? { ...rest, id } : { ...rest, left, id };
};
const list = fc.array(urgent, { maxLength: 40 }).map((all) => all.map((d, i) => withId(d, `f${i}`)));
const sorted = (all: readonly Urgent[]) => all.map(urgencyOf).sort((a, b) => compareKeys(a.key, b.key).sign);
const ids = (all: readonly Urgency[]) => all.map((u) => u.key.id);

test("the order is total: of two findings one always stands above, and the reason names a part that differs", () => {
  fc.assert(
    fc.property(list, (all) => {
      const got = sorted(all);
      for (let i = 1; i < got.length; i += 1) {
        const [a, b] = [got[i - 1], got[i]];
        if (a === undefined || b === undefined) continue;
        expect(compareKeys(a.key, b.key).sign).toBe(-1);
        const why = whyKeys(a.key, b.key);
        if (why.code !== "above.dangerous") expect(why.params["upper"]).not.toBe(why.params["lower"]);
        else expect([a.key.grade, b.key.grade === "dangerous"]).toEqual(["dangerous", false]);
      }
    }),
    RUNS,
  );
});

test("shuffling the findings changes nothing, and ordering twice changes nothing", () => {
  const shuffled = list.chain((all) =>
    fc.tuple(fc.constant(all), fc.shuffledSubarray([...all], { minLength: all.length })),
  );
  fc.assert(
    fc.property(shuffled, ([all, other]) => {
      expect(ids(sorted(other))).toEqual(ids(sorted(all)));
      expect(ids(sorted(sorted(all).map((u) => all.find((f) => f.id === u.key.id) ?? fail())))).toEqual(
        ids(sorted(all)),
      );
    }),
    RUNS,
  );
});
const fail = (): never => {
  throw new Error("a finding got lost");
};

test("how two findings stand to each other never depends on a third", () => {
  fc.assert(
    fc.property(list, fc.nat(), (all, drop) => {
      const left = all.filter((_, i) => i !== drop % Math.max(1, all.length));
      const kept = new Set(left.map((f) => f.id));
      expect(ids(sorted(all)).filter((id) => kept.has(id))).toEqual(ids(sorted(left)));
    }),
    RUNS,
  );
});

test("dangerous findings come first, and five hundred lesser ones leave them where they were", () => {
  fc.assert(
    fc.property(list, fc.array(urgent, { minLength: 500, maxLength: 500 }), (all, more) => {
      const lesser = more.map((d, i) => withId({ ...d, grade: d.grade === "dangerous" ? "major" : d.grade }, `x${i}`));
      const before = ids(sorted(all.filter((f) => f.grade === "dangerous")));
      expect(ids(sorted([...all, ...lesser])).slice(0, before.length)).toEqual(before);
    }),
    { ...RUNS, numRuns: 30 },
  );
});

test("due classes never fall back after the dangerous ones", () => {
  fc.assert(
    fc.property(list, (all) => {
      const rest = sorted(all).filter((u) => u.key.gate === 1);
      for (let i = 1; i < rest.length; i += 1)
        expect(rest[i]?.key.due).toBeGreaterThanOrEqual(rest[i - 1]?.key.due ?? 0);
    }),
    RUNS,
  );
});

const next = <T>(ladder: readonly T[], at: T): T => ladder[Math.min(ladder.length - 1, ladder.indexOf(at) + 1)] ?? at;
test("a worse grade, outcome, likelihood, exposure or a shorter way left never moves a finding down nor makes it due later", () => {
  const change = fc.constantFrom(
    "grade",
    "consequence",
    "likelihood",
    "exposure",
    "left",
    "limitPassed",
    "mustStand",
    "close",
  );
  fc.assert(
    fc.property(list, fc.nat(), change, (all, at, what) => {
      const target = all[at % Math.max(1, all.length)];
      if (target === undefined) return;
      const worse: Urgent =
        what === "grade"
          ? { ...target, grade: next(GRADES, target.grade) }
          : what === "consequence"
            ? { ...target, consequence: next(CONSEQUENCES, target.consequence) }
            : what === "likelihood"
              ? { ...target, likelihood: next(LIKELIHOODS, target.likelihood) }
              : what === "exposure"
                ? { ...target, exposure: next(EXPOSURES, target.exposure) }
                : what === "left"
                  ? { ...target, left: (target.left ?? 4) - 0.5 }
                  : { ...target, [what]: true };
      const after = sorted(all.map((f) => (f === target ? worse : f)));
      expect(ids(after).indexOf(target.id)).toBeLessThanOrEqual(ids(sorted(all)).indexOf(target.id));
      expect(urgencyOf(worse).key.due).toBeLessThanOrEqual(urgencyOf(target).key.due);
    }),
    RUNS,
  );
});

test("the matrix gets strictly worse along both axes", () => {
  for (const p of LIKELIHOODS)
    for (const s of CONSEQUENCES) {
      if (s > 1) expect(rankOf(next(CONSEQUENCES, s), p)).toBeLessThan(rankOf(s, p));
      if (p !== "A") expect(rankOf(s, next(LIKELIHOODS, p))).toBeLessThan(rankOf(s, p));
    }
});

const JOBS = ["job.a", "job.b", "job.c"];
const fault = fc
  .record({
    drawn: urgent,
    jobs: fc.subarray(JOBS),
    fault: fc.constantFrom("x", "y", "z"),
    place: fc.constantFrom("FL", "FR"),
  })
  .map(
    ({ drawn, jobs, fault: name, place }): Fault => ({
      fault: name,
      place,
      grade: drawn.grade,
      sure: "likely",
      close: drawn.close,
      provisional: false,
      rules: [],
      jobs,
      cautions: [],
      consequence: drawn.consequence,
      likelihood: drawn.likelihood,
      mustStand: drawn.mustStand,
      position: drawn.position,
      settle: [],
    }),
  );
const faults = fc.uniqueArray(fault, { maxLength: 6, selector: (f) => `${f.fault}@${f.place}` });
const sheets = [
  {
    sheet: {
      jobs: [
        { id: "job.a", place: "corner" },
        { id: "job.b", place: "axle" },
      ],
      nextLooks: [],
      rules: [],
    },
  },
];
const around = (place: string, kind: string) => (kind === "axle" ? "axle-F" : kind === "corner" ? place : undefined);

test("a job stands where its most urgent fault stands, once per place, and names every fault it answers", () => {
  fc.assert(
    fc.property(faults, fc.constantFrom(...EXPOSURES), (all, exposure) => {
      const setting = { exposure, around };
      const jobs = order({ faults: all }, sheets, setting);
      const due = urgentFaults(all, sheets, setting);
      expect(new Set(jobs.map((j) => `${j.job}@${j.place}`)).size).toBe(jobs.length);
      const pairs = all.flatMap((f) => f.jobs.map((j) => `${j} ${f.fault}@${f.place}`)).sort();
      expect(jobs.flatMap((j) => j.faults.map((f) => `${j.job} ${f.fault}@${f.place}`)).sort()).toEqual(pairs);
      for (const job of jobs) {
        const first = due.find((d) => job.faults.some((f) => f.fault === d.fault.fault && f.place === d.fault.place));
        expect(job.key).toEqual(first?.urgency.key);
      }
      for (let i = 1; i < jobs.length; i += 1) {
        const [a, b] = [jobs[i - 1], jobs[i]];
        if (a && b) expect(compareKeys(a.key, b.key).sign).toBeLessThanOrEqual(0);
      }
    }),
    RUNS,
  );
});
