/** The parsers and checkers of check sheets as the screens use them. Loaded only when a sheet is read in or worked on. */
import { casesOf } from "virtual:leadlamp/cases";
import type { SheetTools } from "../state/sheet-tools.js";
import { checkWork } from "./check-work.js";
import { ruleTools } from "./rule-tools.js";
import { readSheetFile, sheetProblem } from "./sheet-file.js";
import { writeSheet } from "./write-sheet.js";

export const sheetTools: SheetTools = {
  readSheet: async (...picked) => {
    const read = await readSheetFile(...picked);
    return read.ok
      ? { ok: true, file: read.value.file, notes: read.value.notes.map(sheetProblem) }
      : { ok: false, faults: read.problems.map(sheetProblem) };
  },
  checkWork,
  ...ruleTools,
  writeSheet,
  casesOf: async (sheet) => (await casesOf[sheet]?.()) ?? [],
};
