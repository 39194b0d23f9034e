/** Drafts of what is said when a car is handed back. Second looks and checks replace nothing. Refuses to judge. */
import type { Act, Bodies, Draft } from "./contract.js";
import { standingIds } from "./draft.js";
import { draftBy } from "./draft-later.js";
import type { PlanState } from "./plan-contract.js";
import { PLAN_KINDS } from "./plan-kinds.js";
import type { ComplaintAnswer, Release, ReleaseKind } from "./release-bodies.js";

const draftHere = <K extends ReleaseKind>(act: Act, { stream }: PlanState, kind: K, body: Bodies[K]): Draft =>
  draftBy(PLAN_KINDS, act, stream, kind, body);

/** An answer to a complaint, in place of the one that stood; null leaves it open again. */
export const draftAnswer = (act: Act, plan: PlanState, complaint: string, answer: ComplaintAnswer | null): Draft =>
  draftHere(act, plan, "complaint.answered", {
    complaint,
    answer,
    replaces: standingIds(plan, `answer|${complaint}`),
  });

/** What the owner was sent on the way. */
export const draftProgressSent = (act: Act, plan: PlanState, sent: Bodies["progress.sent"]): Draft =>
  draftHere(act, plan, "progress.sent", sent);

export const draftSecondLook = (act: Act, plan: PlanState, look: Bodies["second-look"]): Draft =>
  draftHere(act, plan, "second-look", look);

export const draftRechecked = (act: Act, plan: PlanState, done: Bodies["recheck.done"]): Draft =>
  draftHere(act, plan, "recheck.done", done);

/** Hands the car back. */
export const draftRelease = (act: Act, plan: PlanState, release: Release): Draft =>
  draftHere(act, plan, "plan.release", { release, replaces: standingIds(plan, "release|") });

/** Takes a released car back, with the reason. */
export const draftTakenBack = (act: Act, plan: PlanState, reason: string): Draft =>
  draftHere(act, plan, "plan.release", { release: null, reason, replaces: standingIds(plan, "release|") });
