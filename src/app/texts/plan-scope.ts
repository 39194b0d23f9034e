/** The words of what may be taken apart; looked up as in index.ts. */
import { en } from "./en.js";
import { enPlanScope } from "./en-plan-scope.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...en, ...enPlanScope };
export type PlanScopeKey = keyof typeof words;

export function t<Key extends PlanScopeKey>(key: Key, ...params: ParamsFor<(typeof words)[Key]>): string {
  return fill(words[key], params[0] ?? {});
}
