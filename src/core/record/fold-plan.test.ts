import { expect, test } from "vitest";
import { act } from "../../../tests/store/sample.js";
import { SampleLog } from "../../../tests/store/sample-log.js";
import { PLAN_BODIES } from "../../../tests/store/sample-plan.js";
import type { Bodies, Entry } from "./contract.js";
import { draftErase } from "./draft-erase.js";
import {
  draftAddition,
  draftBudget,
  draftEstimate,
  draftIntake,
  draftLeftLoose,
  draftMinutes,
  draftPart,
  draftPartStep,
  draftPlanBegins,
  draftPlanBegun,
  draftWanted,
} from "./draft-plan.js";
import { foldHouse } from "./fold-house.js";
import { foldPlan } from "./fold-plan.js";
import { foldVisit } from "./fold-visit.js";
import { isDemo, isStreamName, planStream, streamKind } from "./identity.js";
import type { LaterKind } from "./kinds.js";
import { summarise } from "./summary.js";
import { draftUndo, undoable } from "./undo.js";

const bearing = { job: "whl.bearing", place: "FR" };
const set = { ...bearing, part: "bearing-set" };

function begun(): SampleLog {
  const log = new SampleLog("plan:v");
  log.add(draftPlanBegun(act(), log.plan, "visit:v"));
  return log;
}

test("[RC54] a plan's stream is named after its visit, the demo's after the demo's", () => {
  expect([planStream("visit:v"), planStream("visit:demo-1")]).toEqual(["plan:v", "plan:demo-1"]);
  expect(["plan:v", "plan:demo-1"].map(isDemo)).toEqual([false, true]);
  expect(["plan:v", "plan:", "plan:a/b"].map(isStreamName)).toEqual([true, false, false]);
  expect(streamKind("plan:v")).toBe("plan");
  const log = new SampleLog("plan:v");
  expect(() => draftPlanBegun(act(), log.plan, "visit:w")).toThrow("plan:v is no plan of visit:w");
  expect(() => draftPlanBegun(act(), log.plan, "visit:demo-v")).toThrow("The demo never mixes");
});

test("[RC54] beginning a plan is no step to undo, and happens once", () => {
  const log = begun();
  expect(draftPlanBegun(act(), log.plan, "visit:v")).toEqual([]);
  expect(undoable(log.plan, "w1")).toEqual([]);
  log.add(draftPlanBegins(act(), log.plan, "2026-03-02"));
  expect(undoable(log.plan, "w1").map(({ kinds }) => kinds)).toEqual([["plan.begins"]]);
});

test("[RC56] a budget said anew replaces the old one, null takes it back, undo brings it back", () => {
  const log = begun();
  const budget = () => log.plan.budget.map(({ value }) => value.minor);
  log.add(draftBudget(act(), log.plan, { minor: 90_000, gross: true }));
  log.add(draftBudget(act(), log.plan, { minor: 70_000, gross: true }));
  expect(budget()).toEqual([70_000]);
  const taken = log.add(draftBudget(act(), log.plan, null));
  expect(budget()).toEqual([]);
  log.add(draftUndo(act(), log.plan, [taken]));
  expect(budget()).toEqual([70_000]);
});

test("[RC14] two phones that say different minutes for one job differ, and each other job is left alone", () => {
  const log = begun();
  const seen = log.plan;
  log.add(draftMinutes(act(), seen, { ...bearing, minutes: [60, 90, 120] }), "w1");
  log.add(draftMinutes(act(), seen, { ...bearing, minutes: [90, 120, 200] }), "w2");
  log.add(draftMinutes(act(), log.plan, { ...bearing, place: "FL", minutes: [30, 40, 50] }));
  log.add(draftWanted(act(), log.plan, { ...bearing, wanted: "out", reason: "next winter" }));
  const { minutes, wanted } = log.plan;
  expect([...minutes].map(([key, list]) => `${key} ${list.length}`)).toEqual(["whl.bearing@FR 2", "whl.bearing@FL 1"]);
  expect(wanted.get("whl.bearing@FR")?.map(({ value }) => value)).toMatchObject([{ wanted: "out" }]);
});

test("[RC56] every step of a part stands in the order of showing until it is undone", () => {
  const log = begun();
  log.add(draftPart(act(), log.plan, set, { count: 1, price: [10, 20, 30] }));
  const steps = () => log.plan.partSteps.get("whl.bearing@FR/bearing-set")?.map(({ value }) => value.step) ?? [];
  log.add(draftPartStep(act(), log.plan, { ...set, step: "ordered", on: "2026-03-02" }));
  const second = log.add(
    draftPartStep(act(), log.plan, { ...set, step: "promised", on: "2026-03-03", promised: "2026-03-09" }),
  );
  expect(steps()).toEqual(["ordered", "promised"]);
  log.add(draftUndo(act(), log.plan, [second]));
  expect(steps()).toEqual(["ordered"]);
  expect(log.plan.parts.get("whl.bearing@FR/bearing-set")?.[0]?.value.figures.count).toBe(1);
});

test("[RC56] the first estimate stays the first, an addition is mended under its name", () => {
  const log = begun();
  const first = log.add(draftEstimate(act(), log.plan, { estimate: { total: 1 }, on: "2026-03-01" }));
  log.add(draftEstimate(act(), log.plan, { estimate: { total: 2 }, on: "2026-03-05" }));
  expect(log.plan.estimates.map(({ id }) => id)[0]).toBe(first);
  expect(log.plan.estimates).toHaveLength(2);
  const { replaces: _replaces, ...added } = PLAN_BODIES["estimate.addition"];
  log.add(draftAddition(act(), log.plan, { ...added, agreed: null }));
  log.add(draftAddition(act(), log.plan, added));
  expect(log.plan.additions.get("a1")?.map(({ value }) => value.agreed?.who)).toEqual(["the owner"]);
});

