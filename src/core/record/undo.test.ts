import { expect, test } from "vitest";
import { act, HASH_A, key, notReached, opening, words } from "../../../tests/store/sample.js";
import { SampleLog } from "../../../tests/store/sample-log.js";
import { keyText } from "../terms/index.js";
import type { IdText } from "./contract.js";
import { draftErase } from "./draft-erase.js";
import { draftNote, draftPicture } from "./draft-more.js";
import { draftReply, draftVisit } from "./draft-visit.js";
import { idText } from "./identity.js";
import { draftRedo, redoable } from "./redo.js";
import { draftUndo, undoable } from "./undo.js";

const spin = key("whl.spin");
const rock = key("whl.rock");

function opened(): SampleLog {
  const log = new SampleLog();
  log.add(draftVisit(act(), "visit:v", opening("car:c")));
  return log;
}
const say = (log: SampleLog, said: string, at = spin, writer = "w1"): IdText =>
  log.add(draftReply(act(), log.visit, at, words(said)), writer);
const undo = (log: SampleLog, ids: readonly IdText[], writer = "w1"): IdText =>
  log.add(draftUndo(act(), log.visit, ids), writer);
const shown = (log: SampleLog): readonly string[] =>
  [...log.visit.replies.values()].flatMap(({ standing }) =>
    standing.map(({ value }) => (value.type === "words" ? (value.words[0] ?? "") : value.type)),
  );
const stepUndo = (log: SampleLog, writer = "w1"): void => {
  log.add(draftUndo(act(), log.visit, undoable(log.visit, writer)[0]?.ids ?? []), writer);
};
const stepRedo = (log: SampleLog, writer = "w1"): void => {
  log.add(draftRedo(act(), log.visit, redoable(log.visit, writer)[0]?.ids ?? []), writer);
};

test("[RC25] an undone reply neither stands nor replaces: the one before stands again", () => {
  const log = opened();
  say(log, "smooth");
  undo(log, [say(log, "rough")]);
  expect(shown(log)).toEqual(["smooth"]);
});

test("[RC25] undo of undo brings it back, to any depth", () => {
  const log = opened();
  say(log, "smooth");
  let last = say(log, "rough");
  for (let depth = 1; depth <= 7; depth++) {
    last = undo(log, [last]);
    expect(shown(log)).toEqual([depth % 2 === 1 ? "smooth" : "rough"]);
  }
});

test("[RC25] undone by two, brought back only when both undos are undone", () => {
  const log = opened();
  const said = say(log, "rough");
  const seen = log.visit;
  const one = log.add(draftUndo(act(), seen, [said]), "w1");
  const other = log.add(draftUndo(act(), seen, [said]), "w2");
  undo(log, [one]);
  expect(shown(log)).toEqual([]);
  undo(log, [other]);
  expect(shown(log)).toEqual(["rough"]);
});

test("[RC26] undos that name one another in a ring undo nothing", () => {
  const log = opened();
  const said = say(log, "rough");
  const [first] = draftUndo(act(), log.visit, [said]);
  const [second] = draftUndo(act(), log.visit, [said]);
  if (!first || !second) throw new Error("no drafts");
  log.add({ ...first, body: { of: [said, `visit:v/w1/4/${second.nonce}`] } });
  log.add({ ...second, body: { of: [`visit:v/w1/3/${first.nonce}`] } });
  expect(shown(log)).toEqual(["rough"]);
  // A third one outside the ring decides it.
  undo(log, [`visit:v/w1/4/${second.nonce}`], "w2");
  expect(shown(log)).toEqual([]);
});

test("[RC27] several steps back, newest first, and forward again", () => {
  const log = opened();
  for (const said of ["smooth", "rough", "notchy"]) say(log, said);
  const seen: string[] = [];
  for (let i = 0; i < 3; i++) {
    stepUndo(log);
    seen.push(shown(log).join());
  }
  expect(seen).toEqual(["rough", "smooth", ""]);
  expect(undoable(log.visit, "w1")).toEqual([]);
  for (let i = 0; i < 3; i++) {
    stepRedo(log);
    seen.push(shown(log).join());
  }
  expect(seen.slice(3)).toEqual(["smooth", "rough", "notchy"]);
  expect(redoable(log.visit, "w1")).toEqual([]);
  stepUndo(log);
  expect(shown(log)).toEqual(["rough"]);
});

test("[RC27] an act of many entries is one step", () => {
  const log = opened();
  const one = act();
  const places = ["FL", "FR", "RL", "RR"];
  log.add(places.map((place) => draftReply(one, log.visit, { ...rock, place }, words("none"))));
  expect(undoable(log.visit, "w1").map(({ ids, kinds }) => [ids.length, kinds])).toEqual([[4, ["reply"]]]);
  stepUndo(log);
  expect(log.visit.replies.size).toBe(0);
  expect(redoable(log.visit, "w1")).toHaveLength(1);
  stepRedo(log);
  expect(log.visit.replies.size).toBe(4);
});

