/** The row that takes back what was done last to a sheet under work. */
import { draftItems, NO_CHANGES } from "../../core/sheet/work.js";
import { ListRow } from "../parts/list-row.js";
import { useApp } from "../state/app.js";
import { itemTitle } from "../state/sheet-items-view.js";
import { type Called, workUndo } from "../state/sheet-undo.js";
import type { SheetWork } from "../state/sheet-work.js";
import { undoWork } from "../state/sheet-work-acts.js";
import { t } from "../texts/sheet-work.js";

interface UndoProps {
  readonly isMine: (draft: string) => boolean;
  /** The working copy shown, which knows what its items are called. */
  readonly work?: SheetWork;
}

/** An item taken out is in the base still, where it was there at first. */
const calledIn =
  (work: SheetWork): Called =>
  (list, item, to) => {
    const is = to ?? draftItems(work.base, NO_CHANGES, list).get(item);
    return is && itemTitle(work, list, is);
  };

export function SheetUndoRow({ isMine, work }: UndoProps) {
  const { journal } = useApp();
  const house = journal.house().value;
  const last =
    house.is === "open" ? workUndo(house.state, journal.writer.value, isMine, work && calledIn(work)) : undefined;
  if (!last) return null;
  return <ListRow folded title={last.says} aside={t("sheet-undo")} onPress={() => void undoWork(journal, last.step)} />;
}
