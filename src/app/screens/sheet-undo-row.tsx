/** The row that takes back what was done last to a sheet under work. */
import { ListRow } from "../parts/list-row.js";
import { useApp } from "../state/app.js";
import { workUndo } from "../state/sheet-undo.js";
import { undoWork } from "../state/sheet-work-acts.js";
import { t } from "../texts/sheet-work.js";

export function SheetUndoRow({ isMine }: { readonly isMine: (draft: string) => boolean }) {
  const { journal } = useApp();
  const house = journal.house().value;
  const last = house.is === "open" ? workUndo(house.state, journal.writer.value, isMine) : undefined;
  if (!last) return null;
  return <ListRow folded title={last.says} aside={t("sheet-undo")} onPress={() => void undoWork(journal, last.step)} />;
}
