/** The words of the limits book, with those of every screen; looked up as in index.ts. */
import { en } from "./en.js";
import { enLimits } from "./en-limits.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...en, ...enLimits };
type Key = keyof typeof words;

export function t<Name extends Key>(key: Name, ...params: ParamsFor<(typeof words)[Name]>): string {
  return fill(words[key], params[0] ?? {});
}

export { day, figure } from "./figures.js";
