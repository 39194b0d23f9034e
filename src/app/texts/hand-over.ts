/** The words of handing over, with those every screen has; looked up as in index.ts. */
import { en } from "./en.js";
import { enHandOver } from "./en-hand-over.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...en, ...enHandOver };
type Key = keyof typeof words;

export function t<Name extends Key>(key: Name, ...params: ParamsFor<(typeof words)[Name]>): string {
  return fill(words[key], params[0] ?? {});
}
