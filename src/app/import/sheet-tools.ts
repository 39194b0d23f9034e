/**
 * The parsers and checkers of check sheets as the screens use them. Loaded only when a sheet is read in or worked on; what
 * takes long is asked of a worker.
 */
import { casesOf } from "virtual:leadlamp/cases";
import type { CaseRan } from "../../core/assess/cases.js";
import type { Sheet } from "../../core/sheet/run.js";
import type { ProvingGround, ReadyToTry, SheetTools } from "../state/sheet-tools.js";
import { startWorker } from "../trusted.js";
import { ruleTools } from "./rule-tools.js";
import { sheetsBeside } from "./sheet-beside.js";
import address from "./sheet-worker.js?worker&url";
import { writeSheet } from "./write-sheet.js";

const beside = sheetsBeside(
  () => startWorker(address),
  async () => (await import("./sheet-answers.js")).sheetAnswering(),
);

/** Cases proved in one request. */
const AT_ONCE = 25;

const engines = new WeakMap<Sheet, Promise<ReadyToTry | undefined>>();

/** Planned beside the page, linked on it: what is tried is judged at every reply, as a visit is. */
async function makeEngine(ground: ProvingGround): Promise<ReadyToTry | undefined> {
  const [came, { ready }] = await Promise.all([beside.ask({ do: "plan" }, ground), import("../state/judging.js")]);
  if (!came?.plan) {
    engines.delete(ground.sheet);
    return undefined;
  }
  return { engine: await ready(came.plan), sheets: came.plan.sheets.map(({ sheet: { id } }) => id) };
}

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
  engineOf: (ground) => {
    const before = engines.get(ground.sheet);
    if (before) return before;
    const made = makeEngine(ground);
    engines.set(ground.sheet, made);
    // What could not be fetched is tried again when it is asked for next.
    made.catch(() => engines.delete(ground.sheet));
    return made;
  },
  proveCases: async (ground, cases) => {
    const proved: CaseRan[] = [];
    // Piece by piece: the worker of a slow phone is heard from between them, and is not taken for one that was ended.
    for (let from = 0; from < cases.length; from += AT_ONCE) {
      const came = await beside.ask({ do: "prove", cases: cases.slice(from, from + AT_ONCE) }, ground);
      if (!came?.prove) return undefined;
      proved.push(...came.prove);
    }
    return proved;
  },
  ...ruleTools,
  writeSheet,
  casesOf: async (sheet) => (await casesOf[sheet]?.()) ?? [],
};
