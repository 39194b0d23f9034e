/**
 * Data version 5, in which a visit has a plan and a house its terms: every kind of theirs, one undone, one of a kind and
 * one of a version from later. The files are never changed; what they fold to may only gain.
 */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { foldHouse, foldPlan, isEntry, type Logged, readJournal, writeJournal } from "../../src/core/record/index.js";
import { stateJson } from "../property/record-state-text.js";
import { PLAN_BODIES } from "../store/sample-plan.js";

const read = (name: string): string => readFileSync(new URL(`./v5/${name}`, import.meta.url), "utf8");
const text = read("record.jsonl");
const journal = readJournal(text);
const log: readonly Logged[] = journal.ok ? journal.value : [];

test("every line of version 5 is read, and written again it is the same file", () => {
  expect(journal.ok ? [] : journal.problems).toEqual([]);
  expect(writeJournal(log)).toBe(text);
  const kinds = new Set(log.filter(isEntry).map(({ kind, v }) => `${kind} ${v}`));
  for (const kind of Object.keys(PLAN_BODIES)) expect(kinds, kind).toContain(`${kind} 1`);
});

test("[RC54] [RC56] version 5 folds to its plan and its terms, and keeps what a later version wrote", () => {
  const plan = foldPlan(log);
  const house = foldHouse(log);
  const folded = { plan: stateJson(plan), house: stateJson(house) };
  expect(JSON.parse(JSON.stringify(folded))).toMatchObject(JSON.parse(read("folded.json")));
  expect(plan.partSteps.get("whl.bearing@FR/bearing-set")?.map(({ value }) => value.step)).toEqual(["checked"]);
  expect(plan.budget.map(({ value }) => value.minor)).toEqual([95_000]);
  expect(house.terms.map(({ value }) => value.currency)).toEqual(["EUR"]);
  expect(plan.trouble.unknown.map(({ kind, v, why }) => `${kind} ${v} ${why}`).sort()).toEqual([
    "plan.mileage 1 kind",
    "plan.use 2 newer",
  ]);
});
