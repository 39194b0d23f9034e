/** What comes after changing a sheet: try it, see what it lacks, hold it against the edition before. */
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { to } from "../state/routes.js";
import type { SheetWork } from "../state/sheet-work.js";
import { t } from "../texts/sheet-work.js";

export function SheetEdition({ sheet }: { readonly sheet: string; readonly work: SheetWork }) {
  return (
    <Band heading={t("sheet-edition")}>
      <ListRow title={t("sheet-edition.try")} second={t("sheet-edition.try.says")} href={to("sheet-try", { sheet })} />
      <ListRow
        title={t("sheet-edition.difference")}
        second={t("sheet-edition.difference.says")}
        href={to("sheet-difference", { sheet })}
      />
    </Band>
  );
}
