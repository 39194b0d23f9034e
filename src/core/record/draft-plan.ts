/** Drafts of a plan's entries, each naming what it replaces. Steps and estimates replace nothing. Refuses to plan. */
import type { Act, Bodies, Draft } from "./contract.js";
import { noMixing, standingIds } from "./draft.js";
import { draftBy } from "./draft-later.js";
import { planStream } from "./identity.js";
import type { Budget, PartAt, PartFigures, PlanKind, PlanScope, PlanUse } from "./plan-bodies.js";
import type { PlanState } from "./plan-contract.js";
import { jobKey, partKey } from "./plan-keys.js";
import { PLAN_KINDS } from "./plan-kinds.js";

/** A draft of any of a plan's own kinds. */
export const draftPlan = <K extends PlanKind>(act: Act, { stream }: PlanState, kind: K, body: Bodies[K]): Draft =>
  draftBy(PLAN_KINDS, act, stream, kind, body);
type Said<K extends PlanKind> = Omit<Bodies[K], "replaces">;

/** Begins the plan of a visit: nothing when it is begun. */
export function draftPlanBegun(act: Act, plan: PlanState, visit: string): readonly Draft[] {
  noMixing(plan.stream, [visit]);
  if (planStream(visit) !== plan.stream) throw new Error(`${plan.stream} is no plan of ${visit}`);
  return plan.begun.length > 0 ? [] : [draftPlan(act, plan, "plan.begun", { visit })];
}

/** The earliest day the car can be worked on. */
export const draftPlanBegins = (act: Act, plan: PlanState, on: string | null): Draft =>
  draftPlan(act, plan, "plan.begins", { on, replaces: standingIds(plan, "begins|") });

export const draftPlanUse = (act: Act, plan: PlanState, use: PlanUse | null): Draft =>
  draftPlan(act, plan, "plan.use", { use, replaces: standingIds(plan, "use|") });

export const draftBudget = (act: Act, plan: PlanState, budget: Budget | null): Draft =>
  draftPlan(act, plan, "plan.budget", { budget, replaces: standingIds(plan, "budget|") });

/** A job kept in or left out by hand; null leaves it to the plan. */
export const draftWanted = (act: Act, plan: PlanState, said: Said<"plan.wanted">): Draft =>
  draftPlan(act, plan, "plan.wanted", { ...said, replaces: standingIds(plan, `wanted|${jobKey(said)}`) });

/** Minutes by hand in place of the sheet's; null gives the sheet's back. */
export const draftMinutes = (act: Act, plan: PlanState, said: Said<"plan.minutes">): Draft =>
  draftPlan(act, plan, "plan.minutes", { ...said, replaces: standingIds(plan, `minutes|${jobKey(said)}`) });

/** What is known of a part; null takes it back, and a part added by hand with it. */
export function draftPart(act: Act, plan: PlanState, at: PartAt, figures: PartFigures | null): Draft {
  const { job, place, part } = at;
  return draftPlan(act, plan, "plan.part", {
    job,
    place,
    part,
    figures,
    replaces: standingIds(plan, `part|${partKey(at)}`),
  });
}

export const draftPartStep = (act: Act, plan: PlanState, step: Bodies["part.step"]): Draft =>
  draftPlan(act, plan, "part.step", step);

export const draftJobStep = (act: Act, plan: PlanState, step: Bodies["job.step"]): Draft =>
  draftPlan(act, plan, "job.step", step);

/** Something left loose, drained, off or unplugged, under the name it keeps; said again, its words are mended. */
export const draftLeftLoose = (act: Act, plan: PlanState, left: Said<"left-loose">): Draft =>
  draftPlan(act, plan, "left-loose", { ...left, replaces: standingIds(plan, `loose|${left.loose}`) });

export const draftCleared = (act: Act, plan: PlanState, cleared: Bodies["left-loose.cleared"]): Draft =>
  draftPlan(act, plan, "left-loose.cleared", cleared);

/** An estimate as planning froze it. The first one stays the first, however many are given. */
export const draftEstimate = (act: Act, plan: PlanState, given: Bodies["estimate.given"]): Draft =>
  draftPlan(act, plan, "estimate.given", given);

/** Something beyond the estimate, under the name it keeps. */
export const draftAddition = (act: Act, plan: PlanState, said: Said<"estimate.addition">): Draft =>
  draftPlan(act, plan, "estimate.addition", {
    ...said,
    replaces: standingIds(plan, `addition|${said.addition}`),
  });

/** What may be taken apart to look, and how far. */
export const draftScope = (act: Act, plan: PlanState, scope: PlanScope | null): Draft =>
  draftPlan(act, plan, "plan.scope", { scope, replaces: standingIds(plan, "scope|") });

/** One answer of the talk when the car is taken in. */
export const draftIntake = (act: Act, plan: PlanState, item: string, says: string | null): Draft =>
  draftPlan(act, plan, "plan.intake", { item, says, replaces: standingIds(plan, `intake|${item}`) });
