/** The run door: plans to closures. No parser behind it; the app up to the first reply loads only this. */

export type { Trade, TradeGiven } from "./link.js";
export { link } from "./link.js";
export type { Plan, PlanNode } from "./plan.js";
export { PLAN_VERSION } from "./plan.js";
export type { Reads } from "./reads.js";
export { callsTrade, readsOf } from "./reads.js";
export type { BandSpan, Evaluate, Measured, Outcome, Ref, Scope, Value } from "./scope.js";
export { NOT_APPLICABLE, Unknown } from "./scope.js";
export { withUncertainty } from "./uncertainty.js";
