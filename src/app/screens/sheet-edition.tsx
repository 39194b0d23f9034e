/** What comes after changing a sheet: try it, hold it against the edition before, keep it, hand it on. */
import { useState } from "preact/hooks";
import type { Handed } from "../../core/record/files.js";
import { Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { to } from "../state/routes.js";
import { textsIn } from "../state/sheet-items-view.js";
import type { SheetWork } from "../state/sheet-work.js";
import { t } from "../texts/sheet-work.js";
import { SheetKeeping } from "./sheet-keeping.js";
import { useLoaded } from "./use-loaded.js";

interface OfWork {
  readonly sheet: string;
  readonly work: SheetWork;
}
/** Characters of an edition shown. */
const EDITION_SHOWN = 12;

const TYPES = { yaml: "application/yaml", json: "application/json" } as const;

/** The files are made before the tap: a share sheet opens only at once. */
function HandingOn({ sheet, work }: OfWork) {
  const { files, sheetTools } = useApp();
  const [handed, setHanded] = useState<Handed>();
  const write = useLoaded(async () => (await sheetTools()).writeSheet, "write");
  const hand = (as: keyof typeof TYPES): void => {
    if (!write) return;
    const name = `${(textsIn(work.sheet)?.title || sheet).replace(/[^\p{L}\p{N} -]+/gu, "-")}.${as}`;
    const bytes = new TextEncoder().encode(write(work.sheet, as));
    void files.ready({ name, type: TYPES[as], bytes }).hand().then(setHanded);
  };
  return (
    <>
      <p class="remark">{t("sheet-edition.file.says")}</p>
      <div class="acts">
        <Tool words={t("sheet-edition.yaml")} disabled={!write} onPress={() => hand("yaml")} />
        <Tool words={t("sheet-edition.json")} disabled={!write} onPress={() => hand("json")} />
      </div>
      <p class="small" role="status">
        {handed && t(`sheet-edition.handed.${handed}`)}
      </p>
    </>
  );
}

/** Editions of this sheet that were kept, the newest first, and the one the work was begun from. */
function LastEditions({ sheet }: Pick<OfWork, "sheet">) {
  const house = useApp().journal.house().value;
  const kept = house.is === "open" ? (house.state.sheets.get(sheet)?.at(-1)?.value.edition ?? "") : "";
  const says =
    kept === "" ? t("sheet-edition.none") : t("sheet-edition.nth", { edition: kept.slice(0, EDITION_SHOWN) });
  return <ListRow folded title={t("sheet-edition.last")} aside={says} />;
}

export function SheetEdition({ sheet, work }: OfWork) {
  return (
    <>
      <Band heading={t("sheet-edition")}>
        <ListRow
          title={t("sheet-edition.try")}
          second={t("sheet-edition.try.says")}
          href={to("sheet-try", { sheet })}
        />
        <ListRow
          title={t("sheet-edition.difference")}
          second={t("sheet-edition.difference.says")}
          href={to("sheet-difference", { sheet })}
        />
        <LastEditions sheet={sheet} />
        <SheetKeeping {...{ sheet, work }} />
      </Band>
      <Band heading={t("sheet-edition.hand")}>
        <HandingOn {...{ sheet, work }} />
      </Band>
    </>
  );
}
