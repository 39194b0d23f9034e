/** Opens sheets for assessing: links every condition once. Knows no visit and no reply. */
import type { BuiltCommon, BuiltSheet } from "../sheet/run.js";
import type { Problem } from "../terms/index.js";

/** Linked sheets, ready for any number of visits. Opaque. */
export interface Engine {
  readonly problems: readonly Problem[];
  readonly sheets: readonly string[];
}

/** Links every plan once. A plan that cannot be linked is told in `problems`; its rule is then never known. */
export function prepare(common: BuiltCommon, sheets: readonly BuiltSheet[]): Engine {
  throw new Error(`prepare is being built: ${common.edition} ${sheets.length}`);
}
