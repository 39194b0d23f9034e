/** One more check sheet for a visit under way: frozen into it as the others were. */
import { ListRow } from "../parts/list-row.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import type { SheetAtHand } from "../state/sheets-at-hand.js";
import { addSheet } from "../state/visit-acts.js";
import { t } from "../texts/index.js";
import type { OnDesk } from "./on-visit.js";
import { useSheetsAtHand } from "./use-sheets.js";

/** The sheets at hand that this visit was not opened with. */
export function useMoreSheets(on: OnDesk): readonly SheetAtHand[] {
  return useSheetsAtHand().filter((sheet) => !on.visit.sheets.some(({ id }) => id === sheet.id));
}

interface AddSheetProps {
  readonly on: OnDesk;
  readonly sheets: readonly SheetAtHand[];
  readonly open: boolean;
  readonly onClose: () => void;
}

export function AddSheet({ on, sheets, open, onClose }: AddSheetProps) {
  const { journal, phone } = useApp();
  const add = async (sheet: SheetAtHand): Promise<void> => {
    onClose();
    const read = await sheet.file();
    if (read.ok) await addSheet(journal, on.stream, read.value, phone.hash);
  };
  return (
    <Sheet open={open} title={t("visit.add-sheet")} closeWords={t("app.close")} onClose={onClose}>
      {sheets.map((sheet) => (
        <ListRow key={sheet.id} title={sheet.title} onPress={() => void add(sheet)} />
      ))}
    </Sheet>
  );
}
