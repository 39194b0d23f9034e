import { expect, test } from "vitest";
import { PLAN_BODIES } from "../../../tests/store/sample-plan.js";
import { bench, benchVisit, until } from "../../../tests/support/app-bench.js";
import { isEntry, type PlanState, planStream } from "../../core/record/index.js";
import * as acts from "./plan-acts.js";

async function planned() {
  const on = bench();
  const { visit } = await benchVisit(on);
  const plan = async (): Promise<PlanState> => {
    const opened = await until(on.journal.plan(visit), ({ is }) => is === "open");
    if (opened.is !== "open") throw new Error("no plan");
    return opened.state;
  };
  return { on, visit, plan };
}

test("[RC54] a plan nothing was said in is open and empty, and the first act begins it", async () => {
  const { on, visit, plan } = await planned();
  expect(await plan()).toMatchObject({ stream: planStream(visit), begun: [], budget: [] });
  expect(await acts.planBudget(on.journal, visit, { minor: 90_000, gross: true })).toBe(true);
  expect((await plan()).begun.map(({ value }) => value)).toEqual([{ visit }]);
  await acts.planBudget(on.journal, visit, { minor: 80_000, gross: true });
  const now = await plan();
  expect(now.budget.map(({ value }) => value.minor)).toEqual([80_000]);
  expect([...now.ledger.log.values()].filter(isEntry).map(({ kind }) => kind)).toEqual([
    ...(now.people.size > 0 ? ["person"] : []),
    "plan.begun",
    "plan.budget",
    "plan.budget",
  ]);
});

test("[RC56] every act of a plan is kept and stands, and the newest is what the notice takes back", async () => {
  const { on, visit, plan } = await planned();
  const b = PLAN_BODIES;
  const part = { job: "whl.bearing", place: "FR", part: "bearing-set" };
  await acts.planBegins(on.journal, visit, "2026-03-02");
  await acts.planUse(on.journal, visit, "hard");
  await acts.planWanted(on.journal, visit, { job: "whl.bearing", place: "FR", wanted: "in" });
  await acts.planMinutes(on.journal, visit, { job: "whl.bearing", place: "FR", minutes: [60, 90, 180] });
  await acts.planPart(on.journal, visit, part, { count: 2 });
  await acts.partSteps(on.journal, visit, [
    { ...part, step: "ordered", on: "2026-03-02" },
    { ...part, part: "seal", step: "ordered", on: "2026-03-02" },
  ]);
  await acts.jobStep(on.journal, visit, b["job.step"]);
  await acts.leftLoose(on.journal, visit, (loose) => ({ loose, what: "off", words: "guard", on: "2026-03-02" }));
  await acts.clearedLoose(on.journal, visit, b["left-loose.cleared"]);
  await acts.giveEstimate(on.journal, visit, b["estimate.given"]);
  await acts.addition(on.journal, visit, (name) => ({ ...b["estimate.addition"], addition: name }));
  await acts.planScope(on.journal, visit, b["plan.scope"].scope);
  await acts.intake(on.journal, visit, "keys", "two");
  const now = await plan();
  expect(now.trouble.unknown).toEqual([]);
  expect([
    now.begins.length,
    now.use.length,
    now.wanted.size,
    now.minutes.size,
    now.parts.size,
    now.partSteps.size,
    now.jobSteps.size,
    now.loose.size,
    now.cleared.size,
    now.estimates.length,
    now.additions.size,
    now.scope.length,
    now.intake.size,
  ]).toEqual([1, 1, 1, 1, 1, 2, 1, 1, 1, 1, 1, 1, 1]);

  const writer = on.journal.writer.value ?? "";
  const last = acts.lastPlanStep(now, writer);
  expect(last?.kinds).toEqual(["plan.intake"]);
  await acts.undoPlan(on.journal, visit, last ?? { ids: [] });
  const after = await plan();
  expect([after.intake.size, after.begun.length]).toEqual([0, 1]);
  expect(acts.lastPlanStep(after, writer)?.kinds).toEqual(["plan.scope"]);
});
