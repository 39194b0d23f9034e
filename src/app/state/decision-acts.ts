/** What the owner says, as acts of the journal in the plan of a visit: several jobs decided at once are one act. */
import {
  type Bodies,
  type Decision,
  draftDecision,
  draftOwnerAnswer,
  draftSigned,
  type InPlaceOf,
  type JobAt,
} from "../../core/record/index.js";
import type { Journal } from "./journal.js";
import { planAct } from "./plan-acts.js";

type Kept = Promise<boolean>;

export interface OneDecision {
  readonly at: JobAt;
  /** Null takes back every word on the job. */
  readonly said: Decision | null;
}

export const decide = (journal: Journal, visit: string, each: readonly OneDecision[], over?: InPlaceOf): Kept =>
  planAct(journal, visit, (act, plan) => each.map(({ at, said }) => draftDecision(act, plan, at, said, over)));

export const answerQuestion = (
  journal: Journal,
  visit: string,
  said: Omit<Bodies["decision.answer"], "replaces">,
): Kept => planAct(journal, visit, (act, plan) => [draftOwnerAnswer(act, plan, said)]);

/** Under decisions that are kept: an entry has its name only then. */
export const signDecisions = (journal: Journal, visit: string, signed: Bodies["decision.signed"]): Kept =>
  planAct(journal, visit, (act, plan) => [draftSigned(act, plan, signed)]);
