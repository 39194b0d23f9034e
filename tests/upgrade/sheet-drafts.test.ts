/**
 * A check sheet under work as it was first written: begun, an item changed, one taken out and that undone, an order, and
 * an item of a version from later. The file is never changed; what it folds to may only gain.
 */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { foldHouse, type Logged, readJournal, writeJournal } from "../../src/core/record/index.js";

const text = readFileSync(new URL("./sheet-drafts/record.jsonl", import.meta.url), "utf8");
const journal = readJournal(text);
const log: readonly Logged[] = journal.ok ? journal.value : [];

test("every line is read, and written again it is the same file", () => {
  expect(journal.ok ? [] : journal.problems).toEqual([]);
  expect(writeJournal(log)).toBe(text);
});

test("[RC85] it folds to what it folded to when it came", () => {
  const { drafts, draftItems, draftOrders, trouble } = foldHouse(log);
  expect([...drafts].map(([name, all]) => [name, all.map(({ value }) => value.label)])).toEqual([["d-1", ["Ours"]]]);
  expect([...draftItems].map(([name, all]) => [name, all.map(({ value }) => value.to?.value)])).toEqual([
    ["d-1|points|own.hinge", [{ id: "own.hinge", place: "door" }]],
  ]);
  expect([...draftOrders.values()].map((all) => all.map(({ value }) => value))).toEqual([[["own.hinge"]]]);
  expect(trouble.unknown.map(({ kind, v, why }) => `${kind} ${v} ${why}`)).toEqual(["house.draft-item 2 newer"]);
});
