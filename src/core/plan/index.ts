/** The door of planning: faults in, work list in urgency order with reasons out. Pure. */
export type { ByWhen, JobDue, UrgencyKey, Why } from "../assess/contract.js";
export { type Band, bandOf, type Consequence, type Likelihood, rankOf } from "./matrix.js";
export { tellPlan } from "./messages.js";
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
export * from "./schedule/door.js";
export { compareKeys, likelihoodFromTrend, type Urgency, type Urgent, urgencyOf } from "./urgency.js";
