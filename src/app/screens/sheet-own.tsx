/** What can be done with a sheet at hand beyond reading it: change it, copy it, take one's own out. Fetched beside it. */
import { useState } from "preact/hooks";
import { NextAction, Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import type { FrozenSheetFile } from "../state/frozen.js";
import { dropSheet } from "../state/house-acts.js";
import type { Moves } from "../state/router.js";
import { to } from "../state/routes.js";
import { beginChange, beginCopy } from "../state/sheet-begin.js";
import { draftOf, draftsOf } from "../state/sheet-work.js";
import { isNewer, type SheetAtHand } from "../state/sheets-at-hand.js";
import { t } from "../texts/sheet-work.js";
import { MissingScreen, Plain } from "./frame.js";
import { AskName } from "./sheet-name.js";
import { SheetUndoRow } from "./sheet-undo-row.js";
import { useSheetsAtHand } from "./use-sheets.js";

/** Characters of an edition shown. */
const EDITION_SHOWN = 12;

function useDraft(sheet: string) {
  const house = useApp().journal.house().value;
  return house.is === "open" ? draftOf(house.state, sheet) : undefined;
}

/** A working copy that was thrown away last can be taken back wherever sheets are listed. */
function useThrownAway() {
  const house = useApp().journal.house().value;
  return (draft: string): boolean => house.is === "open" && !house.state.drafts.has(draft);
}

export function SheetOwn({ sheet, file }: { readonly sheet: SheetAtHand; readonly file: FrozenSheetFile }) {
  const app = useApp();
  const { journal, router } = app;
  const atHand = useSheetsAtHand();
  const draft = useDraft(sheet.id);
  const isThrownAway = useThrownAway();
  const [isCopying, setCopying] = useState(false);
  const [busy, setBusy] = useState(false);
  const begun = (hence: Moves, id: string | undefined): void => {
    setBusy(false);
    if (id !== undefined) hence.go(to("sheet-work", { sheet: id }));
  };
  const change = (): void => {
    setBusy(true);
    const hence = router.fromHere();
    void beginChange(app, sheet.own, file).then((kept) => begun(hence, kept ? sheet.id : undefined));
  };
  const copy = (title: string): void => {
    setCopying(false);
    setBusy(true);
    const hence = router.fromHere();
    void beginCopy(app, sheet.own, file, title, atHand).then((id) => begun(hence, id));
  };
  const drop = (): void => {
    const hence = router.fromHere();
    void dropSheet(journal, sheet.id).then((kept) => kept && hence.up(to("sheets")));
  };
  const hasBuiltIn = sheet.own && app.shelf.sheets.some(({ id }) => id === sheet.id);
  return (
    <>
      {isNewer(app.shelf, file) && (
        <Notice kind="plain" title={t("sheet-difference.newer")} says={t("sheet-difference.newer.says")} />
      )}
      {hasBuiltIn && (
        <ListRow title={t("sheet-difference.compare")} href={to("sheet-difference", { sheet: sheet.id })} />
      )}
      <SheetUndoRow isMine={isThrownAway} />
      {draft ? (
        <ListRow
          title={t("sheet-work.open")}
          second={t("sheet-work.open.says", { edition: draft.base.edition.slice(0, EDITION_SHOWN) })}
          href={to("sheet-work", { sheet: sheet.id })}
        />
      ) : (
        <p class="remark">{t(sheet.own ? "sheet-work.change.own" : "sheet-work.change.built-in")}</p>
      )}
      <div class="acts">
        {!draft && <NextAction words={t("sheet-work.change")} disabled={busy} onPress={change} />}
        <Tool words={t("sheet-work.copy")} disabled={busy} onPress={() => setCopying(true)} />
        {sheet.own && <Tool words={t("sheet-work.remove")} onPress={drop} />}
      </div>
      {isCopying && <AskName title={t("sheet-work.copy")} name="" onKeep={copy} onClose={() => setCopying(false)} />}
    </>
  );
}

/** A sheet that has no edition yet: its working copy, or nothing. */
export function NotYet({ sheet }: { readonly sheet: string }) {
  const draft = useDraft(sheet);
  if (!draft) return <MissingScreen />;
  return (
    <Plain back={t("sheet-work.sheets")} href={to("sheets")} title={draft.base.label} second={t("sheet-work.none-yet")}>
      <ListRow title={t("sheet-work.open")} href={to("sheet-work", { sheet })} />
    </Plain>
  );
}

/** Among the sheets: those under work that have no edition yet, and a new one. */
export function SheetDrafts({ atHand }: { readonly atHand: readonly SheetAtHand[] }) {
  const house = useApp().journal.house().value;
  const isThrownAway = useThrownAway();
  const drafts = house.is === "open" ? draftsOf(house.state) : [];
  return (
    <Band heading={t("sheet-work.under-work")}>
      {drafts.map(({ draft, base }) => (
        <ListRow
          key={draft}
          title={base.label}
          second={t(atHand.some(({ id }) => id === base.id) ? "sheet-work.title" : "sheet-work.none-yet")}
          href={to("sheet-work", { sheet: base.id })}
        />
      ))}
      <SheetUndoRow isMine={isThrownAway} />
      <div class="acts">
        <Tool words={t("sheet-work.new")} href={to("new-sheet")} />
      </div>
    </Band>
  );
}
