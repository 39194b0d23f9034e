/** The words of complaints answered and of handing a car back, with those every screen has; looked up as in index.ts. */
import { en } from "./en.js";
import { enRelease } from "./en-release.js";
import { fill, type ParamsFor } from "./fill.js";

const words = { ...en, ...enRelease };
type Key = keyof typeof words;

export function t<Name extends Key>(key: Name, ...params: ParamsFor<(typeof words)[Name]>): string {
  return fill(words[key], params[0] ?? {});
}
