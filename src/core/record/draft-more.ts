/** Drafts of what is said of a visit beside its replies. What a draft replaces is read off the fold. Refuses to judge. */
import type { ReplyKey } from "../terms/index.js";
import type { Act, Bodies, CarState, Draft, FrozenSheet, IdText, Odometer, VisitState } from "./contract.js";
import { draft, standingIds } from "./draft.js";
import { draftReply } from "./draft-visit.js";
import { idText } from "./identity.js";
import { replySlot } from "./kinds.js";
import { standingIn } from "./standing.js";

export function draftOdometer(act: Act, visit: VisitState, { value, unit }: Odometer): Draft {
  return draft(act, visit.stream, "visit.odometer", { value, unit, replaces: standingIds(visit, "odometer|") });
}

/** Freezes one more sheet in the visit. */
export const draftSheet = (act: Act, visit: VisitState, sheet: FrozenSheet): Draft =>
  draft(act, visit.stream, "visit.sheet-added", sheet);

/** Settles replies that differ: the chosen one is said again, in place of every one it contradicts. */
export function draftSettle(act: Act, visit: VisitState, key: ReplyKey, chosen: IdText): Draft {
  const entry = standingIn(visit.ledger, replySlot(key)).find((one) => idText(one) === chosen);
  if (entry?.kind !== "reply" || entry.body.value === null)
    throw new Error(`${chosen} does not stand at ${replySlot(key)}`);
  return draftReply(act, visit, entry.body.key, entry.body.value);
}

type Said<K extends "note" | "picture" | "sound"> = Omit<Bodies[K], "replaces">;

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
