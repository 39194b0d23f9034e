/**
 * What is said of readings when visits are compared, as it was first written: said, taken back, undone, and one of a
 * version from later. The file is never changed; what it folds to may only gain.
 */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { foldPlan, type Logged, readJournal, writeJournal } from "../../src/core/record/index.js";

const text = readFileSync(new URL("./wear/record.jsonl", import.meta.url), "utf8");
const journal = readJournal(text);
const log: readonly Logged[] = journal.ok ? journal.value : [];

test("every line is read, and written again it is the same file", () => {
  expect(journal.ok ? [] : journal.problems).toEqual([]);
  expect(writeJournal(log)).toBe(text);
});

test("[RC64] it folds to what it folded to when it came", () => {
  const plan = foldPlan(log);
  expect([...plan.wear].map(([key, said]) => [key, said.map(({ value }) => value)])).toEqual([
    ["brk.fluid-water.water@car", ["renewed"]],
  ]);
  expect(plan.trouble.unknown.map(({ kind, v, why }) => `${kind} ${v} ${why}`)).toEqual(["wear.said 2 newer"]);
});
