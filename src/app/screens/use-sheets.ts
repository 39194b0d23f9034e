/** Every sheet at hand as a file, for the screens of a car. A sheet that can't be read is left out and told. */
import { useApp } from "../state/app.js";
import { readSheets, type SheetAtHand, type SheetsRead, sheetsAtHand } from "../state/sheets-at-hand.js";
import { useLoaded } from "./use-loaded.js";

/** The sheets at hand, without reading them. */
export function useSheetsAtHand(): readonly SheetAtHand[] {
  const { shelf, journal, store } = useApp();
  const house = journal.houseSaid.value ? journal.house().value : undefined;
  return sheetsAtHand(shelf, house?.is === "open" ? house.state : undefined, store);
}

export function useSheetFiles(): SheetsRead | undefined {
  const sheets = useSheetsAtHand();
  const key = sheets.map((sheet) => sheet.edition).join(" ");
  return useLoaded(() => readSheets(sheets), key);
}
