/** CEL text → checked plan, with every problem found. Knows no file: the caller turns offsets into lines. */
import type { Result, Spot } from "../terms/index.js";
import type { Declarations, Use } from "./declarations.js";
import type { Plan } from "./plan.js";

/**
 * Parses and checks one condition. On failure every problem that can be told carries `where` as given and in
 * `params`: `offset`, `length`, `line`, `column` inside the text (offset from 0, line and column from 1), the
 * word in question as `text`, and what was expected as `expected` (nearest first). Codes: expr/SPEC.md.
 */
export function compile(text: string, declared: Declarations, use: Use, where: Spot = {}): Result<Plan> {
  throw new Error(`compile is being built: ${text.length} ${declared.sheets.length} ${use.scope} ${where.path ?? ""}`);
}
