/** What the parsers and checkers of check sheets offer the screens, which may not load them themselves. Types only. */
import type { CaseRan } from "../../core/assess/cases.js";
import type { Engine } from "../../core/assess/engine.js";
import type { Condition, Declarations, Use } from "../../core/expr/work.js";
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

/** What is wrong with a condition as typed, and where in the text. */
export interface CelTold {
  readonly says: string;
  readonly offset: number;
  readonly length: number;
}

/** What a sheet is tried and proved beside. */
export interface ProvingGround {
  readonly sheet: Sheet;
  readonly common: Common;
  readonly others: readonly Sheet[];
}

export interface SheetTools {
  readonly readSheet: SheetReader;
  /** Checks a sheet under work whole, as the next edition after `before`; `common` is without what any sheet brings. */
  readonly checkWork: (sheet: Sheet, common: Common, others: readonly Sheet[], before?: Sheet) => Promise<WorkChecked>;
  /** A sheet as one file that can be read in again. */
  readonly writeSheet: (sheet: Sheet, as: "yaml" | "json") => string;
  /** What proves a sheet the app comes with. */
  readonly casesOf: (sheet: string) => Promise<readonly SheetCase[]>;
  /** A condition as rows of terms; undefined where it has no usual shape. */
  readonly readCondition: (cel: string) => Condition | undefined;
  /** Everything against a condition as it is typed. */
  readonly checkCondition: (cel: string, declared: Declarations, use: Use) => readonly CelTold[];
  /** A sheet whose conditions stand, ready to be tried with the sheets it speaks of; made once for a sheet as it is. */
  readonly engineOf: (
    ground: ProvingGround,
  ) => Promise<{ readonly engine: Engine; readonly sheets: readonly string[] }>;
  readonly proveCases: (ground: ProvingGround, cases: readonly SheetCase[]) => Promise<readonly CaseRan[]>;
}
