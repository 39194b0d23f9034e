/**
 * What the build hands to the app: a checked sheet or the shared files without texts and cases, with their planned
 * conditions. Cases prove a sheet where it is made; nothing on the phone reads them. Complaints lie apart: they put
 * likely points first and judge nothing, so no visit freezes them and no edition is named by them.
 */
import type { Plan } from "../expr/run.js";
import type { Purpose } from "../terms/index.js";
import type { Common, CommonTexts, Complaint, Sheet, SheetTexts } from "./schema-types.js";

export type BareSheet = Omit<Sheet, "texts" | "cases">;
export type BareCommon = Omit<Common, "texts" | "cases" | "complaints">;
/** Shown texts of the shared files in one language, as they are frozen. */
export type BareCommonTexts = Omit<CommonTexts, "complaints">;

/** The known complaints with their words in one language. */
export interface Complaints {
  readonly listed: readonly Complaint[];
  readonly texts: CommonTexts["complaints"];
}

/** Plans are keyed by path: `rules/whl.r01/when`, `rules/ID/supports/0`, `limits/ID/applies`, `gates/ID/trips/0` … */
export type Plans = Readonly<Record<string, Plan>>;

export interface BuiltSheet {
  readonly sheet: BareSheet;
  readonly plans: Plans;
  readonly planVersion: number;
  /** SHA-256, hex, of the sheet's meaning (`editionText`): changed texts leave it as it is. */
  readonly edition: string;
}

export interface BuiltCommon {
  readonly common: BareCommon;
  /** Without them no point is put first. */
  readonly complaints?: readonly Complaint[];
  readonly plans: Plans;
  readonly planVersion: number;
  readonly edition: string;
}

/** How many digits of an edition a list holds. */
export const EDITION_LISTED = 16;

/** Whether an edition is the one a list names by its first digits. */
export const isEdition = (edition: string, listed: string): boolean => edition.startsWith(listed);

/** A sheet as a list shows it before it is loaded. */
export interface ListedSheet {
  readonly id: string;
  /** The first digits of its edition: enough to tell editions of one sheet apart, and a third of the list's bytes less. */
  readonly edition: string;
  /** As in the sheet: what a visit is for that opens with it. */
  readonly "opens-for"?: readonly Purpose[];
  /** By language. */
  readonly titles: Readonly<Record<string, string>>;
  readonly load: () => Promise<BuiltSheet>;
  /** The same without its plans: what a visit freezes. */
  readonly source: () => Promise<Omit<BuiltSheet, "plans" | "planVersion">>;
  readonly texts: Readonly<Record<string, () => Promise<SheetTexts>>>;
}