test("[RC27] one's own acts only; opening, undo and erasing are no steps", () => {
  const log = opened();
  say(log, "rough", spin, "w2");
  const note = log.add(draftNote(act(), log.visit, { text: "x" }), "w1");
  log.add(draftErase(act(), log.visit, [note]), "w1");
  expect(undoable(log.visit, "w1")).toEqual([]);
  expect(undoable(log.visit, "w2").map(({ kinds }) => kinds)).toEqual([["reply"]]);
});

test("[RC27] a clock set back does not change what comes first", () => {
  const log = opened();
  say(log, "smooth");
  log.add(draftReply({ ...act(), at: { wall: 1000, count: 0 } }, log.visit, spin, words("rough")));
  stepUndo(log);
  expect(shown(log)).toEqual(["smooth"]);
});

test("[RC28] a new act ends what could be redone", () => {
  const log = opened();
  say(log, "smooth");
  stepUndo(log);
  expect(redoable(log.visit, "w1")).toHaveLength(1);
  say(log, "notchy", rock);
  expect(redoable(log.visit, "w1")).toEqual([]);
});

test("[RC28] undone by another, it is not mine to redo", () => {
  const log = opened();
  const said = say(log, "smooth");
  undo(log, [said], "w2");
  expect(undoable(log.visit, "w1")).toEqual([]);
  expect(redoable(log.visit, "w1")).toEqual([]);
  expect(redoable(log.visit, "w2")).toHaveLength(1);
});

test("undo leaves out what is undone already, or not here", () => {
  const log = opened();
  const said = say(log, "smooth");
  undo(log, [said]);
  expect(draftUndo(act(), log.visit, [said, "visit:v/w9/1/n"])).toEqual([]);
});

test("undoing a non-answer gives the fields their replies back", () => {
  const log = opened();
  say(log, "smooth");
  log.add(draftReply(act(), log.visit, key("whl.spin", "heat"), words("warm")));
  undo(log, [log.add(draftReply(act(), log.visit, spin, notReached))]);
  expect([...log.visit.replies.keys()].sort()).toEqual([keyText(key("whl.spin", "heat")), keyText(spin)].sort());
});

test("undoing the opening leaves the replies and no opening", () => {
  const log = opened();
  say(log, "rough");
  undo(log, log.entries.slice(0, 1).map(idText));
  expect(log.visit.opened).toBeUndefined();
  expect([log.visit.sheets, log.visit.on, log.visit.odometer]).toEqual([[], [], []]);
  expect(shown(log)).toEqual(["rough"]);
});

test("[RC29] what an erasure names counts as gone, whether its body is here, stubbed or absent", () => {
  const log = opened();
  const picture = log.add(draftPicture(act(), log.visit, { blob: HASH_A, type: "image/jpeg", width: 1, height: 1 }));
  log.add(draftErase(act(), log.visit, [picture]));
  expect([log.visit.pictures, log.visit.trouble.erased]).toEqual([[], 1]);
});

test("[RC29] an erasure reaches its own stream only, and no other erasure", () => {
  const log = opened();
  const said = say(log, "rough");
  const [draft] = draftErase(act(), log.visit, [said]);
  if (!draft) throw new Error("no draft");
  const erasure = log.add(draft);
  expect(draftErase(act(), log.visit, [erasure])).toEqual([]);
  log.add({ ...draft, nonce: "again", body: { of: [{ id: erasure }, { id: "visit:other/w1/1/n" }] } });
  expect([shown(log), log.visit.trouble.erased]).toEqual([[], 1]);
});

test("[RC30] an erased reply brings nothing older back, wherever it stood in the line", () => {
  const log = opened();
  say(log, "smooth");
  const second = say(log, "rough");
  const third = say(log, "notchy");
  log.add(draftErase(act(), log.visit, [second]));
  expect(shown(log)).toEqual(["notchy"]);
  log.add(draftErase(act(), log.visit, [third]));
  expect(shown(log)).toEqual([]);
});

test("[RC30] an erased settlement still settles; undoing it opens the question again", () => {
  const log = opened();
  const apart = log.visit;
  log.add(draftReply(act(), apart, spin, words("smooth")), "w1");
  log.add(draftReply(act(), apart, spin, words("rough")), "w2");
  const settled = say(log, "notchy");
  log.add(draftErase(act(), log.visit, [settled]));
  expect(shown(log)).toEqual([]);
  undo(log, [settled]);
  expect(shown(log)).toEqual(["smooth", "rough"]);
});

test("erasing an undo takes its effect away", () => {
  const log = opened();
  const undone = undo(log, [say(log, "rough")]);
  expect(shown(log)).toEqual([]);
  log.add(draftErase(act(), log.visit, [undone]));
  expect(shown(log)).toEqual(["rough"]);
});
