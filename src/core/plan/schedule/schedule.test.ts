// A car in the workshop: what holds it up, until when to order, what is left out, how a stop and an edit are met.
import { expect, test } from "vitest";
import { type Activity, type ScheduleInput, schedule, tellPlan } from "../index.js";

const DAY: readonly (readonly [number, number])[] = [[480, 960]];
const SHOP: ScheduleInput["calendar"] = {
  zone: "Europe/Berlin",
  week: [DAY, DAY, DAY, DAY, DAY, [], []],
  closed: [],
  people: 1,
  lifts: 1,
};
const job = (id: string, hours: number, more: Partial<Activity> = {}): Activity => ({
  id,
  minutes: hours * 60,
  preds: [],
  ...more,
});
/** Monday 14 July 2025, at opening, unless said. */
const plan = (activities: readonly Activity[], more: Partial<ScheduleInput> = {}) => {
  const from = { date: "2025-07-14", minute: 480 };
  const result = schedule({ today: "2025-07-14", from, calendar: SHOP, activities, ...more });
  if (!result.ok) throw new Error(result.problems.map(tellPlan).join());
  return result.value;
};
const shop = (more: Partial<ScheduleInput["calendar"]>): Partial<ScheduleInput> => ({ calendar: { ...SHOP, ...more } });
const causes = (holds: ReturnType<typeof plan>["holds"]) =>
  holds.map((hold) => `${hold.job}: ${hold.cause}${"by" in hold ? ` ${hold.by}` : ""}`);
const AUGUST = { from: "2025-08-01", to: "2025-08-31", why: "summer" };
const CASTINGS = { id: "castings", week: [1, 2, 3, 4, 5], closed: [AUGUST], leadDays: 10 };
const FIT = [job("strip", 4), job("fit", 2, { preds: ["strip"] }), job("test", 1, { preds: ["fit"] })];

test("[PD11] ten days of lead and August shut: the car waits for the part, which waits for the supplier's summer", () => {
  const { finish, holds, orders, gained, proven } = plan(FIT, {
    today: "2025-07-18",
    suppliers: [CASTINGS],
    parts: [{ id: "housing", job: "fit", supplier: "castings" }],
  });
  expect([finish, proven]).toEqual([{ date: "2025-09-01", minute: 660 }, true]);
  expect(holds).toEqual([
    { job: "test", cause: "job", by: "fit" },
    {
      job: "fit",
      cause: "part",
      part: "housing",
      comes: "2025-09-01",
      supplier: "castings",
      ordered: "2025-07-18",
      leadDays: 10,
      carriageDays: 0,
      through: [AUGUST],
    },
  ]);
  expect(orders).toEqual([
    {
      part: "housing",
      neededOn: "2025-09-01",
      orderBy: "2025-07-18",
      late: false,
      beats: { closed: AUGUST, orderBy: "2025-07-17" },
    },
  ]);
  expect(gained).toEqual([
    { part: "housing", finish: { date: "2025-07-14", minute: 900 }, days: 49, minutes: 35 * 480 - 240 },
  ]);
});

test("[PD12] with slack before it a part may be ordered later, and one whose last day is past is told as late", () => {
  const boring = { id: "boring-shop", week: [1, 2, 3, 4, 5], closed: [], leadDays: 1 };
  const parts = [{ id: "seal", job: "fit", supplier: "boring-shop" }];
  const waits = [job("strip", 4, { release: "2025-07-24" }), ...FIT.slice(1)];
  expect(plan(waits, { suppliers: [boring], parts }).orders).toEqual([
    { part: "seal", neededOn: "2025-07-24", orderBy: "2025-07-23", late: false },
  ]);
  // Ordered already: nothing is to be ordered.
  const ordered = [{ ...parts[0], id: "seal", job: "fit", ordered: "2025-07-11" }];
  expect(plan(waits, { suppliers: [boring], parts: ordered }).orders).toEqual([]);
  const block = [{ id: "out", open: "strip", jobs: ["fit"], close: "test", gate: "at-once" as const }];
  expect(plan(FIT, { suppliers: [boring], parts, blocks: block, today: "2025-07-16" }).orders).toEqual([
    { part: "seal", neededOn: "2025-07-17", orderBy: "2025-07-16", late: false },
  ]);
});

