/** Doing: in what order jobs are done, what is done once, what is had together. */
export { type Doing, type DoingJob, type DoingStep, doingOrder } from "./order.js";
export {
  type Alone,
  hadTogether,
  type JobParts,
  orderTogether,
  type Together,
  type Wanted,
  type WantedPart,
} from "./together.js";
