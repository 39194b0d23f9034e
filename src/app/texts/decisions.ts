/** The words of deciding, with those that tell a decision and those every screen has; looked up as in index.ts. */
import { en } from "./en.js";
import { enDecisions } from "./en-decisions.js";
import { enOwnersWord } from "./en-owners-word.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...en, ...enOwnersWord, ...enDecisions };
type Key = keyof typeof words;

export function t<Name extends Key>(key: Name, ...params: ParamsFor<(typeof words)[Name]>): string {
  return fill(words[key], params[0] ?? {});
}
