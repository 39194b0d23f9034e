/** When two values of one slot say the same, so that people do not 'differ'. Refuses to weigh what they mean. */
import type { ReplyValue } from "../terms/index.js";
import type { Stands } from "./contract.js";
import { byCode } from "./identity.js";
import { canonicalText } from "./merge.js";

/**
 * Equal replies: words in any order; a reading with the same shots, unit and gauge, as typed; a non-answer with the
 * same reason, whatever was said beside it.
 */
export function sameReply(a: ReplyValue, b: ReplyValue): boolean {
  return canonicalText(meantBy(a)) === canonicalText(meantBy(b));
}

function meantBy(value: ReplyValue): unknown {
  if (value.type === "words") return { ...value, words: [...new Set(value.words)].sort(byCode) };
  if (value.type === "non-answer") return { type: value.type, nonAnswer: value.nonAnswer, reason: value.reason };
  return value;
}

/** Equal values of anything else that can be replaced. */
export const sameValue = (a: unknown, b: unknown): boolean => a === b || canonicalText(a) === canonicalText(b);

/** Whether different values stand. */
export function differ<T>(standing: readonly Stands<T>[], same: (a: T, b: T) => boolean = sameValue): boolean {
  const [first, ...others] = standing;
  return first !== undefined && others.some((one) => !same(first.value, one.value));
}
