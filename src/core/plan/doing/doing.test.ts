// The order of doing on a car: what must come first, one bleed, geometry last, one opening, and parts had together.
import { expect, test } from "vitest";
import {
  type AccessState,
  accessOf,
  type DoingJob,
  doingOrder,
  hadTogether,
  orderTogether,
  PLAN_MESSAGES,
  tellPlan,
} from "../index.js";

const state = (id: string, minutes: number, ...parents: string[]): AccessState => ({
  id,
  parents,
  setUp: [minutes, minutes, minutes],
  putBack: [0, 0, 0],
});
const { states } = accessOf(
  [
    state("lift", 10),
    state("wheel-FL", 10, "lift"),
    state("hub-FL", 60, "wheel-FL"),
    state("wheel-FR", 10, "lift"),
    state("pedal-box", 40),
    state("covers", 30, "lift"),
  ],
  [],
);
const needs = (...ids: string[]) => {
  const wanted = new Set<string>();
  const add = (id: string): void => {
    wanted.add(id);
    for (const parent of states.find((s) => s.id === id)?.parents ?? []) add(parent.id);
  };
  ids.forEach(add);
  return states.filter((s) => wanted.has(s.id));
};
const job = (id: string, access: string, more: Partial<DoingJob> = {}): DoingJob => ({
  id,
  needs: access === "" ? [] : needs(...access.split(" ")),
  ...more,
});
const ids = (jobs: readonly DoingJob[], after?: readonly DoingJob[]) => doingOrder(jobs, after).steps.map((s) => s.job);

test("PB1: what must come first does, however urgent the other; and the reason names it", () => {
  const got = doingOrder([
    job("hose", "wheel-FL", { follows: ["tube", "not-due"] }),
    job("lamp", ""),
    job("tube@sill", "covers", { kind: "tube" }),
  ]);
  expect(got.steps.map((s) => s.job)).toEqual(["lamp", "tube@sill", "hose"]);
  expect(got.steps[2]?.why).toContainEqual({ code: "doing.after", params: { first: "tube@sill", others: 0 } });
  expect(got.problems).toEqual([]);
});

test("PB2: jobs of one opened state stay together, and it is opened and put back once", () => {
  const got = doingOrder([
    job("bearing-FL", "hub-FL"),
    job("pads-FR", "wheel-FR"),
    job("stud-FL", "hub-FL"),
    job("pads-FL", "wheel-FL"),
    job("underside", "lift"),
  ]);
  expect(got.steps.map(({ job, opens, closes }) => [opens.join(), job, closes.join()])).toEqual([
    ["lift,wheel-FL,hub-FL", "bearing-FL", ""],
    ["", "stud-FL", "hub-FL"],
    ["", "pads-FL", "wheel-FL"],
    ["wheel-FR", "pads-FR", "wheel-FR"],
    ["", "underside", "lift"],
  ]);
  expect(got.steps[1]?.why).toEqual([{ code: "doing.with", params: { beside: "bearing-FL", state: "hub-FL" } }]);
});

test("PB2: a hub is not opened while a job behind it still waits for one outside", () => {
  const jobs = [
    job("bearing", "hub-FL"),
    job("stud", "hub-FL", { follows: ["find"] }),
    job("find", "pedal-box"),
    job("geometry", "lift", { last: true }),
  ];
  expect(ids(jobs)).toEqual(["find", "bearing", "stud", "geometry"]);
});

test("PB3: geometry comes last and once, but before what itself follows it", () => {
  const got = doingOrder([
    job("geometry@a", "lift", { kind: "geometry", last: true }),
    job("road-test", "", { follows: ["geometry"] }),
    job("geometry@b", "lift", { kind: "geometry", last: true }),
    job("joint", "wheel-FL"),
    job("damper", "wheel-FR"),
  ]);
  expect(got.steps.map((s) => s.job)).toEqual(["joint", "damper", "geometry@a", "road-test"]);
  expect(got.steps[2]).toMatchObject({ standsFor: ["geometry@b"], why: [{ code: "doing.last" }, {}, {}] });
});

