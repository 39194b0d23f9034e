/** What goes to the planning worker and comes back. Types only. */
import type { WorkInput, WorkPlan } from "../../core/plan/index.js";

export interface PlanRequest {
  readonly id: number;
  readonly input: WorkInput;
}
export type PlanAnswer =
  | { readonly id: number; readonly plan: WorkPlan }
  | { readonly id: number; readonly broke: string };
