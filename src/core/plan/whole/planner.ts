/** What planning asks of whoever runs it: beside the screen, the newest question only. Refuses to know workers. */
import type { WorkInput, WorkPlan } from "./contract.js";

export interface Planner {
  /**
   * The plan of this list; undefined when a newer question overtook it. Rejects when planning itself broke, which is
   * our own mistake.
   */
  plan(input: WorkInput): Promise<WorkPlan | undefined>;
}
