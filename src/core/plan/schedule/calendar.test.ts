// Opening times as one line of working minutes, and the chains of work: their faults and edges.
import { expect, test } from "vitest";
import { arrivesOn, criticalPath, localTime, orderBy, tellPlan, type WorkCalendar, workAxis } from "../index.js";

const DAY: readonly (readonly [number, number])[] = [
  [480, 720],
  [780, 1020],
];
const SHOP: WorkCalendar = {
  zone: "Europe/Berlin",
  week: [DAY, DAY, DAY, DAY, DAY, [], []],
  closed: [{ from: "2026-05-01", to: "2026-05-03", why: "fair" }],
  people: 1,
  lifts: 1,
};
const at = (date: string, minute = 0) => ({ date, minute });
const axisOf = (calendar: WorkCalendar, date: string, minute = 0) => {
  const axis = workAxis(calendar, at(date, minute));
  if (!axis.ok) throw new Error(axis.problems.map(tellPlan).join());
  return axis.value;
};
const told = (result: ReturnType<typeof workAxis>) => (result.ok ? [] : result.problems.map(tellPlan));

test("[PD2] work begins at an opening and ends at a closing, over lunch, night, weekend and shut days", () => {
  const axis = axisOf(SHOP, "2026-04-30", 600); // a Thursday at ten
  const start = (minute: number) => localTime(axis.startsAt(minute));
  const end = (minute: number) => localTime(axis.endsAt(minute));
  expect([start(0), end(0)]).toEqual([at("2026-04-30", 600), at("2026-04-30", 600)]);
  expect([end(120), start(120)]).toEqual([at("2026-04-30", 720), at("2026-04-30", 780)]);
  expect([end(360), start(360)]).toEqual([at("2026-04-30", 1020), at("2026-05-04", 480)]);
  expect(end(361)).toEqual(at("2026-05-04", 481));
});

test("[PD2] minutes worked until a time stand still while the shop is shut", () => {
  const axis = axisOf(SHOP, "2026-04-30", 600);
  const thursday = axis.startsAt(0) - 600;
  const worked = (days: number, minute: number) => axis.worked(thursday + days * 1440 + minute);
  expect([worked(-1, 700), worked(0, 600), worked(0, 700), worked(0, 750), worked(0, 1020)]).toEqual([
    0, 0, 100, 120, 360,
  ]);
  expect([worked(2, 600), worked(4, 479), worked(4, 480), worked(4, 500)]).toEqual([360, 360, 360, 380]);
});

test("[PD2] past two years the axis runs on, so that whoever plans beyond it can be told", () => {
  const axis = axisOf({ ...SHOP, week: [DAY, [], [], [], [], [], []], closed: [] }, "2026-04-30");
  expect(axis.length).toBe(104 * 480); // Mondays from 4 May 2026 to 24 April 2028
  expect(localTime(axis.endsAt(axis.length))).toEqual(at("2028-04-24", 1020));
  expect(axis.worked(axis.endsAt(axis.length + 30))).toBe(axis.length + 30);
});

test("[PD3] the weekend the clocks change moves no opening time, in spring or autumn, on either side of the ocean", () => {
  const CHANGES = [
    ["Europe/Berlin", "2026-03-27", "2026-03-30"],
    ["Europe/Berlin", "2026-10-23", "2026-10-26"],
    ["America/New_York", "2026-03-06", "2026-03-09"],
    ["America/New_York", "2026-10-30", "2026-11-02"],
  ] as const;
  for (const [zone, friday, monday] of CHANGES) {
    const axis = axisOf({ ...SHOP, zone }, friday);
    expect([zone, localTime(axis.endsAt(480)), localTime(axis.startsAt(480)), localTime(axis.endsAt(960))]).toEqual([
      zone,
      at(friday, 1020),
      at(monday, 480),
      at(monday, 1020),
    ]);
    // The changing Sunday itself, in a shop that works through the hour that is not there.
    const sunday = axisOf({ ...SHOP, week: Array.from({ length: 7 }, () => [[60, 240] as const]) }, friday);
    expect([localTime(sunday.startsAt(360)).minute, localTime(sunday.endsAt(540)).minute]).toEqual([60, 240]);
  }
});