test("[PD11] each cause is named: the job before, its process, the person, the lift, the tool, the day, shut days", () => {
  expect(causes(plan(FIT).holds)).toEqual(["test: job fit", "fit: job strip", "strip: start"]);
  const glued = [job("glue", 1, { wall: 24 * 60 }), job("trim", 1, { preds: ["glue"] })];
  expect(causes(plan(glued).holds)).toEqual(["trim: process glue", "glue: start"]);
  expect(causes(plan([job("a", 2), job("b", 3)]).holds)).toEqual(["b: person a", "a: start"]);
  const lifted = [job("a", 2, { lift: true }), job("b", 3, { lift: true })];
  expect(causes(plan(lifted, shop({ people: 2 })).holds)).toEqual(["b: lift a", "a: start"]);
  const pulled = [job("a", 2, { tool: "puller" }), job("b", 3, { tool: "puller" })];
  expect(causes(plan(pulled, shop({ people: 2 })).holds)).toEqual(["b: tool a", "a: start"]);
  const dated = [job("a", 2, { release: "2025-07-21" })];
  expect(plan(dated).holds).toEqual([{ job: "a", cause: "day", date: "2025-07-21" }]);
  const fair = { from: "2025-07-15", to: "2025-07-18", why: "fair" };
  expect(plan([job("a", 10)], shop({ closed: [fair] })).holds).toEqual([
    { job: "a", cause: "calendar", closed: fair },
    { job: "a", cause: "start" },
  ]);
});

test("[PD11] a block holds the lift against the next job; its name is told", () => {
  const activities = [job("down", 1), job("disc", 1), job("up", 1), job("exhaust", 6, { lift: true })];
  const blocks = [{ id: "gearbox-out", open: "down", jobs: ["disc"], close: "up" }];
  const { holds, lifts, finish } = plan(activities, { blocks, ...shop({ people: 2 }) });
  expect(finish).toEqual({ date: "2025-07-15", minute: 540 });
  expect(lifts.map(({ by, held, idle }) => [by, held, idle])).toEqual([
    ["gearbox-out", 180, 0],
    ["exhaust", 360, 0],
  ]);
  expect(causes(holds)).toEqual(["exhaust: lift gearbox-out", "up: job disc", "disc: job down", "down: start"]);
});

test("[PD10] the closing waits for a bored block: the opening is put off until it costs nothing", () => {
  const activities = [job("down", 1), job("disc", 1), job("up", 1, { release: "2025-07-17" })];
  const block = { id: "gearbox-out", open: "down", jobs: ["disc"], close: "up" };
  const { lifts, activities: rows } = plan(activities, { blocks: [block] });
  expect(lifts).toMatchObject([{ by: "gearbox-out", held: 180, idle: 0, gate: "parts-in-hand" }]);
  expect(rows[0]).toMatchObject({ id: "down", start: { date: "2025-07-16", minute: 840 } });
  const atOnce = plan(activities, { blocks: [{ ...block, gate: "at-once" }] });
  expect(atOnce.lifts).toMatchObject([{ held: 25 * 60, idle: 22 * 60 }]);
});

test("[PD10] just in time makes room for what one pair of hands must do before the part is needed", () => {
  const activities = [job("down", 2), job("clean", 4), job("disc", 1), job("up", 1)];
  const block = { id: "out", open: "down", jobs: ["clean", "disc"], close: "up", gate: "just-in-time" as const };
  const parts = [{ id: "disc-new", job: "disc", comes: "2025-07-17", confirmed: true }];
  const { activities: rows, finish } = plan(activities, { blocks: [block], parts });
  expect(finish).toEqual({ date: "2025-07-17", minute: 600 });
  expect(rows[0]).toMatchObject({ id: "down", start: { date: "2025-07-16", minute: 600 } });
});

test("[PD10] blocks that share a job are one, what must come between is inside, the strictest gate holds", () => {
  const activities = [
    job("up", 1),
    job("engine-out", 1, { preds: ["up"] }),
    job("bore", 0, { preds: ["engine-out"], wall: 2880, lift: true }),
    job("engine-in", 1, { preds: ["bore"] }),
    job("down", 1),
  ];
  const { lifts, problems, finish } = plan(activities, {
    blocks: [
      { id: "lift-up", open: "up", jobs: ["engine-out", "engine-in"], close: "down", gate: "at-once" },
      { id: "engine", open: "engine-out", jobs: [], close: "engine-in" },
    ],
  });
  expect(problems).toEqual([]);
  expect(finish).toEqual({ date: "2025-07-16", minute: 720 });
  expect(lifts).toMatchObject([{ by: "lift-up", gate: "parts-in-hand", held: 20 * 60, idle: 16 * 60 }]);
});

