/** What every form of a sheet's item is given. Types only. */
import type { DraftItem, DraftList } from "../../core/sheet/work.js";
import type { ItemTold, SheetWork } from "../state/sheet-work.js";

export interface ItemFormProps {
  readonly work: SheetWork;
  readonly list: DraftList;
  readonly item: string;
  readonly is: DraftItem;
  /** What was told of this item; a field shows those whose `about.inside` begins with its path. */
  readonly told: readonly ItemTold[];
  /** Keeps the item as it is from now on: when a field is left or a choice pressed. */
  readonly put: (to: DraftItem) => void;
}
