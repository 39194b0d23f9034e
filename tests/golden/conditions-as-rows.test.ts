/** Conditions of the sheets as rows of terms: read and written again, each must mean the same to the letter of its plan. */
import { describe, expect, it } from "vitest";
import { loadChecklists } from "../../src/build/load-checklists.js";
import { compile, type Declarations, readCondition } from "../../src/core/expr/author.js";
import { writeCondition } from "../../src/core/expr/work.js";
import { lookupFor, partOfSheet } from "../../src/core/sheet/author.js";
import { declarationsFor } from "../../src/core/sheet/declare.js";
import type { Sheet } from "../../src/core/sheet/run.js";
import { TRADE_SIGNATURES } from "../../src/core/trade/index.js";

const { result } = await loadChecklists("checklists");
if (!result.ok) throw new Error("The sheets do not stand.");
const { sheets, wholeWithTexts } = result.value;
const parts = sheets.map(({ sheet }) => partOfSheet(sheet));

/** Every condition of a sheet with the kind of place it is asked at; formulas are none. */
function conditionsOf(sheet: Sheet): readonly { readonly at: string; readonly cel: string; readonly scope: string }[] {
  const some = (at: string, scope: string, texts: readonly (string | undefined)[]) =>
    texts.flatMap((cel) => (cel === undefined ? [] : [{ at, cel, scope }]));
  return [
    ...sheet.points.flatMap((p) => some(p.id, p.place, [p["asked-when"]])),
    ...sheet.limits.flatMap((l) => some(l.id, l.class, [l.applies])),
    ...sheet.rules.flatMap((r) => [
      ...some(r.id, r.scope, [r.when, r.worse?.when, ...(r.supports ?? [])]),
      ...(typeof r.at === "object" ? some(r.id, r.at.each, [r.at.where]) : []),
    ]),
    ...sheet.gates.flatMap((g) => some(g.id, "car", [...g.trips, ...(g.clears ?? [])])),
  ];
}
const meaning = (cel: string, scope: string, declared: Declarations) => {
  const made = compile(cel, declared, { scope, provisional: true, findings: true });
  return made.ok ? made.value.code : made.problems.map(({ code, params }) => ({ code, of: params["text"] }));
};

describe("conditions of the sheets as rows", () => {
  it.each(sheets.map(({ sheet }) => [sheet.id, sheet] as const))("%s: written again they mean the same", (_id, sheet) => {
    const declared = declarationsFor(lookupFor(partOfSheet(sheet), wholeWithTexts, parts), {
      functions: TRADE_SIGNATURES,
    });
    for (const { at, cel, scope } of conditionsOf(sheet)) {
      const read = readCondition(cel);
      if (read) expect({ at, is: meaning(writeCondition(read), scope, declared) }).toEqual({ at, is: meaning(cel, scope, declared) });
    }
  });
  it("more than nineteen in twenty have a usual shape", () => {
    const all = sheets.flatMap(({ sheet }) => conditionsOf(sheet));
    const text = all.filter(({ cel }) => readCondition(cel) === undefined);
    expect(all.length).toBeGreaterThan(500);
    expect(text.length / all.length).toBeLessThan(0.05);
  });
});
