/** The words of how a car is used; looked up as in index.ts. */
import { enPlanUse } from "./en-plan-use.js";
import { fill, type ParamsFor } from "./fill.js";

export function t<Key extends keyof typeof enPlanUse>(key: Key, ...params: ParamsFor<(typeof enPlanUse)[Key]>): string {
  return fill(enPlanUse[key], params[0] ?? {});
}
