// What planning is given: the sheets' figures, over them what people said of this plan, and where each part is.
import { expect, test } from "vitest";
import { bench, benchVisit, miniKnowledge, miniTree, until } from "../../../tests/support/app-bench.js";
import type { JobDue } from "../../core/assess/contract.js";
import type { PlanState } from "../../core/record/index.js";
import type { Job } from "../../core/sheet/run.js";
import * as acts from "./plan-acts.js";
import { layWork, workInput } from "./plan-input.js";

const due = (job: string): JobDue => ({
  job,
  place: "FR",
  grade: "major",
  faults: [],
  rank: 6,
  byWhen: { class: 2 },
  key: { gate: 1, due: 2, rank: 6, grade: "major", left: null, position: 1, id: `${job}@FR` },
  why: [],
  includes: [],
});
const BEARING: Job = {
  id: "job.bearing",
  place: "corner",
  access: [],
  minutes: [60, 80, 120],
  minutesBasis: "practice",
  parts: [{ part: "races", set: "matched", count: 2 }],
};
const AT = { job: "job.bearing", place: "FR" };
const TODAY = "2027-03-10";

async function planned(...more: readonly ((on: ReturnType<typeof bench>, visit: string) => Promise<boolean>)[]) {
  const on = bench();
  const { visit } = await benchVisit(on);
  for (const act of more) await act(on, visit);
  const opened = await until(on.journal.plan(visit), ({ is }) => is === "open");
  if (opened.is !== "open") throw new Error("no plan");
  return opened.state;
}
function given(plan: PlanState, jobs: readonly JobDue[] = [due("job.bearing")]) {
  const known = miniKnowledge();
  const [sheet] = known.sheets;
  if (!sheet) throw new Error("the small sheet is there");
  const own = { ...known, jobs: new Map([[BEARING.id, { job: BEARING, texts: sheet.texts }]]) };
  const ownJobs = new Map([["own.1", { words: "Replace the gear pair", hours: "1.5" }]]);
  const laid = layWork({ known: own, tree: miniTree(), jobs, orders: [] });
  return workInput(laid, { ownJobs }, plan, undefined, TODAY);
}

test("a job as the sheet has it, with its parts; nothing is said of them, and nothing is made up", async () => {
  expect(given(await planned()).jobs).toMatchObject([
    { id: "job.bearing@FR", minutes: [60, 80, 120], parts: [{ id: "races", set: "matched", count: 2 }] },
  ]);
});

test("minutes and wishes by hand stand over the sheet's; taken back, the sheet's stand again", async () => {
  const byHand = (on: ReturnType<typeof bench>, visit: string) =>
    acts.planMinutes(on.journal, visit, { ...AT, minutes: [90, 120, 300] });
  const kept = (on: ReturnType<typeof bench>, visit: string) =>
    acts.planWanted(on.journal, visit, { ...AT, wanted: "in" });
  expect(given(await planned(byHand, kept)).jobs[0]).toMatchObject({ minutes: [90, 120, 300], wanted: "in" });
  const back = (on: ReturnType<typeof bench>, visit: string) =>
    acts.planMinutes(on.journal, visit, { ...AT, minutes: null });
  expect(given(await planned(byHand, back)).jobs[0]?.minutes).toEqual([60, 80, 120]);
});

test("a job in one's own words takes as long as was said; without hours nobody knows", async () => {
  const plan = await planned();
  const [one, other] = given(plan, [due("own.1"), due("own.2")]).jobs;
  expect([one?.minutes, other?.minutes]).toEqual([[90, 90, 90], undefined]);
});

test("a part by hand stands behind the sheet's; ordered, promised, come, sent back: planning is told where it is", async () => {
  const step =
    (step: "ordered" | "promised" | "arrived" | "sent-back", on: string, promised?: string) =>
    (app: ReturnType<typeof bench>, visit: string) =>
      acts.partSteps(app.journal, visit, [
        { ...AT, part: "gear", step, on, ...(promised === undefined ? {} : { promised }) },
      ]);
  const gear = (app: ReturnType<typeof bench>, visit: string) =>
    acts.planPart(app.journal, visit, { ...AT, part: "gear" }, { name: "Gear", count: 1, supplier: "maker" });
  const after = async (...steps: readonly ReturnType<typeof step>[]) =>
    given(await planned(gear, ...steps)).jobs[0]?.parts[1];
  const [ordered, promised] = [step("ordered", "2027-03-01"), step("promised", "2027-03-02", "2027-03-20")];
  expect(await after()).toEqual({ id: "gear", count: 1, supplier: "maker" });
  expect(await after(ordered)).toMatchObject({ orderedOn: "2027-03-01" });
  expect(await after(ordered, promised)).toMatchObject({ orderedOn: "2027-03-01", promised: "2027-03-20" });
  expect(await after(ordered, step("arrived", "2027-03-09"))).toMatchObject({ inHand: true });
  const back = await after(ordered, step("arrived", "2027-03-08"), step("sent-back", "2027-03-09"));
  expect([back?.inHand, back?.orderedOn]).toEqual([undefined, undefined]);
});

test("the budget, the day the car comes, and a job that is done", async () => {
  const plan = await planned(
    (on, visit) => acts.planBudget(on.journal, visit, { minor: 90_000, gross: true }),
    (on, visit) => acts.planBegins(on.journal, visit, "2027-04-01"),
    (on, visit) => acts.jobStep(on.journal, visit, { ...AT, step: "done", on: TODAY, minutes: 95 }),
  );
  expect(given(plan)).toMatchObject({ today: TODAY, budget: 90_000, begins: "2027-04-01", jobs: [{ isDone: true }] });
});
