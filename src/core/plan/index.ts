/** The door of planning: faults in, work list in urgency order with reasons out. Pure. */
export type { ByWhen, JobDue, UrgencyKey, Why } from "../assess/contract.js";
// access: what must be open, what is shared, what pays while it is apart
export * from "./access/index.js";
// choice: what the budget pays, and the next step up
export * from "./choice/door.js";
// doing: in what order, what once, what together
export * from "./doing/index.js";
// estimate: what it costs, how sure that is, and where it stands against the first one
export * from "./estimate/index.js";
// looks: when to look again, and what falls into one visit
export * from "./looks/index.js";
export { type Band, bandOf, type Consequence, type Likelihood, rankOf } from "./matrix.js";
export { PLAN_MESSAGES, tellPlan } from "./messages.js";
export {
  type FaultDue,
  type FaultTrend,
  type OrderSetting,
  order,
  type Reason,
  urgentFaults,
  whyAbove,
  whyKeys,
} from "./order.js";
// progress: where parts and jobs stand, what is loose
export { type PartPlace, type PartStands, partStands } from "./progress/parts.js";
export { type JobStands, type Progress, progressOf, type StillLoose } from "./progress/progress.js";
// release: complaints answered, what stands against handing back, what is due afterwards
export * from "./release/index.js";
export * from "./schedule/door.js";
export type { IsoDate, Three } from "./terms.js";
export { compareKeys, likelihoodFromTrend, type Urgency, type Urgent, urgencyOf } from "./urgency.js";
// the whole list: everything above, one after the other
export * from "./whole/door.js";
