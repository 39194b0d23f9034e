/** One broken sheet: what is changed in the small good one, and every line said about it. */
import type { Change } from "../../support/mini-sheet.js";

export interface Broken {
  readonly name: string;
  /** Changed in the sheet, or in the shared files. */
  readonly of: "sheet" | "common";
  readonly change: Change;
  readonly says: readonly string[];
}
