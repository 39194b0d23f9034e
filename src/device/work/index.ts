/** The door of computing beside the screen. */
export { startPlanner } from "./planner.js";
