/** The small good sheet passes; each broken one is told with file, line, column and the whole text. */
import { describe, expect, test } from "vitest";
import { MESSAGES } from "../../src/core/sheet/author.js";
import { commonSays, sheetSays } from "../support/mini-sheet.js";
import type { Broken } from "./broken-sheets/broken.js";
import { BROUGHT } from "./broken-sheets/brought.js";
import { CASES } from "./broken-sheets/cases.js";
import { CONDITIONS } from "./broken-sheets/conditions.js";
import { NAMES } from "./broken-sheets/names.js";
import { SENSE } from "./broken-sheets/sense.js";
import { SHAPE } from "./broken-sheets/shape.js";
import { TEXT } from "./broken-sheets/text.js";
import { TEXTS } from "./broken-sheets/texts.js";

const TABLES: Readonly<Record<string, readonly Broken[]>> = {
  "the text": TEXT,
  "the shape": SHAPE,
  names: NAMES,
  "what makes no sense": SENSE,
  conditions: CONDITIONS,
  cases: CASES,
  "shown texts": TEXTS,
};
/** What was said of each: looked at one by one, and once more for all. */
const said = new Map<Broken, ReturnType<typeof sheetSays>>();
function sayOf(broken: Broken): ReturnType<typeof sheetSays> {
  const { of, change } = broken;
  const says = said.get(broken) ?? (of === "sheet" ? sheetSays(change) : commonSays(change));
  said.set(broken, says);
  return says;
}

test("the small good sheet and its shared files pass without a remark", () => {
  expect(sheetSays()).toEqual({ problems: [], notes: [], codes: [] });
  expect(commonSays()).toEqual({ problems: [], notes: [], codes: [] });
});

for (const [table, broken] of Object.entries(TABLES))
  describe(table, () => {
    for (const one of broken)
      test(one.name, () => {
        expect(sayOf(one).problems).toEqual(one.says);
      });
  });

describe("what a sheet brings", () => {
  for (const { name, changes, says } of BROUGHT)
    test(name, () => {
      expect(sheetSays(...changes).problems).toEqual(says);
    });
});

test("a name of a sheet not loaded and a limit no rule uses are remarks, not problems", () => {
  expect(sheetSays({ part: "rules.yaml", from: "hub.spin@opposite", to: "brk.drag" })).toMatchObject({
    problems: [],
    notes: ["hub/rules.yaml:16:24 “brk.drag” belongs to sheet “brk”, which is not loaded"],
  });
  expect(sheetSays({ part: "rules.yaml", from: `'hub.spin == "rough"'`, to: `'brk.drag == "drags"'` })).toMatchObject({
    problems: [],
    notes: ["hub/rules.yaml:9:12 “brk.drag” belongs to the sheet “brk”, which is not loaded"],
  });
  expect(
    sheetSays(
      { part: "rules.yaml", from: "{ limit-of: hub.float }", to: "minor" },
      { part: "rules.yaml", from: "band(hub.float) >= minor", to: "clearly_more(hub.float, opposite.hub.float)" },
    ),
  ).toMatchObject({
    problems: [],
    notes: [
      "hub/limits.yaml:2:9 limit “lim.float” is used by no rule: no grade and no band() looks at “hub.float”",
    ],
  });
});

test("more than a hundred problems are counted, not listed", () => {
  const many = Array.from({ length: 130 }, (_, i) => `w${i}: nothing`).join(", ");
  const { problems } = sheetSays({
    part: "texts/en.yaml",
    from: "{ smooth: smooth,",
    to: `{ ${many}, smooth: smooth,`,
  });
  expect(problems).toHaveLength(101);
  expect(problems.at(-1)).toBe("and 30 more; mend these first");
});

test("every problem that can be told is told here, or in the test named", () => {
  const seen = new Set(Object.values(TABLES).flatMap((table) => table.flatMap((one) => sayOf(one).codes)));
  const elsewhere = {
    "src/build/yaml-source.test.ts": ["yaml-too-large", "yaml-too-deep"],
    "src/build/load-checklists.test.ts": ["unreadable-file", "missing-file", "folder-name", "brought-differs"],
    "src/core/sheet/checks/agree.test.ts": ["rules-disagree"],
    "src/core/sheet/checks/same-meaning.test.ts": [
      ...["id-other-place", "id-other-field", "id-other-reply", "id-other-quantity", "id-other-subject"],
      "id-words-gone",
    ],
    "src/core/sheet/places.test.ts": ["place-id-used"],
    "src/cli/sheets.test.ts": ["case-failed"],
    "this file": ["name-not-loaded", "unused-limit", "more-problems"],
  };
  const untold = Object.keys(MESSAGES).filter((code) => !seen.has(code));
  expect(untold.sort()).toEqual(Object.values(elsewhere).flat().sort());
});
