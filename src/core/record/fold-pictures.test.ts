import { expect, test } from "vitest";
import { act, carAndVisit, HASH_A, HASH_B } from "../../../tests/store/sample.js";
import { SampleLog } from "../../../tests/store/sample-log.js";
import { MARKS, PICTURE_BODIES } from "../../../tests/store/sample-pictures.js";
import { ALL_KINDS } from "./all-kinds.js";
import { blobsOf } from "./blobs-of.js";
import { faultsOf } from "./check-logged.js";
import type { Draft, Entry } from "./contract.js";
import { draftErase } from "./draft-erase.js";
import { draftAfter, draftMark } from "./draft-pictures.js";
import { foldPictures } from "./fold-pictures.js";
import { foldVisit } from "./fold-visit.js";
import { isEntry } from "./identity.js";
import { type PictureMark, pictureKey } from "./picture-bodies.js";
import { PICTURE_KINDS } from "./picture-kinds.js";
import { summarise } from "./summary.js";
import { draftUndo, undoable } from "./undo.js";

const KEY = pictureKey(HASH_A);

function opened(): SampleLog {
  const { visit, drafts } = carAndVisit();
  const log = new SampleLog(visit);
  log.add(drafts.filter(({ stream }) => stream === visit));
  return log;
}
const said = (log: SampleLog) => foldPictures(log.entries);
function added(log: SampleLog, draft: Draft): Entry {
  const entry = log.entry(log.add(draft));
  if (!isEntry(entry)) throw new Error("no entry");
  return entry;
}
const draw = (log: SampleLog, mark: string, drawn: PictureMark | null, blob = HASH_A): Entry =>
  added(log, draftMark(act(), log.visit, blob, mark, drawn));
const shown = (log: SampleLog, key = KEY) =>
  (said(log).marks.get(key) ?? []).map(({ mark, stands }) => [mark, stands.value]);

test("[RC80] marks stand under the names they keep, mended where they were first drawn, and are taken back by null", () => {
  const log = opened();
  draw(log, "m1", MARKS.arrow);
  draw(log, "m2", MARKS.ring);
  draw(log, "m3", MARKS.words, HASH_B);
  draw(log, "m1", MARKS.words);
  expect(shown(log)).toEqual([
    ["m1", MARKS.words],
    ["m2", MARKS.ring],
  ]);
  expect(shown(log, pictureKey(HASH_B))).toEqual([["m3", MARKS.words]]);
  draw(log, "m1", null);
  expect(shown(log)).toEqual([["m2", MARKS.ring]]);
});

test("[RC80] two who mended one mark apart both see both, and one undo brings the mark before back", () => {
  const log = opened();
  draw(log, "m1", MARKS.arrow);
  const before = log.visit;
  for (const drawn of [MARKS.ring, MARKS.words]) log.add([draftMark(act(), before, HASH_A, "m1", drawn)]);
  expect(shown(log)).toHaveLength(2);
  const writer = log.entries[0]?.writer ?? "";
  const [last] = undoable(said(log), writer);
  log.add(draftUndo(act(), log.visit, last?.ids ?? []));
  expect(shown(log)).toEqual([["m1", MARKS.ring]]);
});

test("[RC81] a mark keeps no bytes: its picture's name is no reference, and neither is what it was taken after", () => {
  const log = opened();
  const entries = [draw(log, "m1", MARKS.arrow), added(log, draftAfter(act(), log.visit, HASH_A, "visit:u/w1/7/n7"))];
  expect(entries.flatMap(blobsOf)).toEqual([]);
});

test("[RC83] a picture names the one it was taken after; said again, the later word stands", () => {
  const log = opened();
  for (const after of ["visit:u/w1/7/n7", "visit:u/w1/8/n8"]) log.add([draftAfter(act(), log.visit, HASH_A, after)]);
  expect(
    said(log)
      .after.get(KEY)
      ?.map(({ value }) => value),
  ).toEqual(["visit:u/w1/8/n8"]);
});

test("[RC5] a picture of one's own is taken after none of the demo's", () => {
  const log = opened();
  const visit = log.visit;
  expect(() => draftAfter(act(), visit, HASH_A, "visit:demo-u/w1/7/n7")).toThrow("never mixes");
  const entry = added(log, draftAfter(act(), visit, HASH_A, "visit:u/w1/7/n7"));
  const mixed = { ...entry, body: { ...PICTURE_BODIES["picture.after"], after: "visit:demo-u/w1/7/n7" } };
  expect(faultsOf(mixed, {}, ALL_KINDS).map(({ code }) => code)).toEqual(["record.demo-mixed"]);
});

test("[RC84] the visit reports no mark and counts no trouble; only a newer mark is told by who looks at pictures", async () => {
  const log = opened();
  const mark = draw(log, "m1", MARKS.arrow);
  const newer: Entry = { ...mark, seq: mark.seq + 1, nonce: "later", v: 2, body: { more: 1 } };
  const all = [...log.entries, newer];
  expect(foldVisit(all).trouble.unknown).toEqual([]);
  expect((await summarise(mark.stream, all)).trouble).toBe(false);
  expect(foldPictures(all).trouble.unknown.map(({ why }) => why)).toEqual(["newer"]);
  const strange: Entry = { ...newer, kind: "pictures", v: 1 };
  expect(foldVisit([...log.entries, strange]).trouble.unknown.map(({ kind }) => kind)).toEqual(["pictures"]);
});

test("[RC30] an erased mark is gone, and what it had replaced does not come back", () => {
  const log = opened();
  draw(log, "m1", MARKS.arrow);
  draw(log, "m1", MARKS.ring);
  const ids =
    said(log)
      .marks.get(KEY)
      ?.map(({ stands }) => stands.id) ?? [];
  log.add(draftErase(act(), said(log), ids));
  expect(shown(log)).toEqual([]);
});

const body = (drawn: unknown) => ({ ...PICTURE_BODIES["picture.mark"], drawn });
const fits = (of: unknown) => PICTURE_KINDS["picture.mark"].check(of, "body");

test.each(Object.entries(MARKS))("[RC82] a mark as it should be is taken: %s", (_, drawn) => {
  expect(fits(body(drawn))).toBeUndefined();
});

test.each<readonly [string, unknown, string]>([
  ["a spot beside the picture", body({ ...MARKS.arrow, to: [1.01, 0] }), "body.drawn.to"],
  ["a spot of three figures", body({ ...MARKS.arrow, to: [1, 0, 0] }), "body.drawn.to"],
  ["a spot that is no number", body({ ...MARKS.ring, at: [Number.NaN, 0] }), "body.drawn.at"],
  ["words nobody wrote", body({ ...MARKS.words, words: "" }), "body.drawn.words"],
  ["words too long to be read over a picture", body({ ...MARKS.words, words: "x".repeat(61) }), "body.drawn.words"],
  ["a known length nobody typed", body({ ...MARKS.scale, known: { value: "", unit: "mm" } }), "body.drawn.known.value"],
  ["a length never off", body({ ...MARKS.length, pick: 0 }), "body.drawn.pick"],
  ["a length half a picture off", body({ ...MARKS.length, pick: 0.5 }), "body.drawn.pick"],
  ["a length by nothing", body({ ...MARKS.length, by: "" }), "body.drawn.by"],
  ["a mark nobody knows", body({ type: "heart", at: [0, 0] }), "body.drawn.type"],
  ["a bare hash", { ...body(MARKS.ring), picture: HASH_A }, "body.picture"],
])("[RC82] %s is found out", (_, of, path) => {
  expect(fits(of)?.path).toBe(path);
});
