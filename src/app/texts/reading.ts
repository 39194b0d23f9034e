/** The words of a reading, looked up as in index.ts. */
import { enFirst } from "./en-first.js";
import { enReading } from "./en-reading.js";
import { enRound } from "./en-round.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...enFirst, ...enRound, ...enReading };
type ReadingKey = keyof typeof words;

export function t<Key extends ReadingKey>(key: Key, ...params: ParamsFor<(typeof words)[Key]>): string {
  return fill(words[key], params[0] ?? {});
}

export { figure, rounded } from "./figures.js";
