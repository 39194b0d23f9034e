/** What is said when a car is handed back, each as one act in the plan of its visit. Refuses nothing by itself. */
import {
  type Bodies,
  type ComplaintAnswer,
  draftAnswer,
  draftProgressSent,
  draftRechecked,
  draftRelease,
  draftSecondLook,
  draftTakenBack,
  type Release,
} from "../../core/record/index.js";
import type { Journal } from "./journal.js";
import { planAct } from "./plan-acts.js";

type Kept = Promise<boolean>;

/** Answers a complaint of this visit or an earlier one; null leaves it open again. */
export const answerComplaint = (
  journal: Journal,
  visit: string,
  complaint: string,
  answer: ComplaintAnswer | null,
): Kept => planAct(journal, visit, (act, plan) => [draftAnswer(act, plan, complaint, answer)]);

export const progressSent = (journal: Journal, visit: string, sent: Bodies["progress.sent"]): Kept =>
  planAct(journal, visit, (act, plan) => [draftProgressSent(act, plan, sent)]);

export const secondLook = (journal: Journal, visit: string, look: Bodies["second-look"]): Kept =>
  planAct(journal, visit, (act, plan) => [draftSecondLook(act, plan, look)]);

export const rechecked = (journal: Journal, visit: string, done: Bodies["recheck.done"]): Kept =>
  planAct(journal, visit, (act, plan) => [draftRechecked(act, plan, done)]);

export const handBack = (journal: Journal, visit: string, release: Release): Kept =>
  planAct(journal, visit, (act, plan) => [draftRelease(act, plan, release)]);

/** Takes a car back that was handed back, with the reason. */
export const takeBack = (journal: Journal, visit: string, reason: string): Kept =>
  planAct(journal, visit, (act, plan) => [draftTakenBack(act, plan, reason)]);
