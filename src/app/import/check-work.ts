/** Checks a sheet under work as a whole: what stands against it, in words and with its place, or the sheet as built. */
import { checkSheet, type Path, pathText, sealSheet, tell } from "../../core/sheet/author.js";
import type { Common, Sheet } from "../../core/sheet/run.js";
import type { Problem } from "../../core/terms/index.js";
import type { Told, WorkChecked } from "../state/sheet-tools.js";
import { digest } from "./sheet-file.js";

/** Checks `sheet` beside `others`; `common` is without what any sheet brings. */
export async function checkWork(sheet: Sheet, common: Common, others: readonly Sheet[]): Promise<WorkChecked> {
  const paths = new Map<string, Path>();
  const spotOf = (path: Path) => {
    const text = pathText(path);
    paths.set(text, path);
    return { path: text };
  };
  const { TRADE_SIGNATURES, TRADE_WORK } = await import("../state/trade-work.js");
  const checked = checkSheet(sheet, common, others, spotOf, { functions: TRADE_SIGNATURES, work: TRADE_WORK });
  const told = (is: Told["is"], one: Problem): Told => {
    const path = paths.get(one.where.path ?? "");
    // The field it is shown under says where it stands.
    return { is, code: one.code, says: tell({ ...one, where: {} }), ...(path === undefined ? {} : { path }) };
  };
  if (!checked.ok) return { told: checked.problems.map((one) => told("problem", one)) };
  return {
    told: checked.value.notes.map((one) => told("note", one)),
    built: await sealSheet(checked.value, digest),
  };
}
