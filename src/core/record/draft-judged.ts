/** Drafts of entries about a visit's judgement: grades and findings by hand, time for looking, cautions told, closing, judging again. Refuses to judge. */
import type { Grade } from "../terms/index.js";
import type { Act, Bodies, Draft, FreeFinding, LookingTime, VisitState } from "./contract.js";
import { draft, standingIds } from "./draft.js";
import { faultKey } from "./identity.js";

/** A grade by hand, with its reason; null gives the rules' own grade back. */
export function draftRegrade(
  act: Act,
  visit: VisitState,
  regrade: { readonly fault: string; readonly place: string; readonly grade: Grade | null; readonly reason: string },
): Draft {
  const slot = `regrade|${faultKey(regrade.fault, regrade.place)}`;
  return draft(act, visit.stream, "regrade", { ...regrade, replaces: standingIds(visit, slot) });
}

/** Something seen that no point asks for; null takes it back. */
export function draftFinding(act: Act, visit: VisitState, finding: string, found: FreeFinding | null): Draft {
  return draft(act, visit.stream, "finding", { finding, found, replaces: standingIds(visit, `finding|${finding}`) });
}

/** Sets the time there is for looking; null takes it away. */
export const draftClock = (act: Act, visit: VisitState, clock: LookingTime | null): Draft =>
  draft(act, visit.stream, "visit.clock", { clock, replaces: standingIds(visit, "clock|") });

/** A caution was read to, or by, the person concerned. */
export const draftTold = (act: Act, visit: VisitState, caution: string): Draft =>
  draft(act, visit.stream, "caution.told", { caution });

/** Closes the visit with its judgement (a blob) and the version that judged. */
export function draftClose(
  act: Act,
  visit: VisitState,
  judged: { readonly assessment: string; readonly engine: string },
): Draft {
  return draft(act, visit.stream, "visit.closed", { ...judged, replaces: standingIds(visit, "closing|") });
}

export function draftReopen(act: Act, visit: VisitState, reason: string): Draft {
  return draft(act, visit.stream, "visit.reopened", { reason, replaces: standingIds(visit, "closing|") });
}

/** Judges the visit by other sheets and limits from here on; before and after are blobs of the judgements. */
export const draftJudgedAgain = (act: Act, visit: VisitState, judged: Required<Bodies["visit.judged-again"]>): Draft =>
  draft(act, visit.stream, "visit.judged-again", judged);
