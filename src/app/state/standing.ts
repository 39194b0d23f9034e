/**
 * What stands as the reply to a point: read from a folded visit, never judged. One reply is shown where
 * several stand, and that they differ is said.
 */
import { compareStamps, type VisitState } from "../../core/record/index.js";
import { fieldOf, type Point } from "../../core/sheet/run.js";
import { keyText, type ReplyKey, type ReplyValue } from "../../core/terms/index.js";
import { requiredFields } from "./knowledge.js";

/** Field name of a non-answer: it covers all fields of the point there. */
export const ALL_FIELDS = "*";

/** A point at a place in a car state. */
export interface PointAt {
  readonly point: string;
  readonly place: string;
  readonly state: string;
}

export const keyOf = (at: PointAt, field: string): ReplyKey => ({
  point: at.point,
  place: at.place,
  state: at.state,
  field,
});

/** One text per point, place and car state. */
export const pointText = (at: PointAt): string => `${at.state} ${at.place} ${at.point}`;

type Replies = VisitState["replies"];
type Standing = NonNullable<ReturnType<Replies["get"]>>["standing"];

/** Everything that stands under a key, newest last by stamp. */
export function standingAt(replies: Replies, at: PointAt, field: string): Standing {
  return replies.get(keyText(keyOf(at, field)))?.standing ?? [];
}

/** The reply shown for a key: the newest that stands. */
export function replyAt(replies: Replies, at: PointAt, field: string): ReplyValue | undefined {
  const standing = standingAt(replies, at, field);
  // Asked of every point at every stop, and hardly ever do several stand.
  const newest = standing.length > 1 ? [...standing].sort((a, b) => compareStamps(a.at, b.at)).at(-1) : standing[0];
  return newest?.value;
}

/** The non-answer that stands for the whole point, unless a field was answered after all. */
export function nonAnswerAt(replies: Replies, at: PointAt): Extract<ReplyValue, { type: "non-answer" }> | undefined {
  const value = replyAt(replies, at, ALL_FIELDS);
  return value?.type === "non-answer" ? value : undefined;
}

/** Whether every field that must be answered is (where none must, any one), or the person said why not. */
export function isAnswered(replies: Replies, point: Point, at: PointAt): boolean {
  if (nonAnswerAt(replies, at)) return true;
  const required = requiredFields(point);
  const stands = (field: string): boolean => standingAt(replies, at, field).length > 0;
  return required.length > 0 ? required.every(stands) : Object.keys(point.fields).some(stands);
}

/** Whether anything at all was said about the point there. */
export function isTouched(replies: Replies, point: Point, at: PointAt): boolean {
  return (
    nonAnswerAt(replies, at) !== undefined ||
    Object.keys(point.fields).some((field) => standingAt(replies, at, field).length > 0)
  );
}

/** Equal replies say the same thing; two equal ones do not differ, whoever gave them. */
export const sameValue = (a: ReplyValue, b: ReplyValue): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Keys under which replies with different values stand. */
export function differing(replies: Replies): readonly { readonly key: ReplyKey; readonly standing: Standing }[] {
  return [...replies.values()].filter(({ standing }) =>
    standing.some((one) => standing[0] && !sameValue(one.value, standing[0].value)),
  );
}

/**
 * The words a point's field holds after one word was pressed: an exclusive word drops all others and is
 * dropped by any other; without `several` the pressed word is the reply.
 */
export function wordsAfter(
  point: Point,
  field: string,
  before: readonly string[],
  word: string,
  chosen: boolean,
): readonly string[] {
  const declared = fieldOf(point, field);
  if (!declared || !("words" in declared) || !declared.several) return chosen ? [word] : [];
  const exclusive = declared.exclusive ?? [];
  if (!chosen) return before.filter((one) => one !== word);
  const kept = exclusive.includes(word) ? [] : before.filter((one) => !exclusive.includes(one));
  const after = new Set([...kept, word]);
  return declared.words.filter((one) => after.has(one));
}
