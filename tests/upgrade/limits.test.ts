/**
 * The limits book with what is told of its figures, as it was first written: a figure from before, replaced with its
 * reason, looked at by a second person, taken out, undone, and a telling of a version from later. The file is never
 * changed; what it folds to may only gain.
 */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import {
  foldCar,
  foldLimitBook,
  isEntry,
  type Logged,
  limitLine,
  limitsOf,
  readJournal,
  writeJournal,
} from "../../src/core/record/index.js";
import { LIMIT_BODIES } from "../store/sample-limits.js";

const text = readFileSync(new URL("./limits/record.jsonl", import.meta.url), "utf8");
const journal = readJournal(text);
const log: readonly Logged[] = journal.ok ? journal.value : [];

test("every line of the book is read, and written again it is the same file", () => {
  expect(journal.ok ? [] : journal.problems).toEqual([]);
  expect(writeJournal(log)).toBe(text);
  const kinds = log.filter(isEntry).map(({ kind, v }) => `${kind} ${v}`);
  for (const kind of Object.keys(LIMIT_BODIES)) expect(kinds, kind).toContain(`${kind} 1`);
});

test("[RC87] [RC88] [RC89] it folds to the lines it always had, and what a later version wrote is kept and told", () => {
  const car = foldCar(log);
  const line = (key: string) =>
    limitLine(car, key).map(({ limit, is, told, why, looked }) => [
      limit?.value,
      is,
      told?.source.way,
      why,
      looked.map(({ value }) => value.who),
    ]);
  expect(line("lim.float-taper")).toEqual([
    ["0.008", "replaced", undefined, undefined, []],
    ["0.006", "standing", "book", "the later edition corrects it", ["Jo"]],
  ]);
  expect(line("lim.float-taper@FR")).toEqual([
    ["0.4", "replaced", "letter", undefined, []],
    [undefined, "standing", undefined, "inches read for millimetres", []],
  ]);
  expect(line("lim.float-taper@FL")).toEqual([["0.1", "undone", "measured", undefined, []]]);
  expect(limitsOf(car).map(({ value }) => value)).toEqual(["0.006"]);
  expect(car.trouble.unknown).toEqual([]);
  expect(foldLimitBook(log).trouble.unknown.map(({ kind, v, why }) => `${kind} ${v} ${why}`)).toEqual([
    "limit.told 2 newer",
  ]);
});
