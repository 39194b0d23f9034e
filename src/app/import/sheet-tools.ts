/**
 * The parsers and checkers of check sheets as the screens use them. Loaded only when a sheet is read in or worked on; what
 * takes long is asked of a worker.
 */
import { casesOf } from "virtual:leadlamp/cases";
import type { ProvingGround, ReadyToTry, SheetTools } from "../state/sheet-tools.js";
import { startWorker } from "../trusted.js";
import { madeOnce } from "./made-once.js";
import { ruleTools } from "./rule-tools.js";
import { sheetsBeside } from "./sheet-beside.js";
import address from "./sheet-worker.js?worker&url";
import { writeSheet } from "./write-sheet.js";

const beside = sheetsBeside(
  () => startWorker(address),
  async () => (await import("./sheet-answers.js")).sheetAnswering(),
);

/** Planned beside the page, linked on it: what is tried is judged at every reply, as a visit is. */
const engineOf = madeOnce(async (ground: ProvingGround): Promise<ReadyToTry | undefined> => {
  const [came, { ready }] = await Promise.all([beside.ask({ do: "plan" }, ground), import("../state/judging.js")]);
  if (!came?.plan) return undefined;
  return { engine: await ready(came.plan), sheets: came.plan.sheets.map(({ sheet: { id } }) => id) };
});

export const sheetTools: SheetTools = {
  readSheet: async (...picked) => {
    const { readSheetFile, sheetProblem } = await import("./sheet-file.js");
    const read = await readSheetFile(...picked);
    return read.ok
      ? { ok: true, file: read.value.file, notes: read.value.notes.map(sheetProblem) }
      : { ok: false, faults: read.problems.map(sheetProblem) };
  },
  stay: beside.stay,
  checkWork: async (ground) => {
    const came = await beside.ask({ do: "check" }, ground);
    return came?.check && { ...came.check, ...(beside.isInTheWay ? { inTheWay: true } : {}) };
  },
  engineOf,
  proveCases: async (ground, cases) => (await beside.ask({ do: "prove", cases }, ground))?.prove,
  ...ruleTools,
  writeSheet,
  casesOf: async (sheet) => (await casesOf[sheet]?.()) ?? [],
};
