/** What was entered and is not kept: what it is called, and when a newer entry makes it void. Pure. */
import type { Draft } from "../../core/record/index.js";
import type { ReplyKey } from "../../core/terms/index.js";
import type { Unkept } from "./journal.js";

/** What a refused entry is called on the screen. */
export type UnkeptWhat = "a-reply" | "a-note" | "a-picture" | "a-sound" | "an-entry";

function replyKey(draft: Draft): ReplyKey | undefined {
  if (draft.kind !== "reply" || typeof draft.body !== "object" || draft.body === null || !("key" in draft.body))
    return undefined;
  // Drafts are made by core/record only: a reply's body holds its key.
  return draft.body.key as ReplyKey;
}

/** Whether the newer reply answers the same thing: a non-answer covers every field of its point. */
function coveredBy(older: Draft, newer: readonly Draft[]): boolean {
  const own = replyKey(older);
  if (!own) return false;
  return newer.some((draft) => {
    const key = replyKey(draft);
    if (!key || draft.stream !== older.stream) return false;
    const samePoint = key.point === own.point && key.place === own.place && key.state === own.state;
    return samePoint && (key.field === own.field || key.field === "*" || own.field === "*");
  });
}

/**
 * What is left of the refused acts once newer replies are given: a refused reply that is answered anew would
 * otherwise come back later and contradict the person who had changed their mind.
 */
export function replacedByNewer(unkept: readonly Unkept[], newer: readonly Draft[]): readonly Unkept[] {
  return unkept.flatMap((item) => {
    if (!item.problem) return [item];
    const drafts = item.drafts.filter((draft) => !coveredBy(draft, newer));
    if (drafts.length === item.drafts.length) return [item];
    return drafts.some((draft) => draft.kind !== "person") ? [{ ...item, drafts }] : [];
  });
}
