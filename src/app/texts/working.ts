/** The words of how a value came about, looked up as in index.ts. */
import { enWorking } from "./en-working.js";
import { fill, type ParamsFor } from "./fill.js";

export function t<Key extends keyof typeof enWorking>(key: Key, ...params: ParamsFor<(typeof enWorking)[Key]>): string {
  return fill(enWorking[key], params[0] ?? {});
}
