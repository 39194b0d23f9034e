/** The words on the way to the first reply and round the car, looked up as in index.ts. */
import { enFirst } from "./en-first.js";
import { enRound } from "./en-round.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...enFirst, ...enRound };
type RoundKey = keyof typeof words;

export function t<Key extends RoundKey>(key: Key, ...params: ParamsFor<(typeof words)[Key]>): string {
  return fill(words[key], params[0] ?? {});
}

export { day, figure } from "./figures.js";
