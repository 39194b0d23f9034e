/** The words of marks and of pictures that compare, with those of pictures; looked up as in index.ts. */
import { enFirst } from "./en-first.js";
import { enMarks } from "./en-marks.js";
import { enMedia } from "./en-media.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...enFirst, ...enMedia, ...enMarks };
type MarksKey = keyof typeof words;

export function t<Key extends MarksKey>(key: Key, ...params: ParamsFor<(typeof words)[Key]>): string {
  return fill(words[key], params[0] ?? {});
}

export { day, figure } from "./figures.js";
