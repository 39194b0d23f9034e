/** The words of a viewing as a whole; looked up as in index.ts. */
import { enViewingPage } from "./en-viewing-page.js";
import { fill, type ParamsFor } from "./fill.js";

type ViewingPageKey = keyof typeof enViewingPage;

export function t<Key extends ViewingPageKey>(key: Key, ...params: ParamsFor<(typeof enViewingPage)[Key]>): string {
  return fill(enViewingPage[key], params[0] ?? {});
}
