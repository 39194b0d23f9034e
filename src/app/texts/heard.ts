/** The words of what was heard, with those of the camera, pictures and sounds; looked up as in index.ts. */
import { enFirst } from "./en-first.js";
import { enHeard } from "./en-heard.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...enFirst, ...enHeard };
type HeardKey = keyof typeof words;

export function t<Key extends HeardKey>(key: Key, ...params: ParamsFor<(typeof words)[Key]>): string {
  return fill(words[key], params[0] ?? {});
}
