/** The words of the work list that plans, with those every screen has; looked up as in index.ts. */
import { en } from "./en.js";
import { enPlanWork } from "./en-plan-work.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...en, ...enPlanWork };
export type PlanWorkKey = keyof typeof words;

export function t<Key extends PlanWorkKey>(key: Key, ...params: ParamsFor<(typeof words)[Key]>): string {
  return fill(words[key], params[0] ?? {});
}
