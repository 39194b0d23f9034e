/** The words of a seasonal check and of what comes after it, with those of the round; looked up as in index.ts. */
import { enFirst } from "./en-first.js";
import { enRound } from "./en-round.js";
import { enSeason } from "./en-season.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...enFirst, ...enRound, ...enSeason };
type SeasonKey = keyof typeof words;

export function t<Key extends SeasonKey>(key: Key, ...params: ParamsFor<(typeof words)[Key]>): string {
  return fill(words[key], params[0] ?? {});
}

export { day, figure } from "./figures.js";