test("PB4: all that opens the hydraulics shares one bleed, brought along after the last of it", () => {
  const jobs = [
    job("caliper", "wheel-FL", { endsIn: ["bleed"] }),
    job("lamp", ""),
    job("master", "pedal-box", { endsIn: ["bleed"] }),
  ];
  const got = doingOrder(jobs, [job("bleed", "wheel-FL")]);
  expect(got.steps.map((s) => s.job)).toEqual(["lamp", "master", "caliper", "bleed"]);
  expect(got.steps[3]).toMatchObject({ brought: true, opens: [], closes: ["wheel-FL", "lift"] });
  expect(got.steps[3]?.why).toContainEqual({ code: "doing.once", params: { jobs: 2 } });
  // a full change of fluid is a bleed: none is brought along beside it
  const fluid = job("fluid", "wheel-FL", { contains: ["bleed"] });
  expect(ids([fluid, ...jobs], [job("bleed", "wheel-FL")])).toEqual(["lamp", "master", "caliper", "fluid"]);
  const lost = doingOrder(jobs);
  expect(lost.steps).toHaveLength(3);
  expect(lost.problems.map(tellPlan)).toEqual([
    "caliper ends in bleed, which is not known. Add it, or do it without.",
    "master ends in bleed, which is not known. Add it, or do it without.",
  ]);
});

test("PB5: jobs that wait for each other are named one by one, and all jobs still get their place", () => {
  const got = doingOrder([
    job("a", "", { follows: ["c"] }),
    job("lamp", ""),
    job("b", "", { follows: ["a"] }),
    job("c", "", { follows: ["b"] }),
    job("d", "", { follows: ["c", "d"] }),
    job("a", ""),
  ]);
  expect(got.steps.map((s) => s.job)).toEqual(["a", "lamp", "b", "c", "d"]);
  expect(got.problems.map(tellPlan)).toEqual([
    "a stands twice; it is done once. Give each job its own name.",
    "These jobs each wait for the next: a, b, c, a. Take one of the steps out; until then they stand by urgency.",
  ]);
  for (const { code } of got.problems) expect(PLAN_MESSAGES[code], code).toBeDefined();
});

const SETS = hadTogether([
  {
    job: "hub",
    parts: [
      { part: "hub", set: "hub-and-nut", count: 1 },
      { part: "locking-pin" },
      { part: "hub-nut", set: "hub-and-nut" },
    ],
  },
  { job: "drive", parts: [{ part: "pinion", counterpart: "crown-wheel", count: 1 }] },
  { job: "pads", parts: [{ part: "brake-pads", set: "axle", count: 4 }] },
]);

test("PB6: what wears together is had together", () => {
  expect(SETS).toEqual([
    { job: "hub", set: "hub-and-nut", parts: [{ part: "hub", count: 1 }, { part: "hub-nut" }] },
    { job: "drive", parts: [{ part: "pinion", count: 1 }, { part: "crown-wheel" }] },
    { job: "pads", set: "axle", parts: [{ part: "brake-pads", count: 4 }] },
  ]);
});

test("PB6: a counterpart of a part of a set joins the set, in whatever order they are named", () => {
  const [one, ...more] = hadTogether([
    {
      job: "j",
      parts: [
        { part: "a", counterpart: "c" },
        { part: "b", set: "s" },
        { part: "c", set: "s" },
      ],
    },
  ]);
  expect(more).toEqual([]);
  expect(one).toEqual({ job: "j", set: "s", parts: [{ part: "a" }, { part: "b" }, { part: "c" }] });
});

test("PB6: half a set is refused with its counterpart's name, unless somebody says why", () => {
  const half = orderTogether(SETS, [
    { job: "drive", part: "pinion" },
    { job: "hub", part: "locking-pin" },
  ]);
  expect(half.problems.map(tellPlan)).toEqual([
    "pinion cannot be ordered alone: its counterpart is crown-wheel. Order both, or say why not.",
  ]);
  const why = orderTogether(SETS, [
    { job: "drive", part: "pinion", aloneBecause: " crown wheel new last year " },
    { job: "hub", part: "hub", aloneBecause: " " },
    { job: "pads", part: "brake-pads" },
  ]);
  expect(why.alone).toEqual([
    { job: "drive", part: "pinion", without: ["crown-wheel"], reason: "crown wheel new last year" },
  ]);
  expect(why.problems).toMatchObject([{ params: { part: "hub", counterpart: ["hub-nut"] } }]);
  expect(
    orderTogether(SETS, [
      { job: "hub", part: "hub" },
      { job: "hub", part: "hub-nut" },
    ]).problems,
  ).toEqual([]);
});
