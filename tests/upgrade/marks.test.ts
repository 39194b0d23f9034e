/**
 * Marks on pictures as they were first written: every sort of mark, one drawn anew, one taken back, one undone, a
 * picture taken after another, and one of a version from later. The files are never changed; what they fold to may only
 * gain.
 */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import {
  foldPictures,
  foldVisit,
  isEntry,
  type Logged,
  MARK_TOOLS,
  pictureKey,
  readJournal,
  writeJournal,
} from "../../src/core/record/index.js";
import { stateJson } from "../property/record-state-text.js";
import { HASH_A, HASH_B } from "../store/sample.js";
import { PICTURE_BODIES } from "../store/sample-pictures.js";

const read = (name: string): string => readFileSync(new URL(`./marks/${name}`, import.meta.url), "utf8");
const text = read("record.jsonl");
const journal = readJournal(text);
const log: readonly Logged[] = journal.ok ? journal.value : [];

test("every line with a mark is read, and written again it is the same file", () => {
  expect(journal.ok ? [] : journal.problems).toEqual([]);
  expect(writeJournal(log)).toBe(text);
  const entries = log.filter(isEntry);
  const kinds = entries.map(({ kind, v }) => `${kind} ${v}`);
  for (const kind of Object.keys(PICTURE_BODIES)) expect(kinds, kind).toContain(`${kind} 1`);
  for (const tool of MARK_TOOLS) expect(text, tool).toContain(`"type":"${tool}"`);
});

test("[RC80] [RC83] marks fold to what they always folded to, and what a later version wrote is kept and told", () => {
  const pictures = foldPictures(log);
  expect(JSON.parse(JSON.stringify({ pictures: stateJson(pictures) }))).toMatchObject(JSON.parse(read("folded.json")));
  expect(pictures.marks.get(pictureKey(HASH_A))?.map(({ mark }) => mark)).toEqual(["m1", "m3", "m4", "m5"]);
  expect(pictures.after.get(pictureKey(HASH_B))?.map(({ value }) => value)).toEqual(["visit:Mk2v8Pp0/w0/7/n7"]);
  expect(pictures.trouble.unknown.map(({ kind, v, why }) => `${kind} ${v} ${why}`)).toEqual(["picture.mark 2 newer"]);
  expect(foldVisit(log).trouble.unknown).toEqual([]);
});
