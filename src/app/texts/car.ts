/** The words of a car's places and of the house's gauges, looked up as in index.ts. */
import { enCar } from "./en-car.js";
import { enFirst } from "./en-first.js";
import { enRound } from "./en-round.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...enFirst, ...enRound, ...enCar };
type CarKey = keyof typeof words;

export function t<Key extends CarKey>(key: Key, ...params: ParamsFor<(typeof words)[Key]>): string {
  return fill(words[key], params[0] ?? {});
}
