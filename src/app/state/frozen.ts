/**
 * What a visit freezes when it opens: its sheets, the shared files and the limits in force, as readable JSON that is
 * kept as blobs under their own hash. Conditions are kept as they are written; plans are made again from them.
 */
import type { BareCommon, BareCommonTexts, BareSheet, CarLimit, SheetCase, SheetTexts } from "../../core/sheet/run.js";
import { fail, ok, problem, type Result } from "../../core/terms/index.js";

export interface FrozenSheetFile {
  readonly format: "leadlamp-frozen-sheet/1";
  readonly edition: string;
  readonly sheet: BareSheet;
  /** Shown texts by language. */
  readonly texts: Readonly<Record<string, SheetTexts>>;
  /** What proves an own sheet, so that it can be worked on; nothing judges by them. */
  readonly cases?: readonly SheetCase[];
  /** Of an own edition of a sheet the app comes with: the app's edition it was begun from, or compared with last. */
  readonly begunFrom?: string;
}
/** One written while complaints were frozen too still holds them; they are passed over. */
export interface FrozenCommonFile {
  readonly format: "leadlamp-frozen-common/1";
  readonly edition: string;
  readonly common: BareCommon;
  readonly texts: Readonly<Record<string, BareCommonTexts>>;
}
export interface FrozenLimitsFile {
  readonly format: "leadlamp-frozen-limits/1";
  readonly limits: readonly CarLimit[];
}
interface FrozenBy {
  readonly "leadlamp-frozen-sheet/1": FrozenSheetFile;
  readonly "leadlamp-frozen-common/1": FrozenCommonFile;
  readonly "leadlamp-frozen-limits/1": FrozenLimitsFile;
}
export type FrozenFile = FrozenBy[keyof FrozenBy];

/** Type the blobs are kept under. */
export const FROZEN_TYPE = "application/json";

export const frozenBytes = (file: FrozenFile): Uint8Array<ArrayBuffer> =>
  new TextEncoder().encode(JSON.stringify(file));

/**
 * Reads a frozen file back. Only what the app itself wrote is ever named by an entry, so the format mark is all
 * that is checked; a blob that is no such file (`app.frozen-unreadable`) is told, never guessed at.
 */
export function readFrozen<Format extends keyof FrozenBy>(format: Format, bytes: Uint8Array): Result<FrozenBy[Format]> {
  try {
    const file: unknown = JSON.parse(new TextDecoder().decode(bytes));
    // The format mark is what tells one from another; its fields were written by frozenBytes.
    if (typeof file === "object" && file !== null && "format" in file && file.format === format)
      return ok(file as FrozenBy[Format]);
  } catch {
    // Told below like any other file that is none of ours.
  }
  return fail(problem("app.frozen-unreadable", {}, { format }));
}
