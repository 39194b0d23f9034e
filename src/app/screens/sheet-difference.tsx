/** What differs: the working copy from the edition it was begun from, one's own edition from the one of the app. */
import type { Sheet } from "../../core/sheet/run.js";
import { NextAction, Tool } from "../parts/button.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { type App, useApp } from "../state/app.js";
import type { FrozenSheetFile } from "../state/frozen.js";
import { keepSheet } from "../state/house-acts.js";
import { type ParamsOf, to } from "../state/routes.js";
import { beginChange } from "../state/sheet-begin.js";
import { type DifferenceLine, differenceView } from "../state/sheet-difference-view.js";
import { takenOver } from "../state/sheet-take-over.js";
import { takenIn } from "../state/sheet-taken.js";
import { draftOf, type SheetWork, wholeSheet } from "../state/sheet-work.js";
import { putItem } from "../state/sheet-work-acts.js";
import { isNewer } from "../state/sheets-at-hand.js";
import { listedFile } from "../state/shelf.js";
import { t } from "../texts/sheet-work.js";
import { MissingScreen, Plain } from "./frame.js";
import { OpeningScreen } from "./lazy.js";
import { useLoaded } from "./use-loaded.js";
import { useSheetWork } from "./use-sheet-work.js";
import { useSheetsAtHand } from "./use-sheets.js";

function Differences({
  before,
  after,
  onTake,
}: {
  readonly before: Sheet;
  readonly after: Sheet;
  readonly onTake?: (line: DifferenceLine) => void;
}) {
  const { lines, reordered } = differenceView(before, after);
  if (lines.length === 0 && reordered.length === 0) return <p class="remark">{t("sheet-difference.none")}</p>;
  return (
    <>
      {reordered.length > 0 && (
        <p class="remark">
          {t("sheet-difference.order", { lists: reordered.map((list) => t(`sheet-list.${list}`)).join(", ") })}
        </p>
      )}
      {lines.map((line) => (
        <section class="difference" key={`${line.difference.list} ${line.difference.item} ${line.difference.is}`}>
          <h3>
            <span class="small">{t(`sheet-list.${line.difference.list}`)}</span> {line.title}
          </h3>
          <ul class="reading">
            {line.parts.map((part) => (
              <li key={part}>{part}</li>
            ))}
          </ul>
          {onTake && (
            <button
              type="button"
              class="tool plain"
              aria-label={t("sheet-difference.take.of", { title: line.title })}
              onClick={() => onTake(line)}
            >
              {t("sheet-difference.take")}
            </button>
          )}
        </section>
      ))}
    </>
  );
}

/** The app's own edition of a sheet, with its cases; undefined where the app has none. */
async function builtIn({ shelf, sheetTools }: App, id: string): Promise<FrozenSheetFile | undefined> {
  const listed = shelf.sheets.find((one) => one.id === id);
  return listed && { ...(await listedFile(listed)), cases: await (await sheetTools()).casesOf(id) };
}

interface AgainstApp {
  readonly work: SheetWork | undefined;
  readonly own: FrozenSheetFile | undefined;
  readonly app: FrozenSheetFile;
}

function AgainstBuiltIn({ work, own, app: theirs }: AgainstApp) {
  const app = useApp();
  const { journal, phone, shelf } = app;
  const mine = work?.sheet ?? (own && wholeSheet(own));
  if (!mine) return null;
  const house = journal.house().value;
  const take = ({ difference }: DifferenceLine): void => {
    if (!work || house.is !== "open") return;
    const { item, to: now } = takenOver(work, difference, takenIn(house.state, difference.list));
    void putItem(journal, work.draft, difference.list, item, now);
  };
  return (
    <Band heading={t("sheet-difference.built-in")}>
      {own && isNewer(shelf, own) && <Notice kind="plain" title={t("sheet-difference.newer")} />}
      <p class="remark">{t("sheet-difference.built-in.says")}</p>
      <Differences before={mine} after={wholeSheet(theirs)} {...(work ? { onTake: take } : {})} />
      <div class="acts">
        {!work && own && (
          <NextAction words={t("sheet-difference.begin")} onPress={() => void beginChange(app, true, own)} />
        )}
        {own && isNewer(shelf, own) && (
          <Tool
            words={t("sheet-difference.seen")}
            says={t("sheet-difference.seen.says")}
            onPress={() => void keepSheet(journal, phone, { ...own, begunFrom: theirs.edition })}
          />
        )}
      </div>
    </Band>
  );
}

export function SheetDifference({ params: { sheet } }: { readonly params: ParamsOf<"sheet-difference"> }) {
  const app = useApp();
  const house = app.journal.house().value;
  const work = useSheetWork(sheet);
  const atHand = useSheetsAtHand().find(({ id }) => id === sheet);
  const ownBlob = house.is === "open" ? house.state.sheets.get(sheet)?.at(-1)?.value.blob : undefined;
  const own = useLoaded(async () => (atHand?.own ? await atHand.file() : undefined), `own ${ownBlob ?? ""}`);
  const theirs = useLoaded(async () => ({ file: await builtIn(app, sheet) }), sheet);
  const isWorked = house.is === "open" && draftOf(house.state, sheet) !== undefined;
  if (house.is === "opening" || !theirs || (isWorked && !work)) return <OpeningScreen />;
  const ownFile = own?.ok ? own.value : undefined;
  if (!work && !ownFile) return atHand?.own && !own ? <OpeningScreen /> : <MissingScreen />;
  return (
    <Plain back={t("sheet-work.back")} href={to("sheet", { sheet })} title={t("sheet-difference.title")}>
      {work && (
        <Band heading={t("sheet-difference.since")}>
          <Differences before={work.base} after={work.sheet} />
        </Band>
      )}
      {theirs.file && (ownFile || work?.begunFrom !== theirs.file.edition) && (
        <AgainstBuiltIn {...{ work }} own={ownFile} app={theirs.file} />
      )}
    </Plain>
  );
}
