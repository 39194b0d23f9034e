// [LA1] [LA6] [LA7] [HO44] Over a car's visits: what is left standing, what was done, and who has looked again since.
import type { ReadonlySignal } from "@preact/signals";
import { expect, test } from "vitest";
import {
  type Bench,
  bench,
  benchVisit,
  commonFrozen,
  key,
  miniShelf,
  sheetFrozen,
  until,
  words,
} from "../../../tests/support/app-bench.js";
import type { PlanState } from "../../core/record/index.js";
import { openVisit } from "./car-acts.js";
import { decide } from "./decision-acts.js";
import { looksTold } from "./handover-looks.js";
import type { Opened } from "./journal.js";
import { type LooksFor, type LooksNow, looksNow } from "./looks-ground.js";
import { saysOf, titleOf, whenText } from "./looks-words.js";
import { jobStep } from "./plan-acts.js";
import { reply } from "./reply-acts.js";
import { odometer } from "./visit-acts.js";
import { wornVisits } from "./wearing-visits.js";

const AT = { job: "job.hub.renew", place: "FR" };
const LATER = "2026-12-30T10:00:00+01:00";

async function open<State>(signal: ReadonlySignal<Opened<State>>): Promise<State> {
  const opened = await until(signal, ({ is }) => is === "open");
  if (opened.is !== "open") throw new Error("not opened");
  return opened.state;
}
const spin = (on: Bench, visit: string, word: string) =>
  reply(on.journal, visit, key("hub.spin", "FR", "feel"), words(word));
const read = (on: Bench, visit: string, value: string) => odometer(on.journal, visit, { value, unit: "km" });
const done = (on: Bench, visit: string) => jobStep(on.journal, visit, { ...AT, step: "done", on: "2026-11-25" });

/** A rough hub front right at 61 000 km. */
async function rough(on: Bench) {
  const made = await benchVisit(on);
  await read(on, made.visit, "61000");
  await spin(on, made.visit, "rough");
  return made;
}
async function later(on: Bench, car: string, km: string): Promise<string> {
  const files = { common: commonFrozen, sheets: [sheetFrozen], limits: [] };
  const visit = await openVisit(on.journal, on.phone, { car, purpose: "workshop", who: "owner", on: LATER, ...files });
  if (visit === undefined) throw new Error("the bench keeps what it is given");
  await read(on, visit, km);
  return visit;
}
async function looks(on: Bench, car: string, streams: readonly string[], which: LooksFor = {}) {
  const state = await open(on.journal.keptCar(car));
  const visits = await Promise.all(streams.map((one) => open(on.journal.keptVisit(one))));
  const plans = new Map<string, PlanState>();
  for (const one of streams) plans.set(one, await open(on.journal.keptPlan(one)));
  const needs = {
    store: on.store,
    shelf: miniShelf(),
    compiler: { compile: async () => Promise.reject(new Error("nothing here needs the parser")) },
    judging: () => import("./judging.js"),
  };
  const { worn } = await wornVisits(needs, state, visits);
  if (!worn) throw new Error("judged");
  return looksNow({ worn, all: [], visits, plans, car: state, today: "2026-12-30" }, which);
}

/** The visit a finished job is looked at in; wheel nuts, which were off for it, are checked by themselves. */
const work = ({ visits }: LooksNow) => visits.filter(({ looks: of }) => of.some(({ is }) => is === "job"));

const decided = (on: Bench, visit: string, word: "no") =>
  decide(on.journal, visit, [
    { at: AT, said: { word, because: "Next year", who: "Mo", role: "owner", how: "in-person", on: "2026-11-25" } },
  ]);

test("a finding whose work is open stands in the work list; declined, it is left standing, and nothing says when", async () => {
  const on = bench();
  const { car, visit } = await rough(on);
  expect(await looks(on, car, [visit])).toMatchObject({ visits: [], unsaid: [] });
  await decided(on, visit, "no");
  expect(await looks(on, car, [visit])).toMatchObject({
    visits: [],
    unsaid: [{ of: "hub.race", place: "FR", points: [{ point: "hub.spin", place: "FR" }] }],
  });
});

test("work that is done asks for its own look, by its own figure, and its finding for none", async () => {
  const on = bench();
  const { car, visit } = await rough(on);
  await done(on, visit);
  const now = await looks(on, car, [visit]);
  const [at] = work(now);
  const look = at?.looks.find(({ is }) => is === "job");
  const about = look && now.about.get(look.id);
  if (!at || !look || !about) throw new Error("a look");
  expect(now.unsaid).toEqual([]);
  expect(look).toMatchObject({ is: "job", at: 61_500, stands: "ahead" });
  expect(whenText(at, now.unit)).toBe("At 61\u202f500 km");
  expect(whenText(at, "[mi_i]")).toBe("At 38\u202f214 mi");
  expect(titleOf(about, look, "technician")).toMatch(/, Front right$/);
  expect(saysOf(about, look, look.why, "technician", "km")).toBe("Done 25 Nov 2026, after 500 km. Look at: Float");
  expect(saysOf(about, look, look.why, "owner", "km")).toContain("At the workshop: Float");
  expect(looksTold(now, "owner")).toContainEqual(
    expect.objectContaining({
      odometer: { value: 61_500, unit: "km" },
      of: [expect.objectContaining({ is: "job", title: expect.stringMatching(/^After /) })],
    }),
  );
});

test("an odometer past it says overdue; its points answered far enough on end it, too soon they do not", async () => {
  const on = bench();
  const { car, visit } = await rough(on);
  await done(on, visit);
  const soon = await later(on, car, "61100");
  const float = (stream: string) =>
    reply(on.journal, stream, key("hub.float", "FR", "play"), { type: "reading", values: ["0.02"], unit: "mm" });
  await float(soon);
  expect(work(await looks(on, car, [visit, soon]))).toMatchObject([{ stands: "ahead", at: 61_500 }]);
  await read(on, soon, "61501");
  // What was answered counts with the odometer of its visit: 501 km on it is a look.
  expect(work(await looks(on, car, [visit, soon]))).toEqual([]);
  const other = await rough(on);
  await done(on, other.visit);
  const late = await later(on, other.car, "61501");
  const [due] = work(await looks(on, other.car, [other.visit, late], { openedAt: late }));
  expect(due?.stands).toBe("overdue");
  expect(due && whenText(due, "km")).toMatch(/^Overdue: at 61\u202f\d+ km/);
});

test("a finding whose points were answered anew in a later visit is that visit's; what it finds is not asked of itself", async () => {
  const on = bench();
  const { car, visit } = await rough(on);
  await decided(on, visit, "no");
  const next = await later(on, car, "62000");
  expect((await looks(on, car, [visit, next], { openedAt: next })).unsaid).toHaveLength(1);
  await spin(on, next, "rough");
  expect((await looks(on, car, [visit, next], { openedAt: next })).unsaid).toEqual([]);
  await decided(on, next, "no");
  expect((await looks(on, car, [visit, next])).unsaid).toMatchObject([{ from: { on: "2026-12-30", km: 62_000 } }]);
  await spin(on, next, "smooth");
  expect((await looks(on, car, [visit, next])).unsaid).toEqual([]);
  // The hand-over of the first visit is of its own day.
  expect((await looks(on, car, [visit, next], { upTo: visit })).unsaid).toMatchObject([{ from: { on: "2026-11-25" } }]);
});
