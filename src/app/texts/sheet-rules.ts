/** The words of the rules of a check sheet, with those of the first screens; looked up as in index.ts. */
import { enFirst } from "./en-first.js";
import { enSheetRules } from "./en-sheet-rules.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...enFirst, ...enSheetRules };
type SheetRulesKey = keyof typeof words;

export function t<Key extends SheetRulesKey>(key: Key, ...params: ParamsFor<(typeof words)[Key]>): string {
  return fill(words[key], params[0] ?? {});
}
