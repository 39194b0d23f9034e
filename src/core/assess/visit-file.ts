/** Reads a visit file (`leadlamp-visit/1`) leniently: what it cannot take it sets aside and tells. Touches no disk. */
import type { BuiltCommon, BuiltSheet } from "../sheet/run.js";
import type { Problem, Result } from "../terms/index.js";
import type { AssessInput } from "./contract.js";

export interface VisitFile {
  readonly input: AssessInput;
  /** Every reply, fact or figure set aside, with where and why. Not empty: the file is faulty (exit 1). */
  readonly problems: readonly Problem[];
}

/** `data` is the parsed JSON. Fails only when it is no visit file at all. */
export function readVisitFile(data: unknown, common: BuiltCommon, sheets: readonly BuiltSheet[]): Result<VisitFile> {
  throw new Error(`readVisitFile is being built: ${typeof data} ${common.edition} ${sheets.length}`);
}
