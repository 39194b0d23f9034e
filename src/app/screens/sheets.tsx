/** The check sheets at hand, and reading in one's own from a file: checked first, faults told with their place. */
import { useEffect, useState } from "preact/hooks";
import { NextAction } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { keepSheet } from "../state/house-acts.js";
import { launchedSheet, takenLaunched } from "../state/launched-sheets.js";
import { to } from "../state/routes.js";
import { isNewer, readSheets, type SheetAtHand } from "../state/sheets-at-hand.js";
import { commonFile, textsOf } from "../state/shelf.js";
import { t } from "../texts/index.js";
import { Plain } from "./frame.js";
import { lazy, Nothing } from "./lazy.js";
import { useSheetFiles, useSheetsAtHand } from "./use-sheets.js";

const SheetDrafts = lazy(() => import("./sheet-own.js").then((file) => file.SheetDrafts), Nothing);

type Outcome =
  | { readonly is: "reading" }
  | { readonly is: "kept"; readonly title: string; readonly notes: readonly string[] }
  | { readonly is: "faulty"; readonly file: string; readonly faults: readonly string[] };

/** So many faults are shown; the first ones usually explain the rest. */
const FAULTS_SHOWN = 20;

function Told({ outcome }: { readonly outcome: Outcome }) {
  if (outcome.is === "reading") return <Notice kind="plain" title={t("sheets.importing")} />;
  if (outcome.is === "kept")
    return (
      <Notice kind="plain" title={t("sheets.import.kept", { title: outcome.title })} says={outcome.notes.join(" ")} />
    );
  return (
    <div role="alert">
      <Notice kind="error" title={t("sheets.import.faults", { n: outcome.faults.length, file: outcome.file })} />
      <ul class="reading faults">
        {outcome.faults.slice(0, FAULTS_SHOWN).map((fault) => (
          <li key={fault}>{fault}</li>
        ))}
      </ul>
    </div>
  );
}

export function Sheets() {
  const { files, sheetTools, shelf, journal, phone } = useApp();
  const [outcome, setOutcome] = useState<Outcome>();
  const sheets = useSheetsAtHand();
  const read = useSheetFiles();
  const newer = new Set((read?.files ?? []).filter((file) => isNewer(shelf, file)).map((file) => file.sheet.id));
  const secondOf = ({ id, own }: SheetAtHand): string =>
    own ? t(newer.has(id) ? "sheets.own.older" : "sheets.own") : t("sheets.built-in");
  const readIn = async (picked: File): Promise<void> => {
    setOutcome({ is: "reading" });
    const { readSheet } = await sheetTools();
    const { files: loaded } = await readSheets(sheets);
    const made = await readSheet(picked.name, await picked.text(), await commonFile(shelf), loaded);
    if (!made.ok) return setOutcome({ is: "faulty", file: picked.name, faults: made.faults });
    const kept = await keepSheet(journal, phone, made.file);
    setOutcome(kept ? { is: "kept", title: textsOf(made.file).title, notes: made.notes } : undefined);
  };
  const pick = async (): Promise<void> => {
    const [picked] = await files.pick({ accept: ".yaml,.yml,.json,application/json" });
    if (picked) await readIn(picked);
  };
  const launched = launchedSheet();
  const isReading = outcome?.is === "reading";
  useEffect(() => {
    if (!launched || isReading) return;
    takenLaunched(launched);
    void readIn(launched);
  }, [launched, isReading]);
  return (
    <Plain back={t("cars.title")} href="#/" title={t("sheets.title")}>
      {sheets.map((sheet) => (
        <ListRow key={sheet.id} title={sheet.title} second={secondOf(sheet)} href={to("sheet", { sheet: sheet.id })} />
      ))}
      <SheetDrafts atHand={sheets} />
      <Band heading={t("sheets.import")}>
        <p class="remark">{t("sheets.import.says")}</p>
        {outcome && <Told outcome={outcome} />}
        <div class="acts">
          <NextAction words={t("sheets.import")} onPress={() => void pick()} disabled={isReading} />
        </div>
      </Band>
    </Plain>
  );
}
