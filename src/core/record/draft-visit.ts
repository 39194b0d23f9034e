/** Drafts of entries about a visit. What a draft replaces is read off the folded visit. Refuses to judge. */
import type { ReplyKey, ReplyValue } from "../terms/index.js";
import type { Act, Bodies, CarState, Draft, FrozenSheet, IdText, Odometer, VisitState } from "./contract.js";
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

export function draftOdometer(act: Act, visit: VisitState, { value, unit }: Odometer): Draft {
  return draft(act, visit.stream, "visit.odometer", { value, unit, replaces: standingIds(visit, "odometer|") });
}

/** Freezes one more sheet in the visit. */
export const draftSheet = (act: Act, visit: VisitState, sheet: FrozenSheet): Draft =>
  draft(act, visit.stream, "visit.sheet-added", sheet);

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

/** Settles replies that differ: the chosen one is said again, in place of every one it contradicts. */
export function draftSettle(act: Act, visit: VisitState, key: ReplyKey, chosen: IdText): Draft {
  const entry = standingIn(visit.ledger, replySlot(key)).find((one) => idText(one) === chosen);
  if (entry?.kind !== "reply" || entry.body.value === null)
    throw new Error(`${chosen} does not stand at ${replySlot(key)}`);
  return draftReply(act, visit, entry.body.key, entry.body.value);
}

type Said<K extends "note" | "picture" | "sound" | "visit.complaint"> = Omit<Bodies[K], "replaces">;

/** The owner's words as spoken; `inPlaceOf` mends a slip of the pen. */
export function draftComplaint(
  act: Act,
  visit: VisitState,
  complaint: Said<"visit.complaint">,
  inPlaceOf: readonly IdText[] = [],
): Draft {
  return draft(act, visit.stream, "visit.complaint", { ...complaint, replaces: inPlaceOf });
}

export function draftNote(
  act: Act,
  state: VisitState | CarState,
  note: Said<"note">,
  inPlaceOf: readonly IdText[] = [],
): Draft {
  return draft(act, state.stream, "note", { ...note, replaces: inPlaceOf });
}

/** A picture whose bytes are handed to the store together with this draft. */
export function draftPicture(
  act: Act,
  state: VisitState | CarState,
  picture: Said<"picture">,
  inPlaceOf: readonly IdText[] = [],
): Draft {
  return draft(act, state.stream, "picture", { ...picture, replaces: inPlaceOf });
}

/** A sound whose bytes are handed to the store together with this draft. */
export const draftSound = (act: Act, visit: VisitState, sound: Said<"sound">): Draft =>
  draft(act, visit.stream, "sound", { ...sound, replaces: [] });
