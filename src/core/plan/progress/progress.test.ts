import { expect, test } from "vitest";
import { PLAN_BODIES } from "../../../../tests/store/sample-plan.js";
import type { PlanBodies, Stands } from "../../record/index.js";
import { tellPlan } from "../messages.js";
import { type Progress, progressOf } from "./progress.js";

type PartStep = PlanBodies["part.step"];
type JobStep = PlanBodies["job.step"];
const stands = <T>(values: readonly T[]): readonly Stands<T>[] =>
  values.map((value, n) => ({ id: `plan:v/w1/${n + 1}/n`, value, at: { wall: n, count: 0 }, by: "anna" }));
const bearing = { job: "whl.bearing", place: "FR" };
const part = (...steps: readonly Omit<PartStep, "job" | "place" | "part">[]): Progress =>
  seen({ parts: steps.map((step) => ({ ...bearing, part: "set", ...step })) });
const job = (...steps: readonly Omit<JobStep, "job" | "place">[]): Progress =>
  seen({ jobs: steps.map((step) => ({ ...bearing, ...step })) });

function grouped<T>(list: readonly T[], key: (one: T) => string): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, readonly T[]>();
  for (const one of list) groups.set(key(one), [...(groups.get(key(one)) ?? []), one]);
  return groups;
}

interface Said {
  readonly parts?: readonly PartStep[];
  readonly jobs?: readonly JobStep[];
  readonly loose?: readonly PlanBodies["left-loose"][];
  readonly cleared?: readonly string[];
}
function seen({ parts = [], jobs = [], loose = [], cleared = [] }: Said, at = "2026-03-12"): Progress {
  const result = progressOf(
    {
      partSteps: grouped(stands(parts), ({ value }) => `${value.job}@${value.place}/${value.part}`),
      jobSteps: grouped(stands(jobs), ({ value }) => `${value.job}@${value.place}`),
      loose: grouped(stands(loose), ({ value }) => value.loose),
      cleared: new Map(cleared.map((name) => [name, stands([{ loose: name, on: "2026-03-12", words: "tight" }])])),
    },
    at,
  );
  if (!result.ok) throw new Error("no progress");
  return result.value;
}
const one = (progress: Progress) => progress.parts[0];
const whole = { right: true, count: true, condition: true };

test("[PP1] a part stands where the last day's step put it, whichever phone told first", () => {
  const progress = part(
    { step: "arrived", on: "2026-03-10" },
    { step: "ordered", on: "2026-03-02" },
    { step: "promised", on: "2026-03-03", promised: "2026-03-09" },
  );
  expect(one(progress)).toMatchObject({ stands: "arrived", since: "2026-03-10", promised: "2026-03-09" });
});

test("[PP1] sent back and ordered anew, the old promise, question and check no longer count", () => {
  const progress = part(
    { step: "ordered", on: "2026-03-02", promised: "2026-03-05", next: "2026-03-06" },
    { step: "chased", on: "2026-03-06" },
    { step: "arrived", on: "2026-03-08" },
    { step: "checked", on: "2026-03-08", checks: { ...whole, right: false } },
    { step: "sent-back", on: "2026-03-09" },
    { step: "ordered", on: "2026-03-09" },
  );
  expect(one(progress)).toEqual({
    ...bearing,
    part: "set",
    stands: "ordered",
    since: "2026-03-09",
    failed: [],
    chased: 0,
  });
});

test("[PP2] what came and was looked at: all right, or what was not, to be sent back", () => {
  const arrived = { step: "arrived", on: "2026-03-10" } as const;
  const checked = (checks: PartStep["checks"]) =>
    one(part(arrived, { step: "checked", on: "2026-03-10", ...(checks ? { checks } : {}) }));
  expect(one(part(arrived))).toMatchObject({ stands: "arrived", failed: [] });
  expect(checked(whole)).toMatchObject({ stands: "passed", failed: [] });
  expect(checked({ ...whole, counterpart: false, count: false })).toMatchObject({
    stands: "failed",
    failed: ["counterpart", "count"],
  });
});

test("[PP2] a question moves a part only by a new promise, and never one that is here", () => {
  const ordered = { step: "ordered", on: "2026-03-02", next: "2026-03-20" } as const;
  const chased = { step: "chased", on: "2026-03-04" } as const;
  expect(one(part(ordered, chased))).toMatchObject({ stands: "ordered", chased: 1 });
  expect(one(part(ordered, { ...chased, promised: "2026-03-15" }))).toMatchObject({ stands: "promised" });
  expect(one(part(ordered, { step: "arrived", on: "2026-03-03" }, chased))).toMatchObject({ stands: "arrived" });
});

