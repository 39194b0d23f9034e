/**
 * What a person decides, orders and reports after a visit, each as one act of the journal in the plan of that visit.
 * The first act begins the plan. Every act is drafted from the folded plan when its turn comes. Plans nothing.
 */
import {
  type Act,
  type Bodies,
  type Budget,
  type Draft,
  draftAddition,
  draftBudget,
  draftCleared,
  draftEstimate,
  draftIntake,
  draftJobStep,
  draftLeftLoose,
  draftMinutes,
  draftPart,
  draftPartStep,
  draftPlanBegins,
  draftPlanBegun,
  draftPlanUse,
  draftScope,
  draftUndo,
  draftWanted,
  type PartAt,
  type PartFigures,
  type PlanKind,
  type PlanScope,
  type PlanState,
  type PlanUse,
  type Step,
  undoable,
} from "../../core/record/index.js";
import type { Journal } from "./journal.js";

type Kept = Promise<boolean>;
type Said<K extends PlanKind> = Omit<Bodies[K], "replaces">;

/** Keeps what `make` drafts from the plan as it then is, and the plan's beginning with it; several drafts are one act. */
export function planAct(journal: Journal, visit: string, make: (act: Act, plan: PlanState) => readonly Draft[]): Kept {
  // Asked for before the act takes its turn, so that the plan is read by then.
  const kept = journal.keptPlan(visit);
  return journal.keep("an-entry", (one) => {
    const plan = kept.peek();
    if (plan.is !== "open") return { drafts: [] };
    const drafts = make(one, plan.state);
    return { drafts: drafts.length === 0 ? [] : [...draftPlanBegun(one, plan.state, visit), ...drafts] };
  });
}

/** The earliest day the car can be worked on; null takes it back. */
export const planBegins = (journal: Journal, visit: string, on: string | null): Kept =>
  planAct(journal, visit, (act, plan) => [draftPlanBegins(act, plan, on)]);

export const planUse = (journal: Journal, visit: string, use: PlanUse | null): Kept =>
  planAct(journal, visit, (act, plan) => [draftPlanUse(act, plan, use)]);

export const planBudget = (journal: Journal, visit: string, budget: Budget | null): Kept =>
  planAct(journal, visit, (act, plan) => [draftBudget(act, plan, budget)]);

/** Keeps a job in or leaves it out by hand; null leaves it to the plan. */
export const planWanted = (journal: Journal, visit: string, said: Said<"plan.wanted">): Kept =>
  planAct(journal, visit, (act, plan) => [draftWanted(act, plan, said)]);

export const planMinutes = (journal: Journal, visit: string, said: Said<"plan.minutes">): Kept =>
  planAct(journal, visit, (act, plan) => [draftMinutes(act, plan, said)]);

export const planPart = (journal: Journal, visit: string, at: PartAt, figures: PartFigures | null): Kept =>
  planAct(journal, visit, (act, plan) => [draftPart(act, plan, at, figures)]);

/** One step of one part or of several: ordered together, they are undone together. */
export const partSteps = (journal: Journal, visit: string, steps: readonly Bodies["part.step"][]): Kept =>
  planAct(journal, visit, (act, plan) => steps.map((step) => draftPartStep(act, plan, step)));

export const jobStep = (journal: Journal, visit: string, step: Bodies["job.step"]): Kept =>
  planAct(journal, visit, (act, plan) => [draftJobStep(act, plan, step)]);

/** `loose` of something not told before: a name made up for it; it is given to `make`. */
export const leftLoose = (journal: Journal, visit: string, make: (random: string) => Said<"left-loose">): Kept =>
  planAct(journal, visit, (act, plan) => [draftLeftLoose(act, plan, make(act.nonce()))]);

export const clearedLoose = (journal: Journal, visit: string, cleared: Bodies["left-loose.cleared"]): Kept =>
  planAct(journal, visit, (act, plan) => [draftCleared(act, plan, cleared)]);

export const giveEstimate = (journal: Journal, visit: string, given: Bodies["estimate.given"]): Kept =>
  planAct(journal, visit, (act, plan) => [draftEstimate(act, plan, given)]);

/** Something beyond the estimate; a new one takes the random text as its name. */
export const addition = (journal: Journal, visit: string, make: (random: string) => Said<"estimate.addition">): Kept =>
  planAct(journal, visit, (act, plan) => [draftAddition(act, plan, make(act.nonce()))]);

export const planScope = (journal: Journal, visit: string, scope: PlanScope | null): Kept =>
  planAct(journal, visit, (act, plan) => [draftScope(act, plan, scope)]);

export const intake = (journal: Journal, visit: string, item: string, says: string | null): Kept =>
  planAct(journal, visit, (act, plan) => [draftIntake(act, plan, item, says)]);

/** What the undo notice takes back: this phone's newest act in the plan that is not undone. */
export const lastPlanStep = (plan: PlanState, writer: string): Step | undefined => undoable(plan, writer)[0];

export const undoPlan = (journal: Journal, visit: string, step: Pick<Step, "ids">): Kept =>
  planAct(journal, visit, (act, plan) => draftUndo(act, plan, step.ids));
