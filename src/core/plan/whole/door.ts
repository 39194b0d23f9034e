/** The door of the whole plan: jobs with all that is known of them in, a plan out. */
export type {
  JobInPlan,
  WorkInput,
  WorkJob,
  WorkOpening,
  WorkPart,
  WorkPlan,
  WorkSupplier,
} from "./contract.js";
export {
  type AccessRow,
  type Places,
  type SheetJob,
  type SheetWork,
  workFromSheets,
  workId,
} from "./from-sheets.js";
export { isMandatory } from "./mandatory.js";
export { planWork } from "./plan-work.js";
export type { Planner } from "./planner.js";
export { addedWork, type DoneWork, doneWork, type MinutesTold, type SpentSoFar, spentSoFar } from "./so-far.js";