test("[PD7] paint dries over night and weekend; a process ends on the real clock, also when the clocks go forward", () => {
  const paint = [job("paint", 8, { wall: 63 * 60 }), job("flat", 1, { preds: ["paint"] })];
  const friday = { from: { date: "2026-03-27", minute: 480 }, today: "2026-03-27" };
  const without = plan(paint, friday).activities;
  expect(without[0]?.ready).toEqual({ date: "2026-03-30", minute: 420 });
  expect(without[1]?.start).toEqual({ date: "2026-03-30", minute: 480 });
  const long = [job("paint", 8, { wall: 64 * 60 + 30 }), job("flat", 1, { preds: ["paint"] })];
  const clockChanges = [{ date: "2026-03-29", minute: 120, by: 60 }];
  const changed = plan(long, { ...friday, clockChanges }).activities;
  expect(changed[0]?.ready).toEqual({ date: "2026-03-30", minute: 570 });
  expect(changed[1]?.start).toEqual({ date: "2026-03-30", minute: 570 });
  const autumn = plan(long, {
    from: { date: "2026-10-23", minute: 480 },
    today: "2026-10-23",
    clockChanges: [{ date: "2026-10-25", minute: 180, by: -60 }],
  }).activities;
  expect(autumn[1]?.start).toEqual({ date: "2026-10-26", minute: 480 });
  const odd = plan(long, { ...friday, clockChanges: [{ date: "spring", minute: 120, by: 60 }] });
  expect(odd.problems.map(tellPlan)).toEqual(["spring is no change of the clocks. Give day, minute and by how much."]);
});

test("[PD13] a part without a day leaves its job out with all that waits for it; the rest is planned", () => {
  const parts = [{ id: "housing", job: "fit" }];
  const { activities, leftOut, problems, finish } = plan([...FIT, job("wash", 1)], { parts });
  expect(activities.map(({ id }) => id)).toEqual(["strip", "wash"]);
  expect([leftOut, finish]).toEqual([["fit", "test"], { date: "2025-07-14", minute: 780 }]);
  expect(problems.map(tellPlan)).toEqual([
    "housing for fit has no date. Say that it is here, when it comes, or where to order it.",
    "test has no date: it waits for fit.",
  ]);
});

test("[PD13] a car that could not be closed again is not opened", () => {
  const blocks = [{ id: "out", open: "strip", jobs: ["fit"], close: "test", gate: "at-once" as const }];
  const parts = [{ id: "housing", job: "fit" }];
  const { activities, leftOut, proven } = plan(FIT, { blocks, parts });
  expect([activities, [...leftOut].sort(), proven]).toEqual([[], ["fit", "strip", "test"], true]);
});

test("[PD13] parts from nowhere, past their day, of an unknown supplier or one that never works are told", () => {
  const told = (...parts: NonNullable<ScheduleInput["parts"]>) =>
    plan(FIT, { parts, suppliers: [{ ...CASTINGS, week: [] }] }).problems.map(tellPlan);
  expect(told({ id: "p", job: "paint" })).toEqual(["p is for paint, which is no job here."]);
  expect(told({ id: "p", job: "test", comes: "2025-07-11" })[0]).toContain("was to come on 2025-07-11");
  expect(told({ id: "p", job: "test", comes: "soon" })[0]).toContain("“soon” is no day");
  expect(told({ id: "p", job: "test", supplier: "mill" })[0]).toContain("not among the suppliers");
  expect(told({ id: "p", job: "test", supplier: "castings" })[0]).toContain("castings is never open");
  const late = {
    parts: [{ id: "p", job: "test", supplier: "castings", ordered: "2025-06-02" }],
    suppliers: [CASTINGS],
  };
  expect(plan(FIT, late).problems.map(tellPlan)[0]).toContain("was to come on 2025-06-16");
});

