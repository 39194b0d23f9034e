/** What is done whatever the budget. */
import type { WorkJob } from "./contract.js";

/** The last due class that does not wait for money: before moving, before driving, within a stated distance or time. */
const LAST_MANDATORY = 2;

/** What is due so soon, and what somebody wants done. */
export const isMandatory = ({ key, wanted }: Pick<WorkJob, "key" | "wanted">): boolean =>
  key.due <= LAST_MANDATORY || wanted === "in";
