/** Conditions of a sheet under work as they are typed: read into rows, and checked one by one. */
import { compile, type Declarations, readCondition, tellExpression, type Use } from "../../core/expr/author.js";
import type { CelTold, SheetTools } from "../state/sheet-tools.js";

/** Another sheet is a matter of what is open beside this one, and no fault of the text. */
const NOT_OPEN = "expr.sheet-not-loaded";

function checkCondition(cel: string, declared: Declarations, use: Use): readonly CelTold[] {
  const made = compile(cel, declared, use);
  if (made.ok) return [];
  return made.problems
    .filter(({ code }) => code !== NOT_OPEN)
    .map((one) => ({
      says: tellExpression(one) ?? one.code,
      offset: Number(one.params["offset"] ?? 0),
      length: Number(one.params["length"] ?? 0),
    }));
}

export const ruleTools: Pick<SheetTools, "readCondition" | "checkCondition"> = { readCondition, checkCondition };
