/** Sets in which way a visit is looked through on this phone. Apart from reading it: most visits never change theirs. */
import type { TextShelf } from "./settings.js";
import { type Way, wayChanges, wayKey } from "./way.js";

const LETTERS: Readonly<Record<Way["order"], string>> = { walk: "", value: "v", due: "d" };

export function setWay(shelf: TextShelf, visit: string, { order, quiet }: Way): void {
  shelf.put(wayKey(visit), `${LETTERS[order]}${quiet ? "q" : ""}`);
  wayChanges.value++;
}
