/** The words of working on a check sheet, with those of the first screens; looked up as in index.ts. */
import { enFirst } from "./en-first.js";
import { enSheetWork } from "./en-sheet-work.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...enFirst, ...enSheetWork };
type SheetWorkKey = keyof typeof words;
type PartKey = Extract<SheetWorkKey, `sheet-part.${string}`>;

export function t<Key extends SheetWorkKey>(key: Key, ...params: ParamsFor<(typeof words)[Key]>): string {
  return fill(words[key], params[0] ?? {});
}

/** Whether a part of an item has a word of its own. */
export const isPartKey = (key: string): key is PartKey => key.startsWith("sheet-part.") && Object.hasOwn(words, key);