test("[PD13] faulty jobs, too few people, a circle and a block that names nothing are told by name, the rest planned", () => {
  const { problems, activities } = plan(
    [
      ...FIT,
      job("", Number.NaN),
      job("lift-body", 1, { people: 3 }),
      job("a", 1, { preds: ["b"] }),
      job("b", 1, { preds: ["a"] }),
      job("c", 1, { preds: ["z"], release: "then" }),
      job("fit", 9),
    ],
    { blocks: [{ id: "out", open: "strip", jobs: ["hone"], close: "test" }] },
  );
  expect(activities.map(({ id }) => id)).toEqual(["strip", "fit", "test"]);
  expect(problems.map(tellPlan)).toEqual([
    "fit stands twice. Give each job its own name.",
    " has no minutes. Give whole minutes, nought or more.",
    "lift-body needs 3 people, and there are 1. Change the job or the workshop.",
    "c may not start before a day that is none.",
    "c follows z, which is no job here. Take that step out or add the job.",
    "The block out names hone, which is no job here. Take it out or add the job.",
    "These jobs each wait for the next: a, b. Take one of the steps out.",
  ]);
  const none = plan([job("a", 1, { lift: true }), ...FIT], {
    ...shop({ lifts: 0 }),
    blocks: [{ id: "out", open: "strip", jobs: [], close: "fit" }],
  });
  expect([...none.leftOut].sort()).toEqual(["a", "fit", "strip", "test"]);
});

test("[PD13] what would end more than two years on is left out with what waits for it", () => {
  const { leftOut, problems, finish } = plan([
    job("a", 1),
    job("b", 1, { release: "2031-01-01" }),
    job("c", 1, { preds: ["b"] }),
  ]);
  expect([leftOut, finish]).toEqual([["b", "c"], { date: "2025-07-14", minute: 540 }]);
  expect(problems.map(tellPlan)[0]).toContain("b would end more than two years on");
});

test("[PD8] told to stop, the plan stands and is not called proven", () => {
  // Nine hours for two, in pieces of three: the bound of four and a half cannot be met.
  const three = ["a", "b", "c"].map((id) => job(id, 3));
  const stopped = plan(three, { ...shop({ people: 2 }), goOn: () => false });
  const full = plan(three, shop({ people: 2 }));
  expect([stopped.stopped, stopped.proven, full.stopped, full.proven]).toEqual([true, false, false, true]);
  expect([stopped.finish, full.finish]).toEqual([
    { date: "2025-07-14", minute: 840 },
    { date: "2025-07-14", minute: 840 },
  ]);
  expect(full.bound).toEqual({ date: "2025-07-14", minute: 750 });
});

test("[PD8] an edit that spoils the order by urgency does not spoil the plan: the order of before is tried too", () => {
  const hours = [2, 2, 2, 3, 3];
  const jobs = hours.map((each, i) => job(`j${i}`, each, { due: i, lift: i === 2 }));
  const quick = { ...shop({ people: 2 }), passes: 0, nodeCap: 0 };
  const { order, finish } = plan(jobs, shop({ people: 2 }));
  expect(finish).toEqual({ date: "2025-07-14", minute: 840 });
  const longer = jobs.map((each) => (each.id === "j0" ? { ...each, minutes: 110 } : each));
  expect(plan(longer, { ...quick, before: order }).finish).toEqual(finish);
  expect(plan(longer, { ...quick, before: [...order, "gone"].slice(1) }).leftOut).toEqual([]);
});

test("[PD9] a cap on the search that is met is no proof", () => {
  const awkward = [
    job("a", 3, { people: 2 }),
    job("b", 2),
    job("c", 5, { release: "2025-07-15" }),
    job("d", 7),
    job("e", 3),
  ];
  const capped = plan(awkward, { ...shop({ people: 2 }), nodeCap: 0, passes: 0 });
  const full = plan(awkward, shop({ people: 2 }));
  expect([full.proven, capped.stopped]).toEqual([true, false]);
  if (capped.finish === undefined || full.finish === undefined) throw new Error("planned");
  expect(`${capped.finish.date} ${capped.finish.minute}` >= `${full.finish.date} ${full.finish.minute}`).toBe(true);
});

test("[PD6] no workshop or no day: nothing is planned and it is told", () => {
  const base = { today: "2025-07-14", from: { date: "2025-07-14", minute: 480 }, calendar: SHOP, activities: FIT };
  const told = (more: Partial<ScheduleInput>) => {
    const result = schedule({ ...base, ...more });
    return result.ok ? [] : result.problems.map(tellPlan);
  };
  expect(told({ today: "today" })).toEqual(["“today” is no day and time of the calendar. Write YYYY-MM-DD."]);
  expect(told(shop({ people: 0 }))).toEqual(["Nobody works in this workshop. Give at least one person."]);
  expect(plan([])).toMatchObject({ activities: [], holds: [], leftOut: [], proven: true });
});
