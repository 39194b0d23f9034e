/** One item of a sheet under work, in the form of its list. Each form is fetched when it is first opened. */
import type { ComponentType } from "preact";
import { DRAFT_LISTS, type DraftItem, type DraftList } from "../../core/sheet/work.js";
import { useApp } from "../state/app.js";
import { type ParamsOf, to } from "../state/routes.js";
import { itemTitle } from "../state/sheet-items-view.js";
import { itemsIn, type SheetWork, toldOf } from "../state/sheet-work.js";
import { putItem } from "../state/sheet-work-acts.js";
import { t } from "../texts/sheet-work.js";
import { MissingScreen, Plain } from "./frame.js";
import type { ItemFormProps } from "./item-form.js";
import { lazy, Nothing } from "./lazy.js";
import { OnSheetWork } from "./on-sheet-work.js";

const brought = lazy(() => import("./item-brought.js").then((file) => file.ItemBrought), Nothing);
const words = lazy(() => import("./item-plain.js").then((file) => file.ItemWords), Nothing);
/** The form of each list; lists alike share one. */
const FORMS: { readonly [List in DraftList]?: ComponentType<ItemFormProps> } = {
  head: lazy(() => import("./item-plain.js").then((file) => file.ItemHead), Nothing),
  points: lazy(() => import("./item-point.js").then((file) => file.ItemPoint), Nothing),
  limits: lazy(() => import("./item-limit.js").then((file) => file.ItemLimit), Nothing),
  derived: lazy(() => import("./item-derived.js").then((file) => file.ItemDerived), Nothing),
  jobs: lazy(() => import("./item-job.js").then((file) => file.ItemJob), Nothing),
  gates: lazy(() => import("./item-gate.js").then((file) => file.ItemGate), Nothing),
  nextLooks: lazy(() => import("./item-plain.js").then((file) => file.ItemNextLook), Nothing),
  rules: lazy(() => import("./item-rule.js").then((file) => file.ItemRule), Nothing),
  cases: lazy(() => import("./item-case.js").then((file) => file.ItemCase), Nothing),
  faults: words,
  parts: words,
  notes: words,
  places: brought,
  states: brought,
  gauges: brought,
  aids: brought,
  cautions: brought,
  access: brought,
  facts: brought,
};

function Item({ sheet, work, list, item }: { readonly sheet: string } & Pick<ItemFormProps, "work" | "list" | "item">) {
  const { journal } = useApp();
  const is = itemsIn(work, list).get(item);
  if (!is) return <MissingScreen />;
  const Form = FORMS[list];
  const told = toldOf(work, list, item);
  const put = (next: DraftItem): void => void putItem(journal, work.draft, list, item, next);
  const listed = list === "head" ? to("sheet-work", { sheet }) : to("sheet-list", { sheet, list });
  const back = list === "head" ? t("sheet-work.title") : t(`sheet-list.${list}`);
  return (
    <Plain back={back} href={listed} title={itemTitle(work, list, is)} {...secondOf(work)}>
      {work.inTheWay && <p class="remark">{t("sheet-work.in-the-way")}</p>}
      {told
        .filter(({ about }) => (about?.inside.length ?? 0) === 0)
        .map(({ says }) => (
          <p class="problem" key={says}>
            {says}
          </p>
        ))}
      {Form ? (
        <Form key={item} {...{ work, list, item, is, told, put }} />
      ) : (
        <p class="remark">{t("sheet-item.no-form")}</p>
      )}
    </Plain>
  );
}

const secondOf = ({ checked }: SheetWork) => (checked === "yet" ? { second: t("sheet-work.checking") } : {});

export function SheetItem({ params: { sheet, list, item } }: { readonly params: ParamsOf<"sheet-item"> }) {
  const known = DRAFT_LISTS.find((one): one is DraftList => one === list);
  if (known === undefined) return <MissingScreen />;
  return (
    <OnSheetWork sheet={sheet}>{(work) => <Item key={item} {...{ sheet, work, item }} list={known} />}</OnSheetWork>
  );
}
