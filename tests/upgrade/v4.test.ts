/**
 * Data version 4, in which the time for looking may stand still: beside its first version, undone, and from a later one.
 * The files are never changed; what they fold to may only gain.
 */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { foldVisit, type Logged, readJournal, writeJournal } from "../../src/core/record/index.js";
import { stateJson } from "../property/record-state-text.js";

const read = (name: string): string => readFileSync(new URL(`./v4/${name}`, import.meta.url), "utf8");
const text = read("record.jsonl");
const journal = readJournal(text);
const log: readonly Logged[] = journal.ok ? journal.value : [];

test("every line of version 4 is read, and written again it is the same file", () => {
  expect(journal.ok ? [] : journal.problems).toEqual([]);
  expect(writeJournal(log)).toBe(text);
});

test("[RC53] version 4 folds to the time that stands still, and keeps what a later version wrote", () => {
  const visit = foldVisit(log);
  expect(JSON.parse(JSON.stringify({ visit: stateJson(visit) }))).toMatchObject(JSON.parse(read("folded.json")));
  expect(visit.clock.map(({ value }) => value.stopped)).toEqual(["2027-01-15T09:12:30+01:00"]);
  expect(visit.trouble.unknown.map(({ kind, v, why }) => `${kind} ${v} ${why}`)).toEqual(["visit.clock 3 newer"]);
});
