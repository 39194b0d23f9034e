/** The words of what is wearing, with those of every screen; looked up as in index.ts. */
import { en } from "./en.js";
import { enWearing } from "./en-wearing.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...en, ...enWearing };
type Key = keyof typeof words;

export function t<Name extends Key>(key: Name, ...params: ParamsFor<(typeof words)[Name]>): string {
  return fill(words[key], params[0] ?? {});
}
