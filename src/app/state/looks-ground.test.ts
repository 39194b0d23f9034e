// [LA1] [LA6] [LA7] [HO45] Over a car's visits: what is left standing, what was done, and who has looked again since.
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
import type { Knowledge } from "./knowledge.js";
import { type LooksFor, type LooksNow, looksNow, unreadBefore } from "./looks-ground.js";
import { lookNamed, paceText, saysOf, titleOf, whenText } from "./looks-words.js";
import { jobStep } from "./plan-acts.js";
import { reply } from "./reply-acts.js";
import { odometer } from "./visit-acts.js";
import { type WornCar, wornVisits } from "./wearing-visits.js";

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
const done = (on: Bench, visit: string, at = "2026-11-25", place = "FR") =>
  jobStep(on.journal, visit, { ...AT, place, step: "done", on: at });

/** A rough hub front right at 61 000 km. */
async function rough(on: Bench) {
  const made = await benchVisit(on);
  await read(on, made.visit, "61000");
  await spin(on, made.visit, "rough");
  return made;
}
async function later(on: Bench, car: string, km: string, sheet = sheetFrozen): Promise<string> {
  const files = { common: commonFrozen, sheets: [sheet], limits: [] };
  const visit = await openVisit(on.journal, on.phone, { car, purpose: "workshop", who: "owner", on: LATER, ...files });
  if (visit === undefined) throw new Error("the bench keeps what it is given");
  await read(on, visit, km);
  return visit;
}
async function looks(
  on: Bench,
  car: string,
  streams: readonly string[],
  which: LooksFor & { readonly lost?: string; readonly second?: (is: WornCar) => WornCar } = {},
) {
  const state = await open(on.journal.keptCar(car));
  const visits = await Promise.all(streams.map((one) => open(on.journal.keptVisit(one))));
  const plans = new Map<string, PlanState>();
  for (const one of streams) plans.set(one, await open(on.journal.keptPlan(one)));
  const gone = visits
    .filter(({ stream }) => stream === which.lost)
    .flatMap(({ sheets }) => sheets.map((one) => one.blob));
  const needs = {
    store: {
      blob: async (hash: string) =>
        gone.includes(hash) ? { ok: true as const, value: undefined } : on.store.blob(hash),
    },
    shelf: miniShelf(),
    compiler: { compile: async () => Promise.reject(new Error("nothing here needs the parser")) },
    judging: () => import("./judging.js"),
  };
  const { worn: told, left } = await wornVisits(needs, state, visits);
  if (!told) throw new Error("judged");
  const worn = which.second ? which.second(told) : told;
  return looksNow({ worn, all: [], left, visits, plans, car: state, today: "2026-12-30" }, which);
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
  expect(looksTold(now, "owner", visit)).toContainEqual(
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

test("[LA1] what a visit answered that nobody can judge ends nothing, and it is counted", async () => {
  const on = bench();
  const { car, visit } = await rough(on);
  await decided(on, visit, "no");
  const next = await later(on, car, "62000", { ...sheetFrozen, edition: "of a later day" });
  await spin(on, next, "rough");
  const now = await looks(on, car, [visit, next], { lost: next });
  expect(now.unsaid).toMatchObject([{ of: "hub.race", from: { on: "2026-11-25" } }]);
  expect(now.left).toBe(1);
  // Of what came after the visit that is handed over nothing is said.
  expect((await looks(on, car, [visit, next], { lost: next, upTo: visit })).left).toBe(0);
});

const nuts = ({ visits, about }: LooksNow) =>
  visits.flatMap(({ looks: of }) =>
    of.flatMap(({ id }) => (about.get(id)?.check === "wheel-nuts" ? [about.get(id)?.places] : [])),
  );

test("[LA1] wheel nuts of two visits at two wheels are two checks, of one wheel those of the later visit", async () => {
  const on = bench();
  const { car, visit } = await rough(on);
  await done(on, visit);
  const next = await later(on, car, "61020");
  await done(on, next, "2026-12-30", "FL");
  const now = await looks(on, car, [visit, next]);
  expect(nuts(now)).toEqual([["FR"], ["FL"]]);
  // Those of the visit handed over stand among its days already; those of an earlier one do not.
  const told = looksTold(now, "technician", next).flatMap(({ of }) => of.filter(({ is }) => is === "recheck"));
  expect(told.map(({ title, date }) => [title, date])).toEqual([
    ["Wheel nuts, Front right", undefined],
    ["Wheel nuts, Front left", "recheck wheel-nuts"],
  ]);
  await done(on, next, "2026-12-30", "FR");
  expect(nuts(await looks(on, car, [visit, next]))).toEqual([["FL", "FR"]]);
});

test("[LA3] an odometer read lower than before gives no day, and its distance counts from the day of the work", async () => {
  const on = bench();
  const { car, visit } = await rough(on);
  await done(on, visit);
  const next = await later(on, car, "150");
  const [look] = work(await looks(on, car, [visit, next]));
  expect(look && whenText(look, "km")).toContain("50 km after 25 Nov 2026");
  expect(look && paceText(look)).toMatch(/the later one higher/);
});

test("of two jobs for a finding one that is done does not end its look while the other is open", async () => {
  const on = bench();
  const { car, visit } = await rough(on);
  await done(on, visit);
  const regrease = "job.hub.regrease";
  const withJob = ({ sheets, ...is }: Knowledge): Knowledge => ({
    ...is,
    sheets: sheets.map((one) => ({
      ...one,
      sheet: {
        ...one.sheet,
        jobs: one.sheet.jobs.flatMap((job) => [job, { ...job, id: regrease }]),
        nextLooks: [...one.sheet.nextLooks, { fault: "hub.race", months: 6 }],
      },
    })),
  });
  const second = (is: WornCar): WornCar => ({
    ...is,
    visits: is.visits.map((one) => ({
      ...one,
      found: one.found.map((of) => ({ ...of, fault: { ...of.fault, jobs: [...of.fault.jobs, regrease] } })),
    })),
    knownAt: new Map([...is.knownAt].map(([stream, known]) => [stream, withJob(known)])),
  });
  const isFinding = ({ visits }: LooksNow) => visits.some(({ looks: of }) => of.some(({ is }) => is === "finding"));
  expect(isFinding(await looks(on, car, [visit]))).toBe(false);
  expect(isFinding(await looks(on, car, [visit], { second }))).toBe(true);
});

test("a car read in miles stays one in miles through a visit at which nobody read it", async () => {
  const on = bench();
  const { car, visit } = await benchVisit(on);
  await odometer(on.journal, visit, { value: "38000", unit: "[mi_i]" });
  const files = { common: commonFrozen, sheets: [sheetFrozen], limits: [] };
  const next = await openVisit(on.journal, on.phone, { car, purpose: "workshop", who: "owner", on: LATER, ...files });
  if (next === undefined) throw new Error("the bench keeps what it is given");
  expect((await looks(on, car, [visit, next])).unit).toBe("[mi_i]");
});

test("wheel nuts with no wheel named are told without a dangling comma", async () => {
  const on = bench();
  const { car, visit } = await rough(on);
  await done(on, visit);
  const now = await looks(on, car, [visit]);
  const [about] = [...now.about.values()].filter(({ check }) => check === "wheel-nuts");
  if (!about) throw new Error("a check");
  const wanted = { is: "recheck" } as const;
  expect(lookNamed({ ...about, places: ["car"] }, wanted, "owner").title).toBe("Wheel nuts");
});

test("[HO46] visits nobody could read count up to the one handed over, of an unknown day too, later ones never", async () => {
  const on = bench();
  const { car, visit } = await benchVisit(on);
  const next = await later(on, car, "61000");
  const left = [
    { stream: visit, at: "2026-11-25T10:00:00+01:00", why: "missing" },
    { stream: next, at: LATER, why: "missing" },
  ] as const;
  // Neither can be judged: the one handed over is open all the same, and its own day counts.
  expect(unreadBefore(left, await open(on.journal.keptVisit(visit)))).toBe(0);
  expect(unreadBefore(left, await open(on.journal.keptVisit(next)))).toBe(1);
  expect(unreadBefore([{ stream: "x", why: "unread" }], await open(on.journal.keptVisit(visit)))).toBe(1);
});
