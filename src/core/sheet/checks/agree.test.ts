import { expect, test } from "vitest";
import { miniSheets } from "../../../../tests/support/mini-sheet.js";
import { checkSheet } from "../check.js";
import { tell } from "../messages.js";
import type { Rule, Sheet } from "../schema-types.js";
import { pathOnly } from "../source.js";

const { sheet, common } = miniSheets();
const [rough] = sheet.rules;
if (!rough) throw new Error("the small sheet has rules");

/** What is said of a further rule beside the one of a rough hub, apart from its missing case and words. */
function says(further: Partial<Rule>): readonly string[] {
  const rules = [...sheet.rules, { ...rough, id: "hub.r9", ...further } as Rule];
  const checked = checkSheet({ ...sheet, rules } satisfies Sheet, common, [], pathOnly);
  return checked.ok ? [] : checked.problems.filter(({ code }) => code === "rules-disagree").map(tell);
}

test("the same condition in other letters with another grade of the same fault is told", () => {
  expect(says({ grade: "advisory", when: '( hub.spin=="rough" )' })).toEqual([
    "rules[3].grade rules “hub.r1” and “hub.r9” hold at the same moment and grade “hub.race” differently: “minor”, “advisory”",
  ]);
});

test("the same grade, another fault or another condition is no quarrel", () => {
  expect(says({})).toEqual([]);
  expect(says({ grade: "advisory", fault: "hub.play" })).toEqual([]);
  expect(says({ grade: "advisory", when: 'hub.spin == "tight"' })).toEqual([]);
});
