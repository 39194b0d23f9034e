/** Checks a sheet under work as a whole: what stands against it, in words and with its place. */
import { checkSameMeaning, checkSheet, type Path, parseSheet, pathText, tell } from "../../core/sheet/author.js";
import type { Common, Sheet } from "../../core/sheet/run.js";
import type { Problem } from "../../core/terms/index.js";
import type { Told, WorkChecked } from "../state/sheet-tools.js";
import { TRADE_SIGNATURES, TRADE_WORK } from "../state/trade-work.js";
import { namesIn, toldByName } from "./told-names.js";

/** Checks `sheet` beside `others` and as the next edition after `before`; `common` is without what any sheet brings. */
export function checkWork(sheet: Sheet, common: Common, others: readonly Sheet[], before?: Sheet): WorkChecked {
  const paths = new Map<string, Path>();
  const spotOf = (path: Path) => {
    const text = pathText(path);
    paths.set(text, path);
    return { path: text };
  };
  const checked = checkSheet(sheet, common, others, spotOf, { functions: TRADE_SIGNATURES, work: TRADE_WORK });
  const names = namesIn(sheet, common, others);
  const told = (is: Told["is"], one: Problem): Told => {
    const path = paths.get(one.where.path ?? "");
    // The field it is shown under says where it stands.
    const says = toldByName(one, tell({ ...one, where: {} }), names, sheet.id);
    return { is, code: one.code, says, ...(path === undefined ? {} : { path }) };
  };
  // What has not the shape of a sheet can't be held against anything.
  const isShaped = before !== undefined && parseSheet(sheet, spotOf).ok;
  const against = isShaped ? checkSameMeaning(sheet, before, spotOf) : [];
  const problems = [...against, ...(checked.ok ? [] : checked.problems)];
  if (!checked.ok || problems.length > 0) return { told: problems.map((one) => told("problem", one)) };
  return { told: checked.value.notes.map((one) => told("note", one)) };
}
