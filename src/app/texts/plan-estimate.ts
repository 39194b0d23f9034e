/** The words of the estimate's screens; looked up as in index.ts. */
import { en } from "./en.js";
import { enPlanEstimate } from "./en-plan-estimate.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...en, ...enPlanEstimate };
export type PlanEstimateKey = keyof typeof words;

export function t<Key extends PlanEstimateKey>(key: Key, ...params: ParamsFor<(typeof words)[Key]>): string {
  return fill(words[key], params[0] ?? {});
}
