/**
 * Everything that judges and orders, gathered so that it loads as one lazy piece after the first screen stands.
 */
import { type Engine, prepare } from "../../core/assess/index.js";
import { callsTrade } from "../../core/expr/run.js";
import type { BuiltCommon, BuiltSheet, Complaints } from "../../core/sheet/run.js";

export { complaintsIn, ENGINE_VERSION, groundsOf, reassess, start, worldOf } from "../../core/assess/index.js";
export { link } from "../../core/expr/run.js";
export { order, whyAbove } from "../../core/plan/index.js";
export { toAssessInput } from "../../core/record/index.js";
export { ownJobsOf, withHand, withOwnWords } from "./by-hand.js";
export { inOrder } from "./order-by-need.js";

/**
 * Links the sheets of a visit, with the complaints that put points first if they are there. The trade's functions are
 * fetched where a condition calls one, and only there.
 */
export async function ready(
  { common, sheets }: { readonly common: BuiltCommon; readonly sheets: readonly BuiltSheet[] },
  complaints?: Complaints,
): Promise<Engine> {
  const heard = complaints ? { ...common, complaints: complaints.listed } : common;
  const plans = [common, ...sheets].flatMap((one) => Object.values(one.plans));
  return plans.some(({ code }) => callsTrade(code))
    ? prepare(heard, sheets, (await import("./trade-work.js")).TRADE_WORK)
    : prepare(heard, sheets);
}
