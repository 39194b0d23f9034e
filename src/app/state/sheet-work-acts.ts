/** Keeping what is done to a check sheet under work: an item as it is from now on, the order of a list. */
import { draftSheetItem, draftSheetOrder } from "../../core/record/index.js";
import type { DraftItem, DraftList } from "../../core/sheet/work.js";
import type { Journal } from "./journal.js";

/** One item as it is from now on; null takes it out of the sheet. */
export function putItem(
  journal: Journal,
  draft: string,
  list: DraftList,
  item: string,
  to: DraftItem | null,
): Promise<boolean> {
  const kept = journal.keptHouse();
  return journal.keep("an-entry", (act) => {
    const house = kept.peek();
    return { drafts: house.is === "open" ? [draftSheetItem(act, house.state, { draft, list, item }, to)] : [] };
  });
}

/** The order the items of a list are wanted in. */
export function orderItems(
  journal: Journal,
  draft: string,
  list: DraftList,
  order: readonly string[],
): Promise<boolean> {
  const kept = journal.keptHouse();
  return journal.keep("an-entry", (act) => {
    const house = kept.peek();
    return { drafts: house.is === "open" ? [draftSheetOrder(act, house.state, { draft, list }, order)] : [] };
  });
}
