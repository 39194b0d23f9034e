/**
 * The working copy of a sheet for the screens that change it: laid out of the record at every change, checked a moment
 * after the last one. What was laid and checked stays there from screen to screen.
 */
import { signal } from "@preact/signals";
import { useEffect, useMemo, useState } from "preact/hooks";
import type { HouseState } from "../../core/record/index.js";
import { type App, useApp } from "../state/app.js";
import { readFrozen } from "../state/frozen.js";
import { checkNext, lastChecked } from "../state/sheet-checking.js";
import { draftOf, layWork, type SheetWork, type WorkGround, wholeSheet, withTold } from "../state/sheet-work.js";
import { readSheets, type SheetAtHand } from "../state/sheets-at-hand.js";
import { commonFile } from "../state/shelf.js";
import { useSheetsAtHand } from "./use-sheets.js";

/** So long after the last change the sheet is checked. */
const CHECKED_AFTER_MS = 400;

/** Fetched on one screen, it is there on the next. */
const ground = signal<{ readonly key: string; readonly is: WorkGround } | undefined>(undefined);
let laid: { readonly house: HouseState; readonly on: WorkGround; readonly work: SheetWork } | undefined;

async function fetchGround(
  { store, shelf }: Pick<App, "store" | "shelf">,
  blob: string,
  atHand: readonly SheetAtHand[],
  isEdition: boolean,
): Promise<WorkGround> {
  const [kept, shared, read] = await Promise.all([store.blob(blob), commonFile(shelf), readSheets(atHand)]);
  const bytes = kept.ok ? kept.value?.bytes : undefined;
  const base = bytes && readFrozen("leadlamp-frozen-sheet/1", bytes);
  if (!base?.ok) throw new Error("The sheet this work was begun from is not on this phone any more");
  return {
    base: wholeSheet(base.value),
    ...(base.value.begunFrom === undefined ? {} : { begunFrom: base.value.begunFrom }),
    texts: shared.texts,
    on: {
      bare: { ...shared.common, texts: {}, cases: [], complaints: [] },
      others: read.files.map((file) => ({ ...wholeSheet(file), cases: [] })),
      ...(isEdition ? { before: wholeSheet(base.value) } : {}),
    },
  };
}

function layOnce(on: WorkGround, house: HouseState, draft: string): SheetWork {
  if (laid?.house !== house || laid.on !== on || laid.work.draft !== draft)
    laid = { house, on, work: layWork(on, house, draft) };
  return laid.work;
}

/** Undefined while it is being read, and where no working copy of this sheet stands. */
export function useSheetWork(sheet: string): SheetWork | undefined {
  const app = useApp();
  const house = app.journal.house().value;
  const atHand = useSheetsAtHand();
  const others = atHand.filter(({ id }) => id !== sheet);
  const found = house.is === "open" ? draftOf(house.state, sheet) : undefined;
  const key = found ? [found.draft, found.base.blob, ...others.map(({ edition }) => edition)].join(" ") : "";
  const [failed, setFailed] = useState<unknown>();
  useEffect(() => {
    if (!found || ground.peek()?.key === key) return;
    fetchGround(app, found.base.blob, others, atHand.length > others.length).then((is) => {
      ground.value = { key, is };
    }, setFailed);
  }, [key]);
  if (failed !== undefined) throw failed;
  const there = ground.value;
  const on = there?.key === key ? there.is : undefined;
  const work = on && found && house.is === "open" ? layOnce(on, house.state, found.draft) : undefined;
  useChecking(app, work, setFailed);
  const last = lastChecked.value;
  return useMemo(
    () => (work && last?.draft === work.draft ? withTold(work, last.outcome, last.sheet !== work.sheet) : work),
    [work, last],
  );
}

function useChecking({ sheetTools }: App, work: SheetWork | undefined, fail: (error: unknown) => void): void {
  useEffect(() => {
    let leave: (() => void) | undefined;
    let left = false;
    void sheetTools().then(({ stay }) => {
      if (!left) leave = stay();
    }, fail);
    return () => {
      left = true;
      leave?.();
    };
  }, []);
  useEffect(() => {
    if (!work) return;
    const timer = setTimeout(() => void checkNext(sheetTools, work).catch(fail), CHECKED_AFTER_MS);
    return () => clearTimeout(timer);
  }, [work?.sheet]);
}
