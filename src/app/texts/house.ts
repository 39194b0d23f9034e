/** The words of the house's terms, with those of the first screens; looked up as in index.ts. */
import { enFirst } from "./en-first.js";
import { enHouse } from "./en-house.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...enFirst, ...enHouse };
type HouseKey = keyof typeof words;

export function t<Key extends HouseKey>(key: Key, ...params: ParamsFor<(typeof words)[Key]>): string {
  return fill(words[key], params[0] ?? {});
}
