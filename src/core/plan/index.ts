/** The door of planning: faults in, work list in urgency order with reasons out. Pure. */
export type { ByWhen, JobDue, UrgencyKey, Why } from "../assess/contract.js";
export { type FaultDue, type FaultTrend, order, type OrderSetting, type Reason, urgentFaults, whyAbove, whyKeys } from "./order.js";
export { type Band, bandOf, type Consequence, type Likelihood, rankOf } from "./matrix.js";
export { compareKeys, likelihoodFromTrend, type Urgency, urgencyOf, type Urgent } from "./urgency.js";
