/** One list of a sheet under work: its items in order, what stands against each, and what can be done with them. */
import { DRAFT_LISTS, type DraftList } from "../../core/sheet/work.js";
import { ListRow } from "../parts/list-row.js";
import { type ParamsOf, to } from "../state/routes.js";
import { itemTitle } from "../state/sheet-items-view.js";
import { itemsIn, type SheetWork, toldOf } from "../state/sheet-work.js";
import { t } from "../texts/sheet-work.js";
import { MissingScreen, Plain } from "./frame.js";
import { OnSheetWork } from "./on-sheet-work.js";

function Items({ sheet, work, list }: { readonly sheet: string; readonly work: SheetWork; readonly list: DraftList }) {
  return (
    <Plain back={t("sheet-work.title")} href={to("sheet-work", { sheet })} title={t(`sheet-list.${list}`)}>
      {[...itemsIn(work, list)].map(([item, is]) => (
        <ListRow
          key={item}
          title={itemTitle(work, list, is)}
          second={toldOf(work, list, item)[0]?.says}
          href={to("sheet-item", { sheet, list, item })}
        />
      ))}
    </Plain>
  );
}

export function SheetList({ params: { sheet, list } }: { readonly params: ParamsOf<"sheet-list"> }) {
  const known = DRAFT_LISTS.find((one): one is DraftList => one === list);
  if (known === undefined) return <MissingScreen />;
  return <OnSheetWork sheet={sheet}>{(work) => <Items {...{ sheet, work }} list={known} />}</OnSheetWork>;
}
