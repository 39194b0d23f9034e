// Small plans whose shortest finish is known, and the car that must not be stranded on the only lift.
import { expect, test } from "vitest";
import { type Activity, type LocalTime, type PartNeed, type Schedule, schedule } from "../../src/core/plan/index.js";
import { CASES, STRANDED } from "./facts/small-plans.js";

/** A shop that never shuts: a working minute is a minute, and each unit of a case is a day. */
const ALWAYS = Array.from({ length: 7 }, () => [[0, 1440] as const]);
const DAY = 1440;
const FIRST = Date.UTC(2026, 0, 5) / 86_400_000;
const date = (day: number): string => new Date((FIRST + day) * 86_400_000).toISOString().slice(0, 10);
const unitsOf = ({ date: on, minute }: LocalTime): number => Date.parse(on) / 86_400_000 - FIRST + minute / DAY;

test.each(CASES)(
  "[PD9] the shortest plan of a small job for two people and one lift takes %i, and is proven",
  (optimum, rows) => {
    const activities = rows.map(([duration, preds, people, lift, release], i): Activity => {
      const base = { id: `j${i}`, minutes: duration * DAY, preds: preds.map((p) => `j${p}`), people, lift: lift === 1 };
      return release === 0 ? base : { ...base, release: date(release) };
    });
    const calendar = { zone: "Etc/UTC", week: ALWAYS, closed: [], people: 2, lifts: 1 };
    const plan = schedule({ today: date(0), from: { date: date(0), minute: 0 }, calendar, activities });
    if (!plan.ok) throw new Error("planned");
    expect(plan.value.problems).toEqual([]);
    expect(plan.value.finish && unitsOf(plan.value.finish)).toBe(optimum);
    expect(plan.value.proven).toBe(true);
  },
);

// By hand: eight-hour days, the part comes at the start of the tenth day (hour 72); out 6 h, fit 1 h, in 6 h.
const HOURS = Array.from({ length: 7 }, () => [[480, 960] as const]);
const gearbox = (gate: "parts-in-hand" | "just-in-time" | "at-once", confirmed: boolean): Schedule => {
  const part: PartNeed = { id: "bearing", job: "fit", comes: date(9), confirmed };
  const plan = schedule({
    today: date(0),
    from: { date: date(0), minute: 0 },
    calendar: { zone: "Etc/UTC", week: HOURS, closed: [], people: 1, lifts: 1 },
    activities: [
      { id: "out", minutes: 360, preds: [] },
      { id: "fit", minutes: 60, preds: [] },
      { id: "in", minutes: 360, preds: [] },
    ],
    blocks: [{ id: "gearbox-out", open: "out", jobs: ["fit"], close: "in", gate }],
    parts: [part],
  });
  if (!plan.ok) throw new Error("planned");
  return plan.value;
};
const hours = (time: LocalTime): number => {
  const [day, minute] = [Math.floor(unitsOf({ ...time, minute: 0 })), time.minute];
  return day * 8 + (minute - 480) / 60;
};
const told = ({ finish, lifts }: Schedule) => ({
  start: lifts[0] && hours(lifts[0].from),
  finish: finish && hours(finish),
  liftHeld: (lifts[0]?.held ?? 0) / 60,
  liftIdle: (lifts[0]?.idle ?? 0) / 60,
  gate: lifts[0]?.gate,
});

test("[PD10] gearbox out at once: the lift stands idle for 66 hours; with parts in hand for none; just in time both", () => {
  const { early, kitFirst, justInTime } = STRANDED;
  expect(told(gearbox("at-once", true))).toEqual({ ...early, gate: "at-once" });
  expect(told(gearbox("parts-in-hand", true))).toEqual({ ...kitFirst, gate: "parts-in-hand" });
  expect(told(gearbox("just-in-time", true))).toEqual({ ...justInTime, gate: "just-in-time" });
});

test("[PD10] just in time on a day nobody has confirmed waits for the part after all", () => {
  expect(told(gearbox("just-in-time", false))).toMatchObject({ ...STRANDED.kitFirst, gate: "parts-in-hand" });
});