test("[RC30] an erased word of a plan brings nothing older back, and what is left loose keeps its name", () => {
  const log = begun();
  log.add(draftIntake(act(), log.plan, "keys", "one"));
  const two = log.add(draftIntake(act(), log.plan, "keys", "two"));
  log.add(draftErase(act(), log.plan, [two]));
  expect(log.plan.intake.size).toBe(0);
  const { replaces: _replaces, ...left } = PLAN_BODIES["left-loose"];
  log.add(draftLeftLoose(act(), log.plan, left));
  log.add(draftLeftLoose(act(), log.plan, { ...left, words: "hub nut and two bolts" }));
  expect(log.plan.loose.get("l1")?.map(({ value }) => value.words)).toEqual(["hub nut and two bolts"]);
});

test("[RC55] whoever folds cars and visits only keeps a plan's entries and reports none", async () => {
  const log = begun();
  log.add(draftBudget(act(), log.plan, { minor: 1, gross: true }));
  expect(foldVisit(log.entries).trouble.unknown).toEqual([]);
  expect(await summarise("plan:v", log.entries)).toMatchObject({ of: "plan", entries: 2, trouble: false });
  log.entries.push({ ...(log.entries[1] as Entry), seq: 3, nonce: "n", kind: "plan.from-later" });
  expect(await summarise("plan:v", log.entries)).toMatchObject({ of: "plan", entries: 3, trouble: true });
});

test("a body that is none is our own mistake, found out before it is kept", () => {
  const log = begun();
  expect(() => draftMinutes(act(), log.plan, { ...bearing, minutes: [90, 60, 120] })).toThrow("plan.minutes expects");
});

const entry = (kind: LaterKind, body: unknown): Entry => ({
  stream: kind.startsWith("house.") ? "house" : "plan:v",
  writer: "w1",
  seq: 1,
  nonce: "n",
  at: { wall: 1, count: 0 },
  by: "anna",
  kind,
  v: 1,
  body,
});
const why = (kind: LaterKind, body: unknown): string | undefined => {
  const one = entry(kind, body);
  return (one.stream === "house" ? foldHouse([one]) : foldPlan([one])).trouble.unknown[0]?.why;
};
const samples = Object.entries(PLAN_BODIES) as (readonly [LaterKind, object])[];

test.each(samples)("[RC4] %s: as it should be it stands, with one field more it does not", (kind, body) => {
  expect(why(kind, body)).toBeUndefined();
  expect(why(kind, { ...body, more: 1 })).toBe("body");
});

test.each(samples)("[RC4] %s: every field of another kind is found out", (kind, body) => {
  for (const field of Object.keys(body)) {
    // An estimate is plain data of whatever shape planning froze.
    if (field !== "estimate") expect(why(kind, { ...body, [field]: { strange: true } }), field).toBe("body");
  }
});

const part = PLAN_BODIES["plan.part"];
const step = PLAN_BODIES["part.step"];
const terms = PLAN_BODIES["house.terms"].terms;
const days = PLAN_BODIES["house.calendar"].calendar;
const { checks: _checks, ...unchecked } = step;
const { next: _next, ...endless } = PLAN_BODIES["job.step"];
test.each<readonly [string, LaterKind, Bodies[LaterKind] | object]>([
  ["a job that waits for no day", "job.step", endless],
  ["a check that looked at nothing", "part.step", unchecked],
  ["checks of a part that was ordered", "part.step", { ...step, step: "ordered" }],
  ["a step nobody takes", "part.step", { ...unchecked, step: "lost" }],
  ["a price that falls", "plan.part", { ...part, figures: { count: 1, price: [3, 2, 4] } }],
  ["two figures for three", "plan.part", { ...part, figures: { count: 1, price: [2, 3] } }],
  ["a price below nothing", "plan.part", { ...part, figures: { count: 1, price: [-1, 2, 3] } }],
  ["half a minute", "plan.minutes", { ...bearing, minutes: [0.5, 1, 2], replaces: [] }],
  ["a thirteenth month", "plan.begins", { on: "2026-13-01", replaces: [] }],
  ["a budget before tax", "plan.budget", { budget: { minor: 1, gross: false }, replaces: [] }],
  [
    "labour in a group that is not there",
    "house.terms",
    { terms: { ...terms, tax: { ...terms?.tax, labourGroup: "x" } }, replaces: [] },
  ],
  [
    "parts in a group that is not there",
    "house.terms",
    { terms: { ...terms, tax: { ...terms?.tax, partsGroup: "x" } }, replaces: [] },
  ],
  ["a currency in small letters", "house.terms", { terms: { ...terms, currency: "eur" }, replaces: [] }],
  [
    "shut days that run backwards",
    "house.calendar",
    { calendar: { ...days, closed: [{ from: "2026-08-31", to: "2026-08-01" }] }, replaces: [] },
  ],
  ["a week of six days", "house.calendar", { calendar: { ...days, week: days?.week.slice(1) }, replaces: [] }],
  [
    "closing before opening",
    "house.calendar",
    { calendar: { ...days, week: [[[600, 500]], [], [], [], [], [], []] }, replaces: [] },
  ],
  ["a workshop of nobody", "house.calendar", { calendar: { ...days, people: 0 }, replaces: [] }],
  ["a supplier filed under another id", "house.supplier", { ...PLAN_BODIES["house.supplier"], id: "south" }],
  [
    "a supplier open on an eighth day",
    "house.supplier",
    { id: "n", supplier: { id: "n", name: "N", week: [8], closed: [] }, replaces: [] },
  ],
])("[RC57] found out: %s", (_what, kind, body) => {
  expect(why(kind, body)).toBe("body");
});