test("[PD6] a workshop that is never open, or whose times or people make no sense, is told", () => {
  const shut = (more: Partial<WorkCalendar>) => told(workAxis({ ...SHOP, ...more }, at("2026-04-30")));
  expect(shut({ week: Array.from({ length: 7 }, () => []) })).toEqual([
    "workshop is never open in the two years after 2026-04-30. Look at the days it works.",
  ]);
  expect(shut({ closed: [{ from: "2026-01-01", to: "2029-01-01" }] })).toHaveLength(1);
  expect(shut({ week: [[], [[720, 600]], [], [], [], [], []] })).toEqual([
    "Opening times of weekday 2 overlap or end before they begin.",
  ]);
  expect(shut({ week: [DAY] })).toEqual(["A week has seven days, from Monday; 1 are given."]);
  expect(shut({ closed: [{ from: "2026-05-03", to: "2026-05-01" }] })).toEqual([
    "workshop: shut from 2026-05-03 to 2026-05-01 is no span of days. Put the earlier day first.",
  ]);
  expect(shut({ people: 0, lifts: -1 })).toHaveLength(2);
  expect(told(workAxis(SHOP, at("2026-02-30")))).toEqual([
    "“2026-02-30” is no day and time of the calendar. Write YYYY-MM-DD.",
  ]);
});

test("[PD6] a supplier that is never open, or whose days are not known, is told", () => {
  const mill = { id: "mill", week: [1, 2], closed: [], leadDays: 3 };
  const says = (result: ReturnType<typeof arrivesOn>) => (result.ok ? [result.value] : result.problems.map(tellPlan));
  expect(says(arrivesOn({ ...mill, week: [] }, "2026-05-04"))[0]).toContain("mill is never open");
  const years = { ...mill, closed: [{ from: "2020-01-01", to: "2030-01-01" }] };
  expect(says(arrivesOn(years, "2026-05-04"))[0]).toContain("mill is never open");
  expect(says(orderBy(years, "2026-05-04"))[0]).toContain("mill is never open");
  expect(says(arrivesOn({ ...mill, leadDays: undefined }, "2026-05-04"))[0]).toContain("is not known. Ask");
  expect(says(arrivesOn({ ...mill, leadDays: 1.5 }, "2026-05-04"))[0]).toContain("whole numbers");
  expect(says(arrivesOn({ ...mill, week: [0] }, "2026-05-04"))[0]).toContain("1 for Monday");
  expect(says(arrivesOn(mill, "May"))[0]).toContain("no day");
  expect(says(arrivesOn({ ...mill, leadDays: 0 }, "2026-05-04"))).toEqual(["2026-05-04"]);
  expect(says(arrivesOn({ ...mill, leadDays: 0 }, "2026-05-06"))).toEqual(["2026-05-11"]);
});

test("[PD1] jobs that wait for each other in a circle are named one by one, in the order they wait", () => {
  const job = (id: string, ...preds: string[]) => ({ id, duration: 1, preds });
  const round = criticalPath([job("out"), job("bore", "out", "fit"), job("hone", "bore"), job("fit", "hone")]);
  expect(round).toMatchObject({ ok: false, problems: [{ code: "schedule.circle" }] });
  if (round.ok) throw new Error("a circle");
  expect(round.problems[0]?.params["jobs"]).toEqual(["bore", "hone", "fit"]);
});

test("[PD1] a job may wait for a day of its own; the slack before it is nobody's", () => {
  const path = criticalPath([
    { id: "strip", duration: 2, preds: [] },
    { id: "build", duration: 3, preds: ["strip"], release: 10 },
  ]);
  if (!path.ok) throw new Error("planned");
  expect(path.value).toMatchObject({
    finish: 13,
    critical: ["build"],
    rows: [
      { id: "strip", total: 8, free: 8 },
      { id: "build", es: 10 },
    ],
  });
});

test("[PD6] a job without minutes, named twice or following one that is not there is told by name", () => {
  const path = criticalPath([
    { id: "bleed", duration: Number.NaN, preds: [] },
    { id: "pads", duration: 0.5, preds: ["disc"] },
    { id: "pads", duration: 1, preds: [], release: -1 },
  ]);
  if (path.ok) throw new Error("faulty");
  expect(path.problems.map(tellPlan)).toEqual([
    "bleed has no minutes. Give whole minutes, nought or more.",
    "pads has no minutes. Give whole minutes, nought or more.",
    "pads follows disc, which is no job here. Take that step out or add the job.",
    "pads stands twice. Give each job its own name.",
    "pads may not start before a day that is none.",
  ]);
});
