/**
 * Data version 3, with findings off the list and the time for looking: mended, taken back, undone, and from a later
 * version. The files are never changed; what they fold to may only gain.
 */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { foldVisit, type Logged, readJournal, writeJournal } from "../../src/core/record/index.js";
import { stateJson } from "../property/record-state-text.js";

const read = (name: string): string => readFileSync(new URL(`./v3/${name}`, import.meta.url), "utf8");
const text = read("record.jsonl");
const journal = readJournal(text);
const log: readonly Logged[] = journal.ok ? journal.value : [];

test("every line of version 3 is read, and written again it is the same file", () => {
  expect(journal.ok ? [] : journal.problems).toEqual([]);
  expect(writeJournal(log)).toBe(text);
});

test("[RC52] [RC53] version 3 folds to the finding as mended and the time set last, and keeps what a later version wrote", () => {
  const visit = foldVisit(log);
  expect(JSON.parse(JSON.stringify({ visit: stateJson(visit) }))).toMatchObject(JSON.parse(read("folded.json")));
  expect([...visit.found].map(([id, all]) => [id, all.map(({ value }) => value.grade)])).toEqual([
    ["f3a", ["dangerous"]],
  ]);
  expect(visit.clock.map(({ value }) => value.minutes)).toEqual([30]);
  expect(visit.trouble.unknown.map(({ kind, v, why }) => `${kind} ${v} ${why}`)).toEqual(["finding 2 newer"]);
});
