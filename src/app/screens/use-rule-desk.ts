/** What the forms of conditions and rules work with: the reader of conditions and the names of the sheet, fetched once. */
import { useMemo } from "preact/hooks";
import { useApp } from "../state/app.js";
import { namesOf, type SheetNames } from "../state/sheet-names.js";
import type { SheetTools } from "../state/sheet-tools.js";
import type { SheetWork } from "../state/sheet-work.js";
import { useLoaded } from "./use-loaded.js";

export interface RuleDesk {
  readonly tools: SheetTools;
  readonly names: SheetNames;
}

/** Undefined while the parser is being fetched. */
export function useRuleDesk({ sheet, common, others }: SheetWork): RuleDesk | undefined {
  const { sheetTools } = useApp();
  const fetched = useLoaded(async () => {
    const [tools, { TRADE_SIGNATURES }] = await Promise.all([sheetTools(), import("../state/trade-work.js")]);
    return { tools, functions: TRADE_SIGNATURES };
  }, "rule-desk");
  return useMemo(
    () => fetched && { tools: fetched.tools, names: namesOf({ sheet, common, others }, fetched.functions) },
    [fetched, sheet, common, others],
  );
}
