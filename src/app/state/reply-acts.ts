/**
 * Replying in a visit and taking a reply back, each as one act of the journal. Every act is drafted from the folded
 * visit at the moment its turn comes; nothing is judged here.
 */
import {
  type Act,
  type Draft,
  draftReply,
  draftUndo,
  type KeptBytes,
  type Step,
  type VisitState,
} from "../../core/record/index.js";
import type { ReplyKey, ReplyValue } from "../../core/terms/index.js";
import type { Journal } from "./journal.js";
import type { UnkeptWhat } from "./unkept.js";

/** Keeps what `make` drafts from the visit as it then is; of a visit that is not here nothing is kept. */
export function act(
  journal: Journal,
  stream: string,
  what: UnkeptWhat,
  make: (act: Act, visit: VisitState) => readonly Draft[],
  blobs?: readonly KeptBytes[],
): Promise<boolean> {
  // Asked for before the act takes its turn, so that the visit is read by then.
  const kept = journal.keptVisit(stream);
  return journal.keep(what, (one) => {
    const visit = kept.peek();
    if (visit.is !== "open") return { drafts: [] };
    return { drafts: make(one, visit.state), ...(blobs ? { blobs } : {}) };
  });
}

/** One reply, or null to take it back. */
export const reply = (journal: Journal, stream: string, key: ReplyKey, value: ReplyValue | null): Promise<boolean> =>
  act(journal, stream, "a-reply", (one, visit) => [draftReply(one, visit, key, value)]);

/** Several replies in one deliberate step: undone together. */
export const replyAll = (
  journal: Journal,
  stream: string,
  replies: readonly { readonly key: ReplyKey; readonly value: ReplyValue }[],
): Promise<boolean> =>
  act(journal, stream, "a-reply", (one, visit) => replies.map(({ key, value }) => draftReply(one, visit, key, value)));

/** Undoes one step. */
export const undo = (journal: Journal, stream: string, step: Pick<Step, "ids">): Promise<boolean> =>
  act(journal, stream, "an-entry", (one, visit) => draftUndo(one, visit, step.ids));
