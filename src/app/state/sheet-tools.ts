/** What the parsers and checkers of check sheets offer the screens, which may not load them themselves. Types only. */
import type { CaseRan } from "../../core/assess/cases.js";
import type { Engine } from "../../core/assess/engine.js";
import type { Condition, Declarations, Use } from "../../core/expr/work.js";
import type { BuiltCommon, BuiltSheet, Common, Sheet, SheetCase } from "../../core/sheet/run.js";
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
  /** On the page and in its way, because nothing would run beside it. */
  readonly inTheWay?: true;
}

/**
 * What a sheet under work is checked and proved beside, one object for all its changes: it goes to the worker once.
 */
export interface CheckGround {
  /** The shared files without what any sheet brings, and without words. */
  readonly bare: Common;
  readonly others: readonly Sheet[];
  /** The edition visits may hold, which the sheet goes on from. */
  readonly before?: Sheet;
}
/** A sheet as it is now, and what it stands beside. */
export interface ProvingGround {
  readonly sheet: Sheet;
  readonly on: CheckGround;
}

/** Conditions planned again, of the sheet and of those it speaks of. */
export interface WorkPlanned {
  readonly common: BuiltCommon;
  readonly sheets: readonly BuiltSheet[];
}
/** Ready to be tried. */
export interface ReadyToTry {
  readonly engine: Engine;
  readonly sheets: readonly string[];
}

/** What is wrong with a condition as typed, and where in the text. */
export interface CelTold {
  readonly says: string;
  readonly offset: number;
  readonly length: number;
}

export interface SheetTools {
  readonly readSheet: SheetReader;
  /** Keeps the worker while a screen of the editor stands; call what it gives when that screen goes. */
  readonly stay: () => () => void;
  /** Checks a sheet under work whole. Undefined when another check was asked before this one was answered. */
  readonly checkWork: (ground: ProvingGround) => Promise<WorkChecked | undefined>;
  /** A sheet as one file that can be read in again. */
  readonly writeSheet: (sheet: Sheet, as: "yaml" | "json") => string;
  /** What proves a sheet the app comes with. */
  readonly casesOf: (sheet: string) => Promise<readonly SheetCase[]>;
  /** A condition as rows of terms; undefined where it has no usual shape. */
  readonly readCondition: (cel: string) => Condition | undefined;
  /** Everything against a condition as it is typed. */
  readonly checkCondition: (cel: string, declared: Declarations, use: Use) => readonly CelTold[];
  /**
   * A sheet whose conditions stand, ready to be tried with the sheets it speaks of; made once for a sheet as it is.
   * Undefined when another was asked for before this one was there.
   */
  readonly engineOf: (ground: ProvingGround) => Promise<ReadyToTry | undefined>;
  /** Undefined when other cases were asked for before these had run. */
  readonly proveCases: (ground: ProvingGround, cases: readonly SheetCase[]) => Promise<readonly CaseRan[] | undefined>;
}
