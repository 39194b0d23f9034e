/**
 * Everything that judges and orders, gathered so that it loads as one lazy piece after the first screen stands.
 * Adds nothing of its own.
 */
export { applyRegrades, complaintsIn, ENGINE_VERSION, prepare, reassess, start } from "../../core/assess/index.js";
export { order, whyAbove } from "../../core/plan/index.js";
export { toAssessInput } from "../../core/record/index.js";
