/** What the parsers and checkers of check sheets offer the screens, which may not load them themselves. Types only. */
import type { BuiltSheet, Common, Sheet, SheetCase } from "../../core/sheet/run.js";
import type { Path } from "../../core/sheet/work.js";
import type { FrozenCommonFile, FrozenSheetFile } from "./frozen.js";

/** What came of a sheet file: the sheet with remarks, or every fault with line and column, in words. */
export type SheetRead =
  | { readonly ok: true; readonly file: FrozenSheetFile; readonly notes: readonly string[] }
  | { readonly ok: false; readonly faults: readonly string[] };

/** Reads a sheet from one YAML or JSON file, checked first. */
type SheetReader = (
  fileName: string,
  text: string,
  common: FrozenCommonFile,
  atHand: readonly FrozenSheetFile[],
) => Promise<SheetRead>;

/** One thing told of a sheet under work: its words, and where in the whole sheet. */
export interface Told {
  readonly is: "problem" | "note";
  readonly code: string;
  readonly says: string;
  readonly path?: Path;
}

export interface WorkChecked {
  readonly told: readonly Told[];
  /** There when nothing stands against the sheet. */
  readonly built?: BuiltSheet;
}

export interface SheetTools {
  readonly readSheet: SheetReader;
  /** Checks a sheet under work whole; `common` is what all sheets share, without what any brings. */
  readonly checkWork: (sheet: Sheet, common: Common, others: readonly Sheet[]) => Promise<WorkChecked>;
  /** What proves a sheet the app comes with. */
  readonly casesOf: (sheet: string) => Promise<readonly SheetCase[]>;
}
