/** A check sheet under work: what it holds, and what stands against it. */
import { DRAFT_LISTS } from "../../core/sheet/work.js";
import { ListRow } from "../parts/list-row.js";
import { type ParamsOf, to } from "../state/routes.js";
import { textsIn } from "../state/sheet-items-view.js";
import { itemsIn, type SheetWork } from "../state/sheet-work.js";
import { t } from "../texts/sheet-work.js";
import { Plain } from "./frame.js";
import { OnSheetWork } from "./on-sheet-work.js";

function Overview({ sheet, work }: { readonly sheet: string; readonly work: SheetWork }) {
  return (
    <Plain back={t("sheet-work.back")} href={to("sheet", { sheet })} title={textsIn(work.sheet)?.title ?? sheet}>
      {DRAFT_LISTS.map((list) => {
        const faults = work.told.filter(({ is, about }) => is === "problem" && about?.list === list).length;
        return (
          <ListRow
            key={list}
            title={t(`sheet-list.${list}`)}
            second={faults > 0 ? t("sheet-work.problems", { n: faults }) : undefined}
            aside={list === "head" ? undefined : String(itemsIn(work, list).size)}
            href={list === "head" ? to("sheet-item", { sheet, list, item: list }) : to("sheet-list", { sheet, list })}
          />
        );
      })}
    </Plain>
  );
}

export const SheetWorkScreen = ({ params: { sheet } }: { readonly params: ParamsOf<"sheet-work"> }) => (
  <OnSheetWork sheet={sheet}>{(work) => <Overview {...{ sheet, work }} />}</OnSheetWork>
);
