/** What stands left loose in a plan, counted for those who only warn of it. */
import type { PlanState } from "../../core/record/index.js";

/** How many things are still loose. */
export const looseCount = ({ loose, cleared }: Pick<PlanState, "loose" | "cleared">): number =>
  [...loose.keys()].filter((name) => (cleared.get(name)?.length ?? 0) === 0).length;
