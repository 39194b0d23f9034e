/** The words of the first screen, looked up as in index.ts, without the catalogue of all the others. */
import { enFirst } from "./en-first.js";
import { fill, type ParamsFor } from "./fill.js";

type FirstKey = keyof typeof enFirst;

export function t<Key extends FirstKey>(key: Key, ...params: ParamsFor<(typeof enFirst)[Key]>): string {
  return fill(enFirst[key], params[0] ?? {});
}

export { day, decimalComma, month } from "./figures.js";
