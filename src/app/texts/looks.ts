/** The words of looking again, with those every screen has; looked up as in index.ts. */
import { en } from "./en.js";
import { enLooks } from "./en-looks.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...en, ...enLooks };
type Key = keyof typeof words;

export function t<Name extends Key>(key: Name, ...params: ParamsFor<(typeof words)[Name]>): string {
  return fill(words[key], params[0] ?? {});
}
