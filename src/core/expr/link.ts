/** Makes closures with three values out of a plan. Knows no CEL, no sheet, no visit: it asks a Scope. */
import type { Result } from "../terms/index.js";
import type { Plan } from "./plan.js";
import type { Evaluate, Value } from "./scope.js";

/** Trade functions by name: canonical units in, canonical unit (or yes/no) out; NaN when it has no answer. */
export type Trade = Readonly<Record<string, (...args: readonly Value[]) => number | boolean>>;

/**
 * A plan as a closure. Fails (never throws) on a plan of another version (`expr.plan-version`: make it again
 * from its text), a damaged one (`expr.plan-broken`) or a trade function this build lacks (`expr.no-function`).
 */
export function link(plan: Plan, trade: Trade = {}): Result<Evaluate> {
  throw new Error(`link is being built: ${plan.v} ${Object.keys(trade).length}`);
}
