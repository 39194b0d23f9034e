/** What a plan may ask, without evaluating it: for dependants, 'rules over a point', and notes in the editor. */
import type { Plan } from "./plan.js";
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
  throw new Error(`readsOf is being built: ${plan.v}`);
}
