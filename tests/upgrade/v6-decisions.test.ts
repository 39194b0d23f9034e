/**
 * Data version 6, in which a plan holds the owner's word: every kind of it, one replaced, one undone, two that differ.
 * The files are never changed; what they fold to may only gain.
 */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import {
  decisionLine,
  foldPlan,
  isEntry,
  type Logged,
  readJournal,
  writeJournal,
} from "../../src/core/record/index.js";
import { stateJson } from "../property/record-state-text.js";
import { DECISION_BODIES } from "../store/sample-decisions.js";

const read = (name: string): string => readFileSync(new URL(`./v6-decisions/${name}`, import.meta.url), "utf8");
const text = read("record.jsonl");
const journal = readJournal(text);
const log: readonly Logged[] = journal.ok ? journal.value : [];

test("every line of the owner's word is read, and written again it is the same file", () => {
  expect(journal.ok ? [] : journal.problems).toEqual([]);
  expect(writeJournal(log)).toBe(text);
  const kinds = new Set(log.filter(isEntry).map(({ kind, v }) => `${kind} ${v}`));
  for (const kind of Object.keys(DECISION_BODIES)) expect(kinds, kind).toContain(`${kind} 1`);
});

test("[RW2] [RW3] version 6 folds to its decisions, and the line of each stays", () => {
  const plan = foldPlan(log);
  expect(JSON.parse(JSON.stringify(stateJson(plan)))).toMatchObject(JSON.parse(read("folded.json")));
  const line = (job: string) => decisionLine(plan, job).map(({ said, is }) => `${said?.word} ${is}`);
  expect(line("whl.bearing@FR")).toEqual(["yes-now replaced", "no stands"]);
  expect(line("brk.hose@FR")).toEqual(["no stands", "yes-now stands"]);
  expect(line("brk.caliper@FR")).toEqual(["yes-by stands", "undefined undone"]);
});
