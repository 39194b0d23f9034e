/** The words of parts and of jobs in their plan, with those of dates and of every screen; looked up as in index.ts. */
import { en } from "./en.js";
import { enPlanDates } from "./en-plan-dates.js";
import { enPlanParts } from "./en-plan-parts.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...en, ...enPlanDates, ...enPlanParts };
type Key = keyof typeof words;

export function t<Name extends Key>(key: Name, ...params: ParamsFor<(typeof words)[Name]>): string {
  return fill(words[key], params[0] ?? {});
}
