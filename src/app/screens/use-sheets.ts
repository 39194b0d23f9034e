/** Every sheet at hand as a file, for the screens of a car. A sheet that can't be read is left out and told. */
import { useMemo } from "preact/hooks";
import { useApp } from "../state/app.js";
import type { FrozenCommonFile } from "../state/frozen.js";
import {
  readSheets,
  type SheetAtHand,
  type SheetsRead,
  sheetsAtHand,
  wholeCommonFile,
} from "../state/sheets-at-hand.js";
import { commonFile } from "../state/shelf.js";
import { useLoaded } from "./use-loaded.js";

/** The sheets at hand, without reading them. */
export function useSheetsAtHand(): readonly SheetAtHand[] {
  const { shelf, journal, store } = useApp();
  const house = journal.houseSaid.value ? journal.house().value : undefined;
  return sheetsAtHand(shelf, house?.is === "open" ? house.state : undefined, store);
}

/** The shared files with what every sheet at hand brings, for screens that know a car and no visit. */
export function useWholeCommon(): FrozenCommonFile | undefined {
  const { shelf } = useApp();
  const read = useSheetFiles();
  const common = useLoaded(() => commonFile(shelf), "common");
  return useMemo(() => common && read && wholeCommonFile(common, read.files), [common, read]);
}

export function useSheetFiles(): SheetsRead | undefined {
  const sheets = useSheetsAtHand();
  const key = sheets.map((sheet) => sheet.edition).join(" ");
  return useLoaded(() => readSheets(sheets), key);
}
