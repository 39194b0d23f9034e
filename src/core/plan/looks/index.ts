/** The door of looking again. */
export type * from "./contract.js";
export { type AnsweredOn, wasLooked } from "./done.js";
export { type DueAgain, dueAgain, dueFirst } from "./due.js";
export { looksAgain } from "./looks.js";
export { rowsForFault, rowsForJob } from "./rows.js";
export { paceOf } from "./use.js";
