/** The words that tell the owner's word, with those every screen has; looked up as in index.ts. */
import { en } from "./en.js";
import { enOwnersWord } from "./en-owners-word.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...en, ...enOwnersWord };
type Key = keyof typeof words;

export function t<Name extends Key>(key: Name, ...params: ParamsFor<(typeof words)[Name]>): string {
  return fill(words[key], params[0] ?? {});
}
