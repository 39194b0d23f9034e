/** Drafts of the owner's word. A later word takes the place of the same person's; another person's stands beside it. */
import { isSamePerson } from "../terms/run.js";
import type { Act, Bodies, Draft } from "./contract.js";
import type { Decision } from "./decision-bodies.js";
import { standingIds } from "./draft.js";
import { draftPlan } from "./draft-plan.js";
import { idText } from "./identity.js";
import type { JobAt } from "./plan-bodies.js";
import type { PlanState } from "./plan-contract.js";
import { jobKey } from "./plan-keys.js";
import { standingIn } from "./standing.js";

/** Whose words a decision takes the place of: the same person's, or everybody's, as when people who differed agree. */
export type InPlaceOf = "own" | "all";

/** Somebody's word on a job; null takes back every word that stands. */
export function draftDecision(
  act: Act,
  plan: PlanState,
  { job, place }: JobAt,
  said: Decision | null,
  inPlaceOf: InPlaceOf = "own",
): Draft {
  const slot = `decision|${jobKey({ job, place })}`;
  const replaces = standingIn(plan.ledger, slot).flatMap((entry) => {
    const other = entry.kind === "decision" ? entry.body.said : null;
    const isOthers = other !== null && said !== null && !isSamePerson(other.who, said.who);
    return isOthers && inPlaceOf === "own" ? [] : [idText(entry)];
  });
  return draftPlan(act, plan, "decision", { job, place, said, replaces });
}

/** The answer to what was asked; null takes it back. */
export const draftOwnerAnswer = (act: Act, plan: PlanState, said: Omit<Bodies["decision.answer"], "replaces">): Draft =>
  draftPlan(act, plan, "decision.answer", { ...said, replaces: standingIds(plan, `owner-answer|${said.question}`) });

/** A signature under decisions that are kept already: their names are given when they are. */
export const draftSigned = (act: Act, plan: PlanState, signed: Bodies["decision.signed"]): Draft =>
  draftPlan(act, plan, "decision.signed", signed);
