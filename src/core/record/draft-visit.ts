/** Drafts of a visit's opening and its replies. What a draft replaces is read off the folded visit. Refuses to judge. */
import type { ReplyKey, ReplyValue } from "../terms/index.js";
import type { Act, Bodies, Draft, IdText, VisitState } from "./contract.js";
import { draft, noMixing, standingIds } from "./draft.js";
import { ALL_FIELDS } from "./fold-visit.js";
import { idText } from "./identity.js";
import { replySlot } from "./kinds.js";
import { standingIn } from "./standing.js";

/** Opens a visit; `stream` from `visitStream`. */
export function draftVisit(act: Act, stream: string, opening: Bodies["visit.opened"]): Draft {
  noMixing(stream, [opening.car]);
  return draft(act, stream, "visit.opened", opening);
}

/** Says when the car was looked at, in place of what stood. */
export function draftDate(act: Act, visit: VisitState, on: string): Draft {
  return draft(act, visit.stream, "visit.dated", { on, replaces: standingIds(visit, "on|") });
}

/**
 * A reply, a non-answer, or null to take back. A field's reply replaces what stands for that field and any non-answer;
 * a non-answer, or null for field `*`, replaces everything that stands for the point there.
 */
export function draftReply(act: Act, visit: VisitState, key: ReplyKey, value: ReplyValue | null): Draft {
  const whole = value?.type === "non-answer" || (value === null && key.field === ALL_FIELDS);
  const own: ReplyKey = whole ? { ...key, field: ALL_FIELDS } : key;
  const replaces: IdText[] = [];
  for (const entry of standingIn(visit.ledger, replySlot(key))) {
    if (entry.kind !== "reply") continue;
    const { field } = entry.body.key;
    if (whole || field === own.field || field === ALL_FIELDS) replaces.push(idText(entry));
  }
  return draft(act, visit.stream, "reply", { key: own, value, replaces });
}

/** The owner's words as spoken; `inPlaceOf` mends a slip of the pen. */
export function draftComplaint(
  act: Act,
  visit: VisitState,
  complaint: Omit<Bodies["visit.complaint"], "replaces">,
  inPlaceOf: readonly IdText[] = [],
): Draft {
  return draft(act, visit.stream, "visit.complaint", { ...complaint, replaces: inPlaceOf });
}
