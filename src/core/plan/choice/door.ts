/** The door of choosing within a budget. */
export { choose, nextStep } from "./choose.js";
export type {
  ChoiceJob,
  ChoiceProblem,
  ChoiceResult,
  ChoiceState,
  ChosenSet,
  GoOn,
  NextStep,
} from "./contract.js";
export { flatValues, type RankedJob, tieredValues } from "./values.js";
