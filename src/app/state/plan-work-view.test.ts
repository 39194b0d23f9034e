// The planned list in words: what is lit, what waits, how far the money reaches, what would pay.
import { expect, test } from "vitest";
import { miniKnowledge } from "../../../tests/support/app-bench.js";
import type { JobDue, UrgencyKey } from "../../core/assess/contract.js";
import { planWork, type WorkInput, type WorkJob } from "../../core/plan/index.js";
import type { Telling } from "./because.js";
import { budgetSteps, choiceTold } from "./plan-budget-view.js";
import { drawnBundles, moneyRange, offerLines, plannedList, reachOf } from "./plan-work-view.js";

const TELLING: Telling = { known: miniKnowledge(), who: "technician", visit: "v", car: "c", pictures: [] };
const EURO = { currency: "EUR", minorDigits: 2 };
const key = (id: string, due: UrgencyKey["due"]): UrgencyKey => ({
  gate: 1,
  due,
  rank: 9,
  grade: "minor",
  left: null,
  position: 1,
  id,
});
const due = (job: string, when: UrgencyKey["due"]): JobDue => ({
  job,
  place: "FR",
  grade: "minor",
  faults: [],
  rank: 9,
  byWhen: { class: when },
  key: key(`${job}@FR`, when),
  why: [],
  includes: [],
});
const job = (id: string, own: number, when: UrgencyKey["due"]): WorkJob => ({
  id: `${id}@FR`,
  key: key(id, when),
  grade: "minor",
  minutes: [own, own, own],
  access: ["wheel-off@FR"],
  follows: [],
  parts: [],
});
const DUE = [due("must", 2), due("cheap", 3), due("dear", 3)];
const INPUT: WorkInput = {
  today: "2027-03-10",
  jobs: [job("must", 60, 2), job("cheap", 30, 3), job("dear", 600, 3)],
  openings: [{ id: "wheel-off@FR", parents: [], setUp: [15, 15, 15], putBack: [15, 15, 15] }],
  terms: {
    currency: "EUR",
    labourRates: [{ id: "shop", name: "Workshop", perHour: 6000 }],
    tax: {
      label: "None",
      groups: [{ id: "none", name: "No tax", basisPoints: 0 }],
      labourGroup: "none",
      partsGroup: "none",
      rounding: "half-up",
      level: "invoice",
    },
  },
};
const within = (budget: number) => planWork({ ...INPUT, budget });

test("what the budget does not reach stands in shade; without a budget nothing does", () => {
  const parted = plannedList(TELLING, DUE, within(15_000), EURO, INPUT);
  expect([parted.lit, parted.shade].map((lines) => lines.map(({ job }) => job))).toEqual([["must", "cheap"], ["dear"]]);
  expect(parted.lit[0]).toMatchObject({ cost: "€60", apart: "with what is open anyway 1.0 h, alone 1.5 h" });
  expect(plannedList(TELLING, DUE, planWork(INPUT), EURO, INPUT).shade).toEqual([]);
  expect(plannedList(TELLING, DUE, undefined, undefined, INPUT).lit).toHaveLength(3);
});

test("where the light ends: what is left, or by how much what can't wait is over; nothing is left while a job has no hours", () => {
  expect(reachOf(within(15_000), 15_000, EURO)).toEqual({
    words: "€150.00 reaches to here",
    aside: "leaves €30.00",
  });
  expect(reachOf(within(5000), 5000, EURO)).toMatchObject({ over: true, aside: "over by €40.00" });
  const { minutes: _, ...bare } = job("unknown", 1, 3);
  const plan = planWork({ ...INPUT, jobs: [...INPUT.jobs, bare], budget: 15_000 });
  expect(reachOf(plan, 15_000, EURO)?.aside).toBeUndefined();
  expect(reachOf(planWork(INPUT), undefined, EURO)).toBeUndefined();
});

test("what is spent beyond the budget is told, also where nothing more must be done", () => {
  const jobs = [{ ...job("must", 60, 2), isDone: true }, job("cheap", 30, 3)];
  const plan = planWork({ ...INPUT, jobs, budget: 5000 });
  expect(reachOf(plan, 5000, EURO)).toMatchObject({ over: true, aside: "over by €10.00" });
  // 10.00 beyond the budget, and 60.00 for the small job with its opening
  expect(choiceTold(TELLING, plan, 5000, EURO)?.next.budget).toBe(12_000);
  expect(plannedList(TELLING, DUE, plan, EURO, { jobs }).done.map((line) => line.job)).toEqual(["must"]);
});

test("hours said by hand stand over the sheet's", () => {
  const jobs = [{ ...job("must", 60, 2), minutes: [90, 120, 300] as const }];
  expect(plannedList(TELLING, DUE, undefined, undefined, { jobs }).lit[0]?.hours).toBe("1.5–5.0 h");
});

test("the ruler of money says what it holds, and that it is too low while something is in no sum", () => {
  const range = moneyRange(within(15_000), 15_000, EURO);
  expect(range?.range.likely).toEqual({ at: 120, text: "€120" });
  expect(range?.label).toBe("Likely €120, from €120 to €120, with tax; budget €150");
  const { minutes: _, ...bare } = job("unknown", 1, 3);
  const plan = planWork({ ...INPUT, jobs: [...INPUT.jobs, bare] });
  expect(moneyRange(plan, undefined, EURO)?.verdict.says).toBe("Too low: 1 thing is not counted yet.");
  expect(moneyRange(plan, undefined, undefined)).toBeUndefined();
});

test("what is opened together stands in one bracket with its own minutes", () => {
  const plan = within(15_000);
  const lines = new Map(plannedList(TELLING, DUE, plan, EURO, INPUT).lit.map((line) => [line.id, line]));
  expect(drawnBundles(TELLING, plan.bundles, lines)).toMatchObject([
    { kind: "bundle", shared: "opened and put back once, 30 min", parts: [{ kind: "job" }, { kind: "job" }] },
  ]);
});

test("what is left out and nearly open already is offered with what it saves", () => {
  expect(offerLines(TELLING, within(9000), EURO)).toMatchObject([
    { id: "cheap@FR", says: "Saves 30 min of opening up, €30.00 at your rate." },
  ]);
});

test("the next better plan: what it costs more and what it adds; with everything in, there is none", () => {
  const told = choiceTold(TELLING, within(9000), 9000, EURO);
  expect(told?.next.lines).toEqual(["It costs €30.00 more", "Adds: cheap, Front right"]);
  expect([told?.next.budget, told?.proven]).toEqual([12_000, "No other choice does more for this money."]);
  expect(choiceTold(TELLING, within(900_000), 900_000, EURO)?.next.lines).toEqual([
    "There is no better plan: everything worth doing is in.",
  ]);
});

test("steps of a budget are a 1, 2 or 5 with noughts, about a twentieth and a quarter of the whole", () => {
  expect(budgetSteps(200_000, EURO)).toEqual([10_000, 50_000]);
  expect(budgetSteps(556_200, EURO)).toEqual([50_000, 250_000]);
  expect(budgetSteps(0, EURO)).toEqual([100, 500]);
  expect(budgetSteps(300_000, { currency: "JPY", minorDigits: 0 })).toEqual([20_000, 100_000]);
});
