/** Taking one thing over from another edition into a working copy. Pure. */

import type { Sheet } from "../../core/sheet/run.js";
import { type DraftChanges, freshNumber, type ItemDifference } from "../../core/sheet/work.js";
import { itemsIn } from "./sheet-work.js";

export interface TakenOver {
  readonly item: string;
  readonly to: NonNullable<ItemDifference["after"]> | null;
}

/**
 * What to put, for a difference read from the working copy to the other edition. Items without an id are told by where
 * they stand and put by the name they stood under at first; a new one gets a number nobody had.
 */
export function takenOver(
  work: { readonly base: Sheet; readonly changes: DraftChanges },
  { list, item, was, is, after }: ItemDifference,
  taken: Iterable<string>,
): TakenOver {
  const to = after ?? null;
  if (list !== "cases" && list !== "nextLooks") return { item, to };
  const names = [...itemsIn(work, list).keys()];
  if (is === "added") return { item: freshNumber([...names, ...taken]), to };
  const stood = is === "changed" ? (was ?? item) : item;
  return { item: names[Number(stood.slice(1))] ?? stood, to };
}
