/** What a plan may ask, without evaluating it: for dependants, 'rules over a point', and notes in the editor. */
import { type Plan, replyOf } from "./plan.js";
import type { Ref } from "./scope.js";

export interface Reads {
  /** Points with field, and derived values (field ""). */
  readonly refs: readonly Ref[];
  /** Of these, the ones whose band is asked. */
  readonly bands: readonly Ref[];
  readonly facts: readonly string[];
  readonly faults: readonly string[];
}

/** Everything the plan may read, each once, in order of the text. */
export function readsOf(plan: Plan): Reads {
  const refs = new Map<string, Ref>();
  const bands = new Map<string, Ref>();
  const facts = new Set<string>();
  const faults = new Set<string>();
  const walk = (part: unknown): void => {
    if (!Array.isArray(part)) return;
    const reply = replyOf(part);
    if (reply !== undefined) {
      const ref = { point: reply.point, field: reply.field };
      refs.set(`${ref.point} ${ref.field}`, ref);
      if (part[0] === "band") bands.set(`${ref.point} ${ref.field}`, ref);
    } else if (part[0] === "fact") facts.add(String(part[1]));
    else if (part[0] === "found") faults.add(String(part[1]));
    else part.forEach(walk);
  };
  walk(plan.code);
  return { refs: [...refs.values()], bands: [...bands.values()], facts: [...facts], faults: [...faults] };
}

/** Whether a part of a plan may call a trade function; once too often at worst, where a word of a list is `call`. */
export const callsTrade = (part: unknown): boolean =>
  Array.isArray(part) && (part[0] === "call" || part.some(callsTrade));
