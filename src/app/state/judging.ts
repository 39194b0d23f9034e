/**
 * Everything that judges and orders, gathered so that it loads as one lazy piece after the first screen stands.
 */
export { complaintsIn, ENGINE_VERSION, prepare, reassess, start } from "../../core/assess/index.js";
export { order, whyAbove } from "../../core/plan/index.js";
export { toAssessInput } from "../../core/record/index.js";
export { withHand, withOwnWords } from "./by-hand.js";
