/** The words of a viewing with those of the round; looked up as in index.ts. */
import { enFirst } from "./en-first.js";
import { enRound } from "./en-round.js";
import { enViewing } from "./en-viewing.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...enFirst, ...enRound, ...enViewing };
type ViewingKey = keyof typeof words;

export function t<Key extends ViewingKey>(key: Key, ...params: ParamsFor<(typeof words)[Key]>): string {
  return fill(words[key], params[0] ?? {});
}

export { clock } from "./figures.js";
