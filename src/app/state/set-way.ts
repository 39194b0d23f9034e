/** Sets in which way a visit is looked through on this phone. Apart from reading it: most visits never change theirs. */
import type { TextShelf } from "./settings.js";
import { type Way, wayChanges, wayKey } from "./way.js";

export function setWay(shelf: TextShelf, visit: string, { byValue, quiet }: Way): void {
  shelf.put(wayKey(visit), `${byValue ? "v" : ""}${quiet ? "q" : ""}`);
  wayChanges.value++;
}
