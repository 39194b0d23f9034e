/** A check sheet under work: every list of it, what stands against it, and what can be done with it next. */
import { useState } from "preact/hooks";
import type { DraftList } from "../../core/sheet/work.js";
import { NextAction, Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { type ParamsOf, to } from "../state/routes.js";
import { textsIn } from "../state/sheet-items-view.js";
import { itemsIn, type SheetWork } from "../state/sheet-work.js";
import { dropWork } from "../state/sheet-work-acts.js";
import { t } from "../texts/sheet-work.js";
import { Plain } from "./frame.js";
import { lazy, Nothing } from "./lazy.js";
import { OnSheetWork } from "./on-sheet-work.js";
import { SheetUndoRow } from "./sheet-undo-row.js";

const SheetEdition = lazy(() => import("./sheet-edition.js").then((file) => file.SheetEdition), Nothing);

interface OfWork {
  readonly sheet: string;
  readonly work: SheetWork;
}

const HOLDS = ["points", "limits", "derived", "rules", "faults", "jobs", "parts", "gates", "nextLooks"] as const;
const ALSO = ["cases", "notes"] as const;
const BRINGS = ["places", "states", "gauges", "aids", "cautions", "access", "facts"] as const;

function ListLine({ sheet, work, list }: OfWork & { readonly list: DraftList }) {
  const faults = work.told.filter(({ is, about }) => is === "problem" && about?.list === list).length;
  return (
    <ListRow
      title={t(`sheet-list.${list}`)}
      second={faults > 0 ? t("sheet-work.problems", { n: faults }) : undefined}
      aside={list === "head" ? undefined : String(itemsIn(work, list).size)}
      href={list === "head" ? to("sheet-item", { sheet, list, item: list }) : to("sheet-list", { sheet, list })}
    />
  );
}

function Dropping({ sheet, work, onClose }: OfWork & { readonly onClose: () => void }) {
  const { journal, router } = useApp();
  const drop = (): void => {
    onClose();
    const hence = router.fromHere();
    void dropWork(journal, work.draft).then((kept) => kept && hence.up(to("sheet", { sheet })));
  };
  return (
    <Sheet
      open
      title={t("sheet-work.drop")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("sheet-work.drop.do")} onPress={drop} />}
    >
      <p>{t("sheet-work.drop.says")}</p>
    </Sheet>
  );
}

function Overview({ sheet, work }: OfWork) {
  const [isDropping, setDropping] = useState(false);
  const whole = work.told.filter(({ is, about }) => is === "problem" && about === undefined);
  const problems = work.told.filter(({ is }) => is === "problem").length;
  const stands = problems > 0 ? t("sheet-work.problems", { n: problems }) : t("sheet-work.sound");
  return (
    <Plain
      back={t("sheet-work.back")}
      href={to("sheet", { sheet })}
      title={textsIn(work.sheet)?.title || sheet}
      second={work.checked === "yet" ? t("sheet-work.checking") : stands}
    >
      {work.inTheWay && <p class="remark">{t("sheet-work.in-the-way")}</p>}
      <ListLine {...{ sheet, work }} list="head" />
      {whole.map(({ says }) => (
        <p class="problem" key={says}>
          {says}
        </p>
      ))}
      <Band heading={t("sheet-work.holds")}>
        {[...HOLDS, ...ALSO].map((list) => (
          <ListLine key={list} {...{ sheet, work, list }} />
        ))}
      </Band>
      <Band heading={t("sheet-work.brings")}>
        {BRINGS.map((list) => (
          <ListLine key={list} {...{ sheet, work, list }} />
        ))}
      </Band>
      <SheetEdition {...{ sheet, work }} />
      <SheetUndoRow isMine={(draft) => draft === work.draft} work={work} />
      <div class="acts">
        <Tool words={t("sheet-work.drop")} onPress={() => setDropping(true)} />
      </div>
      {isDropping && <Dropping {...{ sheet, work }} onClose={() => setDropping(false)} />}
    </Plain>
  );
}

export const SheetWorkScreen = ({ params: { sheet } }: { readonly params: ParamsOf<"sheet-work"> }) => (
  <OnSheetWork sheet={sheet}>{(work) => <Overview {...{ sheet, work }} />}</OnSheetWork>
);
