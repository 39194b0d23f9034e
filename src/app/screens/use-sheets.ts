/** Every sheet at hand as a file, for the screens of a car. A sheet that can't be read is left out and told. */
import type { Problem } from "../../core/terms/index.js";
import { useApp } from "../state/app.js";
import type { FrozenSheetFile } from "../state/frozen.js";
import { type SheetAtHand, sheetsAtHand } from "../state/sheets-at-hand.js";
import { useLoaded } from "./use-loaded.js";

export interface SheetsRead {
  readonly sheets: readonly SheetAtHand[];
  readonly files: readonly FrozenSheetFile[];
  readonly problems: readonly Problem[];
}

/** The sheets at hand, without reading them. */
export function useSheetsAtHand(): readonly SheetAtHand[] {
  const { shelf, journal, store } = useApp();
  const house = journal.house().value;
  return sheetsAtHand(shelf, house.is === "open" ? house.state : undefined, store);
}

export function useSheetFiles(): SheetsRead | undefined {
  const sheets = useSheetsAtHand();
  const key = sheets.map((sheet) => sheet.edition).join(" ");
  return useLoaded(async () => {
    const read = await Promise.all(sheets.map((sheet) => sheet.file()));
    return {
      sheets,
      files: read.flatMap((one) => (one.ok ? [one.value] : [])),
      problems: read.flatMap((one) => (one.ok ? [] : one.problems)),
    };
  }, key);
}
