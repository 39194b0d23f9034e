// The whole list: one function from jobs to plan; the worked access example, a budget, an August.
import { expect, test } from "vitest";
import type { UrgencyKey } from "../../assess/contract.js";
import type { WorkInput, WorkJob, WorkOpening } from "./contract.js";
import { planWork } from "./plan-work.js";

const key = (id: string, due: UrgencyKey["due"], rank: number): UrgencyKey => ({
  gate: 1,
  due,
  rank,
  grade: "minor",
  left: null,
  position: 1,
  id,
});
const job = (id: string, own: number, access: readonly string[], more: Partial<WorkJob> = {}): WorkJob => ({
  id,
  key: key(id, 3, 12),
  grade: "minor",
  minutes: [own, own, own],
  access,
  follows: [],
  parts: [],
  ...more,
});
const opening = (
  id: string,
  parents: readonly string[],
  setUp: number,
  putBack: number,
  onLift = false,
): WorkOpening => ({
  id,
  parents,
  setUp: [setUp, setUp, setUp],
  putBack: [putBack, putBack, putBack],
  onLift,
});
/** Minutes of the worked access example (illustrative, no source). */
const OPENINGS = [
  opening("lift", [], 10, 10, true),
  opening("wheelFL", ["lift"], 10, 10),
  opening("hubFL", ["wheelFL"], 45, 60),
  opening("gearbox", ["lift"], 180, 210),
];
const CLUTCH = job("clutch", 60, ["gearbox"], { key: key("clutch", 2, 9) });
const SEAL = job("rearSeal", 35, ["gearbox"]);
const DISC = job("discFL", 25, ["wheelFL"]);
const TERMS = {
  currency: "EUR",
  labourRates: [{ id: "shop", name: "Workshop", perHour: 9000 }],
  tax: {
    label: "Example",
    groups: [{ id: "full", name: "Full rate", basisPoints: 2000 }],
    labourGroup: "full",
    partsGroup: "full",
    rounding: "half-up",
    level: "invoice",
  },
} as const;
const CALENDAR = {
  zone: "Europe/Berlin",
  week: [
    ...Array(5).fill([
      [480, 720],
      [780, 1020],
    ]),
    [],
    [],
  ],
  closed: [],
  people: 1,
  lifts: 1,
};
const input = (more: Partial<WorkInput>): WorkInput => ({
  today: "2025-07-28",
  jobs: [CLUTCH, SEAL, DISC],
  openings: OPENINGS,
  ...more,
});

test("without budget everything is planned; shared opening is counted once, and told per job", () => {
  const plan = planWork(input({ jobs: [CLUTCH, SEAL] }));
  expect(plan.minutes).toEqual([505, 505, 505]);
  expect(plan.jobs.find(({ id }) => id === "rearSeal")).toMatchObject({
    added: [35, 35, 35],
    standAlone: [445, 445, 445],
    isChosen: true,
  });
  expect([plan.estimate, plan.schedule, plan.choice, plan.problems]).toEqual([undefined, undefined, undefined, []]);
});

test("what can't wait is in whatever the budget; the seal comes along because its gearbox is out anyway", () => {
  // clutch 470 min at 90.00/h with 20 % is 846.00; the seal 35 min more is 63.00
  const poor = planWork(input({ terms: TERMS, budget: 50_000 }));
  expect([poor.chosen, poor.choice?.overBy]).toEqual([["clutch"], 34_600]);
  const enough = planWork(input({ terms: TERMS, budget: 90_900 }));
  expect([[...enough.chosen].sort(), enough.choice?.proven, enough.estimate?.gross.likely]).toEqual([
    ["clutch", "rearSeal"],
    true,
    90_900,
  ]);
  expect(enough.nextStep?.added).toEqual(["discFL"]);
});

test("a job left out by hand is left out where it can wait, and never where it can't", () => {
  const wanted = "out" as const;
  expect(
    planWork(
      input({
        jobs: [
          { ...CLUTCH, wanted },
          { ...SEAL, wanted },
        ],
      }),
    ).chosen,
  ).toEqual(["clutch"]);
});

test("[PW10] a declined job without hours is set aside from no sum, for it is in none", () => {
  const { minutes: _minutes, ...untold } = CLUTCH;
  const aside = (declined: boolean) =>
    planWork(input({ jobs: [{ ...untold, declined }, SEAL], terms: TERMS })).setAside;
  expect([aside(false), aside(true)]).toEqual([["clutch"], []]);
});

test("[PW10] a declined job is in no sum, date or offer even where it can't wait, and the list still knows that it can't", () => {
  const plan = planWork(input({ jobs: [{ ...CLUTCH, declined: true }, SEAL], terms: TERMS, calendar: CALENDAR }));
  expect(plan.chosen).toEqual(["rearSeal"]);
  expect(plan.jobs.find(({ id }) => id === "clutch")).toMatchObject({ isMandatory: true, isChosen: false });
  expect([plan.estimate?.lines.some(({ id }) => id === "clutch"), plan.offers, plan.setAside]).toEqual([false, [], []]);
  expect(plan.schedule?.activities.some(({ id }) => id === "clutch")).toBe(false);
});

