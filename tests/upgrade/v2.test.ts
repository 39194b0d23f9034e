/**
 * Data version 2, in which judging again freezes limits too: beside its first version, undone, and from a later one.
 * The files are never changed; what they fold to may only gain.
 */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { foldVisit, type Logged, readJournal, writeJournal } from "../../src/core/record/index.js";
import { stateJson } from "../property/record-state-text.js";

const read = (name: string): string => readFileSync(new URL(`./v2/${name}`, import.meta.url), "utf8");
const text = read("record.jsonl");
const journal = readJournal(text);
const log: readonly Logged[] = journal.ok ? journal.value : [];

test("every line of version 2 is read, and written again it is the same file", () => {
  expect(journal.ok ? [] : journal.problems).toEqual([]);
  expect(writeJournal(log)).toBe(text);
});

test("[RC50] version 2 is judged by the newest judging again that stands, and keeps what a later version wrote", () => {
  const visit = foldVisit(log);
  expect(JSON.parse(JSON.stringify({ visit: stateJson(visit) }))).toMatchObject(JSON.parse(read("folded.json")));
  expect(visit.judgedAgain).toHaveLength(2);
  expect(visit.frozen?.limits).toBe("3".repeat(64));
  expect(visit.trouble.unknown.map(({ kind, v, why }) => `${kind} ${v} ${why}`)).toEqual([
    "visit.judged-again 3 newer",
  ]);
});