test("[PP3] overdue from the day after the promise, until it is here; without one, from the day to ask", () => {
  const ordered = { step: "ordered", on: "2026-03-02", next: "2026-03-05" } as const;
  const promised = (day: string) => ({ step: "promised", on: "2026-03-03", promised: day }) as const;
  expect(one(part(ordered, promised("2026-03-12")))?.overdueDays).toBeUndefined();
  expect(one(part(ordered, promised("2026-03-11")))?.overdueDays).toBe(1);
  expect(one(part(ordered))?.overdueDays).toBe(7);
  const here = one(part(ordered, promised("2026-03-04"), { step: "arrived", on: "2026-03-12" }));
  expect(here?.overdueDays).toBeUndefined();
});

test("[PP4] jobs that wait come by their day; begun or done again, they no longer wait", () => {
  const at = (name: string, step: Omit<JobStep, "job" | "place">): JobStep => ({ job: name, place: "car", ...step });
  const { waiting, jobs } = seen({
    jobs: [
      at("late", { step: "waiting", on: "2026-03-01", next: "2026-03-30" }),
      at("soon", { step: "waiting", on: "2026-03-01", next: "2026-03-10", minutes: 30 }),
      at("again", { step: "waiting", on: "2026-03-01", next: "2026-03-02" }),
      at("again", { step: "begun", on: "2026-03-02", minutes: 15 }),
    ],
  });
  expect(waiting.map(({ job: name, next, overdueDays }) => [name, next, overdueDays])).toEqual([
    ["soon", "2026-03-10", 2],
    ["late", "2026-03-30", undefined],
  ]);
  expect(jobs.map(({ job: name, stands: is, minutes }) => [name, is, minutes])).toEqual([
    ["again", "begun", 15],
    ["late", "waiting", undefined],
    ["soon", "waiting", 30],
  ]);
});

test("[PP4] [PP7] a job that waits for no day is a gap, and comes first", () => {
  const { waiting, gaps } = seen({
    jobs: [
      { job: "later", place: "car", step: "waiting", on: "2026-03-01", next: "2026-03-02" },
      { ...bearing, step: "waiting", on: "2026-03-03" },
    ],
  });
  expect(waiting.map(({ job: name }) => name)).toEqual(["whl.bearing", "later"]);
  expect(gaps.map(tellPlan)).toEqual([
    "whl.bearing at FR waits and nobody says until when. Name the day to take it up again.",
  ]);
});

test("[PP5] done is not measured again until somebody says so after it was done", () => {
  const done = { step: "done", on: "2026-03-10", minutes: 90 } as const;
  const measured = { step: "measured-again", on: "2026-03-11" } as const;
  expect(job(done).unmeasured).toMatchObject([bearing]);
  expect(job(done, measured).unmeasured).toEqual([]);
  expect(job({ ...measured, on: "2026-03-09" }, done).unmeasured).toMatchObject([bearing]);
});

test("[PP6] the car may not leave while anything told as loose is not cleared", () => {
  const nut = PLAN_BODIES["left-loose"];
  const oil: PlanBodies["left-loose"] = {
    loose: "l2",
    what: "drained",
    words: "gear oil",
    on: "2026-03-03",
    replaces: [],
  };
  expect(seen({ loose: [nut, oil], cleared: ["l1"] })).toMatchObject({
    mayLeave: false,
    loose: [{ loose: "l2", what: "drained", words: ["gear oil"] }],
  });
  expect(seen({ loose: [nut, oil], cleared: ["l1", "l2"] })).toMatchObject({ mayLeave: true, loose: [] });
  const differ = seen({ loose: [nut, { ...nut, words: "hub nut and bolts" }] });
  expect(differ.loose[0]?.words).toEqual(["hub nut finger tight", "hub nut and bolts"]);
});

test("[PP7] ordered with no day at all, fitted unchecked, fitted though it failed: each is told", () => {
  const ordered = { step: "ordered", on: "2026-03-02" } as const;
  const fitted = { step: "fitted", on: "2026-03-11" } as const;
  const checked = (right: boolean) => ({ step: "checked", on: "2026-03-10", checks: { ...whole, right } }) as const;
  const codes = (progress: Progress) => progress.gaps.map(({ code }) => code);
  expect(codes(part(ordered))).toEqual(["progress.no-promise"]);
  expect(codes(part({ ...ordered, next: "2026-03-20" }))).toEqual([]);
  expect(codes(part(ordered, fitted))).toEqual(["progress.fitted-unchecked"]);
  expect(codes(part(ordered, checked(false), fitted))).toEqual(["progress.fitted-failed"]);
  expect(codes(part(ordered, checked(true), fitted))).toEqual([]);
});

test("a day that is none is refused, and told", () => {
  const empty = { partSteps: new Map(), jobSteps: new Map(), loose: new Map(), cleared: new Map() };
  const refused = progressOf(empty, "2026-02-30");
  expect(refused.ok ? [] : refused.problems.map(tellPlan)).toEqual(["“2026-02-30” is no day. Write YYYY-MM-DD."]);
});
