// Every rule that answers to an item of the Directive gives a grade the item gives, or says why ours is stricter. The
// items and their grades: roadworthiness.json, with its source.
import { readFile } from "node:fs/promises";
import { beforeAll, expect, test } from "vitest";
import { type Checklists, loadChecklists } from "../../src/build/load-checklists.js";
import type { Limit, Rule } from "../../src/core/sheet/run.js";
import { GRADES, type Grade, levelOf } from "../../src/core/terms/index.js";

interface Published {
  readonly source: string;
  readonly items: Readonly<Record<string, readonly Grade[]>>;
}

/** How a rule names an item, before its number. */
const DIRECTIVE = "EU 2014/45 ";

/**
 * Rules of a sheet that answer to an item, at least; of cooling, electrics and engine few are graded,
 * inside it, in a bag and at a viewing none.
 */
const MANY = 21;
const FEWER: Readonly<Record<string, number>> = {
  ...{ buy: 0, cool: 16, elec: 13, eng: 13, head: 0, recv: 0 },
  ...{ rest: 14, road: 9, trim: 5 },
};

let published: Published;
let lists: Checklists;
let answering: readonly Rule[];
beforeAll(async () => {
  const text = await readFile(new URL("roadworthiness.json", import.meta.url), "utf8");
  // Our own file, beside this test.
  published = JSON.parse(text) as Published;
  const { result } = await loadChecklists("checklists");
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  lists = result.value;
  answering = allRules().filter((rule) => rule["answers-to"] !== undefined);
}, 240_000);

const allRules = (): readonly Rule[] => [
  ...lists.sheets.flatMap(({ sheet }) => sheet.rules),
  ...lists.common.common.rules,
];
const allLimits = (): readonly Limit[] => lists.sheets.flatMap(({ sheet }) => sheet.limits);
const itemOf = (rule: Rule): string => rule["answers-to"]?.slice(DIRECTIVE.length) ?? "";

/** Every grade this rule can give with the default limits. */
function gradesOf({ grade, worse }: Rule): readonly Grade[] {
  if (typeof grade !== "object") return [grade, worse?.grade].filter((it) => it !== undefined);
  const same = (name: string) => name.replaceAll("-", "_");
  const over = allLimits().filter((limit) => same(limit.of) === same(grade["limit-of"]));
  const least = grade["at-least"];
  const given = GRADES.filter((it) => over.some(({ bands }) => bands[it] !== undefined));
  if (least === undefined) return given;
  return GRADES.filter((it) => it === least || (given.includes(it) && levelOf(it) > levelOf(least)));
}

test("an item names the Directive and a row of its table", () => {
  const strange = answering
    .map((rule) => [rule.id, rule["answers-to"]])
    .filter(([, item]) => !item?.startsWith(DIRECTIVE) || published.items[item.slice(DIRECTIVE.length)] === undefined);
  expect(strange).toEqual([]);
});

test("each sheet has rules that answer to an item", () => {
  expect(lists.sheets.length).toBeGreaterThan(0);
  for (const { sheet } of lists.sheets) {
    const own = answering.filter((rule) => rule.id.startsWith(`${sheet.id}.`));
    expect([sheet.id, own.length >= (FEWER[sheet.id] ?? MANY)]).toEqual([sheet.id, true]);
  }
});

test("a grade the item does not give is explained", () => {
  const unexplained = answering
    .filter((rule) => rule.stricter === undefined)
    .map((rule) => ({
      rule: rule.id,
      item: itemOf(rule),
      beside: gradesOf(rule).filter((it) => published.items[itemOf(rule)]?.includes(it) === false),
    }))
    .filter(({ beside }) => beside.length > 0)
    .map(
      ({ rule, item, beside }) => `${rule} is ${beside.join(", ")}; ${item} gives ${published.items[item]?.join(", ")}`,
    );
  expect(unexplained).toEqual([]);
});

test("a rule explains a grade of an item it names, and in words", () => {
  const without = allRules().filter(
    (rule) => rule.stricter !== undefined && (rule["answers-to"] === undefined || rule.stricter.length < 15),
  );
  expect(without.map((rule) => rule.id)).toEqual([]);
});

test("what the Directive grades as dangerous and nothing less is never milder than major", () => {
  const only = answering.filter((rule) => published.items[itemOf(rule)]?.join() === "dangerous");
  expect(only.length).toBeGreaterThan(0);
  const milder = only.filter((rule) => gradesOf(rule).some((it) => levelOf(it) < levelOf("major")));
  expect(milder.map((rule) => rule.id)).toEqual([]);
});
