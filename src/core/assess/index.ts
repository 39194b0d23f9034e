/** The door of assessing: replies in, findings with their because out. Pure; knows no clock, storage or screen. */

export { COVERAGE, spanOf, standingOf } from "./band.js";
export { complaintsIn } from "./complaints.js";
export type * from "./contract.js";
export { type Engine, prepare } from "./engine.js";
export { type Explained, explain, explainIn } from "./explain.js";
export { type Grounded, groundsOf, type Typed } from "./grounds.js";
export { tellProblem } from "./messages.js";
export { addOffList } from "./off-list.js";
export { aggregate, singleU } from "./reading.js";
export { applyRegrades } from "./regrade.js";
export { assess, reassess, type Session, start, worldOf } from "./session.js";
export { type ValueOrder, valueOrder } from "./value-order.js";
export type { StateMarks } from "./value-row.js";
export { ENGINE_VERSION } from "./version.js";
export { readVisitFile, type VisitFile } from "./visit-file.js";
export { WALK_AWAY, type Worth, worthOf } from "./worth.js";
