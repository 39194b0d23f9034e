/**
 * One check sheet from one YAML or JSON file: read, checked against the shared files and the sheets at hand, planned.
 * With its parsers it is loaded only when a person picks such a file. Keeps nothing.
 */
import { readYaml } from "../../build/yaml-source.js";
import {
  checkSheet,
  type Digest,
  isCondition,
  pathText,
  SHEET_LISTS,
  type SpotOf,
  sealSheet,
  tell,
  withEmptyLists,
} from "../../core/sheet/author.js";
import type { BuiltSheet } from "../../core/sheet/run.js";
import { ok, type Problem, type Result } from "../../core/terms/index.js";
import type { FrozenCommonFile, FrozenSheetFile } from "../state/frozen.js";

export interface ReadSheet {
  /** The sheet as a visit freezes it. */
  readonly file: FrozenSheetFile;
  /** The same with its planned conditions, ready to assess. */
  readonly built: BuiltSheet;
  /** Remarks that stand in nobody's way: names of sheets not at hand, limits no rule uses. */
  readonly notes: readonly Problem[];
}

/**
 * Reads `text`, picked as `name`. `loaded` are the sheets at hand: a name of one of them must exist there; a sheet of
 * the same id counts as another edition of this one. Problems carry line and column; `sheetProblem` gives their words.
 */
export async function readSheetFile(
  name: string,
  text: string,
  common: FrozenCommonFile,
  loaded: readonly FrozenSheetFile[] = [],
): Promise<Result<ReadSheet>> {
  const read = readYaml(text, name, { isCondition });
  if (!read.ok) return read;
  const spotOf: SpotOf = (path, at) => ({ ...read.value.spotOf(path, at), path: pathText(path) });
  // Cases of what is at hand were run where it was made; only those of the sheet being read are looked at.
  const others = loaded.map((s) => ({ ...s.sheet, texts: { ...s.texts }, cases: [] }));
  const shared = { ...common.common, texts: {}, cases: [], complaints: [] };
  const { TRADE_SIGNATURES, TRADE_WORK } = await import("../state/trade-work.js");
  const around = { functions: TRADE_SIGNATURES, work: TRADE_WORK };
  const checked = checkSheet(withEmptyLists(read.value.value, SHEET_LISTS), shared, others, spotOf, around);
  if (!checked.ok) return checked;
  const built = await sealSheet(checked.value, digest);
  const { edition, sheet } = built;
  const { texts, cases } = checked.value.sheet;
  const file: FrozenSheetFile = { format: "leadlamp-frozen-sheet/1", edition, sheet, texts, cases };
  return ok({ file, built, notes: checked.value.notes });
}

/** What is wrong, as one line: `my-sheet.yaml:12:5 message`. */
export const sheetProblem = (problem: Problem): string => tell(problem);

export const digest: Digest = async (text) => {
  const hash = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text));
  return Array.from(new Uint8Array(hash), (byte) => byte.toString(16).padStart(2, "0")).join("");
};
