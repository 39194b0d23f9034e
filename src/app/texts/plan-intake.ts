/** The words of taking a car in; looked up as in index.ts. */
import { en } from "./en.js";
import { enPlanIntake } from "./en-plan-intake.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...en, ...enPlanIntake };
export type PlanIntakeKey = keyof typeof words;

export function t<Key extends PlanIntakeKey>(key: Key, ...params: ParamsFor<(typeof words)[Key]>): string {
  return fill(words[key], params[0] ?? {});
}
