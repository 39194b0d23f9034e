/**
 * What a viewing keeps, as it was first written: claims mended and taken back, what was seen of them, an undo, the day
 * papers go, and one of a version from later. The file is never changed; what it folds to may only gain.
 */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { foldPlan, type Logged, readJournal, writeJournal } from "../../src/core/record/index.js";

const text = readFileSync(new URL("./viewing/record.jsonl", import.meta.url), "utf8");
const journal = readJournal(text);
const log: readonly Logged[] = journal.ok ? journal.value : [];

test("every line is read, and written again it is the same file", () => {
  expect(journal.ok ? [] : journal.problems).toEqual([]);
  expect(writeJournal(log)).toBe(text);
});

test("[RC65] [RC66] it folds to what it folded to when it came", () => {
  const plan = foldPlan(log);
  expect([...plan.claims].map(([claim, said]) => [claim, said.map(({ value }) => value.text)])).toEqual([
    ["c1", ["New belts and tensioners two years ago"]],
    ["c2", ["Never been wet"]],
  ]);
  expect([...plan.claimsSeen].map(([claim, said]) => [claim, said.map(({ value }) => value.word)])).toEqual([
    ["c1", ["not-shown"]],
    ["c2", ["otherwise"]],
  ]);
  expect(plan.papersUntil.map(({ value }) => value)).toEqual(["2026-12-30"]);
  expect(plan.trouble.unknown.map(({ kind, v, why }) => `${kind} ${v} ${why}`)).toEqual(["claim 2 newer"]);
});