test("a job nobody has given hours is named and set aside, the rest is planned", () => {
  const { minutes: _, ...bare } = SEAL;
  const plan = planWork(input({ jobs: [CLUTCH, bare] }));
  expect([plan.chosen, plan.setAside, plan.problems.length]).toEqual([["clutch"], ["rearSeal"], 1]);
});

test("what is done has spent its part of the budget: the rest is chosen with what is left", () => {
  const done = { ...CLUTCH, isDone: true };
  // 60 min at 90.00/h with 20 % are 108.00
  const plan = planWork(input({ jobs: [done, SEAL, DISC], terms: TERMS, budget: 10_800 + 20_000 }));
  expect([plan.spent, plan.chosen]).toEqual([10_800, ["discFL"]]);
  expect(planWork(input({ jobs: [SEAL, DISC], terms: TERMS, budget: 30_800 })).spent).toBe(0);
});

test("a part whose price nobody has said is named: the money does not hold it", () => {
  const parts = [
    { id: "plate", count: 1, price: [9000, 9500, 12_000] as const },
    { id: "spigot", count: 1 },
  ];
  expect(planWork(input({ jobs: [{ ...CLUTCH, parts }], terms: TERMS })).unpriced).toEqual(["clutch/spigot"]);
});

test("what is left out and nearly open already is offered where the labour saved outweighs the part", () => {
  const parts = [{ id: "seal", count: 1, price: [1500, 1800, 2500] as const }];
  const plan = planWork(input({ jobs: [CLUTCH, { ...SEAL, parts }], terms: TERMS, budget: 1 }));
  expect(plan.offers).toMatchObject([{ job: "rearSeal", suggest: true, moneySaved: 61_500 }]);
});

test("a gear from a maker shut in August holds the car up; ordered eleven days earlier it would not", () => {
  const maker = {
    id: "maker",
    week: [1, 2, 3, 4, 5],
    closed: [{ from: "2025-08-01", to: "2025-08-31" }],
    leadDays: 10,
  };
  const gears = job("gears", 360, [], {
    key: key("gears", 2, 9),
    parts: [{ id: "pair", count: 1, supplier: "maker" }],
  });
  const late = planWork(input({ jobs: [gears], calendar: CALENDAR, suppliers: [maker] }));
  // ten open days after 28 July: three before the closure, seven after, so Tuesday 9 September
  expect(late.schedule?.finish).toEqual({ date: "2025-09-09", minute: 15 * 60 });
  expect(late.schedule?.holds[0]).toMatchObject({ job: "gears", cause: "part", part: "gears/pair" });
  const early = planWork(input({ today: "2025-07-17", jobs: [gears], calendar: CALENDAR, suppliers: [maker] }));
  expect(early.schedule?.finish?.date).toBe("2025-07-31");
});

test("what is sent out is away for the days of whoever takes it in, and the car is closed after", () => {
  const grinder = { id: "grinder", week: [1, 2, 3, 4, 5], closed: [], leadDays: 5, outwork: true };
  const disc = job("discFL", 30, ["wheelFL"], { parts: [{ id: "disc", count: 1, supplier: "grinder" }] });
  const plan = planWork(input({ jobs: [disc], calendar: CALENDAR, suppliers: [grinder] }));
  // leaves on Monday 28 July, back on Monday 4 August
  expect(plan.schedule?.activities.find(({ id }) => id === "discFL")?.start.date).toBe("2025-08-04");
});

test("where nobody knows how long what is sent out is away, its job has no date; no day is made up", () => {
  const grinder = { id: "grinder", week: [1, 2, 3, 4, 5], closed: [], outwork: true };
  const disc = job("discFL", 30, [], { parts: [{ id: "disc", count: 1, supplier: "grinder" }] });
  const plan = planWork(input({ jobs: [disc], calendar: CALENDAR, suppliers: [grinder] }));
  expect([plan.schedule?.leftOut, plan.problems.map(({ code }) => code)]).toEqual([
    ["discFL"],
    expect.arrayContaining(["schedule.no-lead"]),
  ]);
});

test("what was sent out and is promised for a day is waited for until that day", () => {
  const grinder = { id: "grinder", week: [1, 2, 3, 4, 5], closed: [], leadDays: 5, outwork: true };
  const part = { id: "disc", count: 1, supplier: "grinder", orderedOn: "2025-07-25", promised: "2025-07-30" };
  const disc = job("discFL", 30, [], { parts: [part] });
  const plan = planWork(input({ jobs: [disc], calendar: CALENDAR, suppliers: [grinder] }));
  expect(plan.schedule?.finish?.date).toBe("2025-07-30");
});
