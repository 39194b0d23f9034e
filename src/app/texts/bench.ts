/** The words of the bench reckoner, with those of the first screens and the round; looked up as in index.ts. */
import { enBench } from "./en-bench.js";
import { enFirst } from "./en-first.js";
import { enRound } from "./en-round.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...enFirst, ...enRound, ...enBench };
type BenchKey = keyof typeof words;

export function t<Key extends BenchKey>(key: Key, ...params: ParamsFor<(typeof words)[Key]>): string {
  return fill(words[key], params[0] ?? {});
}
