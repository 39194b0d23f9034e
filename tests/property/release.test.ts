/** One more thing that is open never turns a refused car into one that may be driven, and takes nothing off the list. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { type HandingBack, mayBeDriven, standsAgainst, type WorkTold } from "../../src/core/plan/index.js";
import { GRADES } from "../../src/core/terms/index.js";

const places = fc.constantFrom("FL", "FR", "RL", "RR");
const jobs = fc.constantFrom("job.a", "job.b");
const point = fc.record({ point: fc.constantFrom("whl.float", "whl.spin"), place: places });
const fault = fc.record({
  fault: fc.constantFrom("f1", "f2"),
  place: places,
  grade: fc.constantFrom(...GRADES),
  jobs: fc.array(jobs, { maxLength: 2 }),
});
const gate = fc
  .record({
    gate: fc.constantFrom("g1", "g2"),
    guards: fc.constantFrom("drive-away", "w4-road", "spark", "touch", "lift"),
    state: fc.constantFrom("tripped" as const, "cleared" as const, "not cleared" as const),
    noted: fc.option(
      fc.nat(300).map((wall) => ({ wall, count: 0 })),
      { nil: undefined },
    ),
  })
  .map((one) => ({ ...one, drives: ["drive-away", "w4-road"].includes(one.guards) }));
const wanting = fc.tuple(point, fc.constantFrom("unsettled" as const, "unfit" as const, ...GRADES)).map(([at, is]) => ({
  ...at,
  is,
  says: "0.24 mm",
}));
const work: fc.Arbitrary<WorkTold> = fc
  .record({
    job: jobs,
    place: places,
    stands: fc.constantFrom("begun" as const, "waiting" as const, "done" as const, "measured-again" as const),
    unanswered: fc.array(point, { maxLength: 2 }),
    forOthers: fc.array(point, { maxLength: 1 }),
    unasked: fc.array(point, { maxLength: 2 }),
    wanting: fc.array(wanting, { maxLength: 2 }),
    told: fc.nat(300),
    isOwn: fc.boolean(),
    second: fc.option(fc.constantFrom("brakes" as const, "wheels" as const), { nil: undefined }),
    looked: fc.constantFrom("other" as const, "same" as const, "none" as const),
  })
  .map(({ second, told, ...one }) => ({
    ...one,
    ...(one.stands === "done" || one.stands === "measured-again"
      ? { doneOn: "2026-03-10", toldAt: { wall: told, count: 0 } }
      : {}),
    ...(second === undefined ? {} : { secondLook: second }),
    isMeasured: one.stands === "measured-again",
    lookers: [],
    access: [],
  }));
const loose = fc.record({
  loose: fc.constantFrom("l1", "l2"),
  what: fc.constant("loose" as const),
  words: fc.constant(["hub nut"]),
  on: fc.constant("2026-03-03"),
});
const part = fc.record({
  job: jobs,
  place: places,
  part: fc.constantFrom("p1", "p2"),
  stands: fc.constantFrom("ordered" as const, "arrived" as const, "failed" as const, "fitted" as const),
  since: fc.constant("2026-03-03"),
  failed: fc.constant([]),
  chased: fc.constant(0),
});
const complaint = fc.record({
  id: fc.constantFrom("c1", "c2"),
  visit: fc.constant("visit:v"),
  on: fc.constant("2026-03-01"),
  text: fc.constant("It hums"),
  isCarried: fc.boolean(),
  differ: fc.constant(false),
});
const few = <T>(one: fc.Arbitrary<T>) => fc.array(one, { maxLength: 4 });
const given: fc.Arbitrary<HandingBack> = fc.record({
  faults: few(fault),
  gates: few(gate),
  works: few(work),
  loose: few(loose),
  parts: few(part),
  complaints: few(complaint),
  isAlone: fc.boolean(),
});
/** One thing more, whatever it is. */
const more = fc.oneof(
  fault.map(
    (one) =>
      (all: HandingBack): HandingBack => ({ ...all, faults: [...all.faults, one] }),
  ),
  gate.map(
    (one) =>
      (all: HandingBack): HandingBack => ({ ...all, gates: [...all.gates, one] }),
  ),
  work.map(
    (one) =>
      (all: HandingBack): HandingBack => ({ ...all, works: [...all.works, one] }),
  ),
  loose.map(
    (one) =>
      (all: HandingBack): HandingBack => ({ ...all, loose: [...all.loose, one] }),
  ),
  part.map(
    (one) =>
      (all: HandingBack): HandingBack => ({ ...all, parts: [...all.parts, one] }),
  ),
  complaint.map(
    (one) =>
      (all: HandingBack): HandingBack => ({ ...all, complaints: [...all.complaints, one] }),
  ),
);

test("[RL1] with one thing more, what refused refuses still", () => {
  fc.assert(
    fc.property(given, more, (all, add) => {
      const after = standsAgainst(add(all));
      if (!mayBeDriven(standsAgainst(all))) expect(mayBeDriven(after)).toBe(false);
    }),
    { numRuns: 400, seed: 20_261_129 },
  );
});

test("[RL1] a dangerous finding, a loose thing and an unanswered complaint are never left off the list", () => {
  fc.assert(
    fc.property(given, (all) => {
      const kinds = standsAgainst(all).map(({ is }) => is);
      const count = (kind: string): number => kinds.filter((one) => one === kind).length;
      expect(count("dangerous")).toBe(all.faults.filter(({ grade }) => grade === "dangerous").length);
      expect(count("loose")).toBe(all.loose.length);
      expect(count("complaint")).toBe(all.complaints.length);
    }),
    { numRuns: 200, seed: 20_261_129 },
  );
});
