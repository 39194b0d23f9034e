import { expect, test } from "vitest";
import { act, HASH_A, HASH_B, HASH_C, key, notReached, opening, reading, words } from "../../../tests/store/sample.js";
import { SampleLog } from "../../../tests/store/sample-log.js";
import { keyText, type ReplyKey, type ReplyValue } from "../terms/index.js";
import type { Draft, IdText, VisitState } from "./contract.js";
import { draftClose, draftJudgedAgain, draftRegrade, draftReopen, draftTold } from "./draft-judged.js";
import { draftNote, draftOdometer, draftPicture, draftSettle, draftSheet, draftSound } from "./draft-more.js";
import { draftComplaint, draftDate, draftReply, draftVisit } from "./draft-visit.js";
import { foldVisit } from "./fold-visit.js";
import { replySlot } from "./kinds.js";
import { historyOf } from "./redo.js";
import { draftUndo } from "./undo.js";

/** Says it in view of what stands, as a screen does. */
const say = (log: SampleLog, at: ReplyKey, value: ReplyValue | null, writer = "w1"): IdText =>
  log.add(draftReply(act(), log.visit, at, value), writer);
/** Says it without having seen anything, as another phone does. */
const sayApart = (log: SampleLog, at: ReplyKey, value: ReplyValue | null, writer: string): IdText =>
  log.add(draftReply(act(), new SampleLog(log.stream).visit, at, value), writer);
const shown = (log: SampleLog, at: ReplyKey): readonly unknown[] =>
  (log.visit.replies.get(keyText(at))?.standing ?? []).map(({ value }) =>
    value.type === "words" ? value.words[0] : value.type,
  );
const differs = (log: SampleLog, at: ReplyKey): boolean | undefined => log.visit.replies.get(keyText(at))?.differ;

const spin = key("whl.spin");
const heat = key("whl.spin", "heat");
const whole = key("whl.spin", "*");
const spinAt = { point: spin.point, place: spin.place, state: spin.state };

test("[RC14] a later reply stands in place of the earlier one", () => {
  const log = new SampleLog();
  say(log, spin, words("smooth"));
  say(log, spin, words("rough"));
  expect(shown(log, spin)).toEqual(["rough"]);
  expect(differs(log, spin)).toBe(false);
});

test("[RC14] two who did not see each other's reply both stand and differ; equal ones do not", () => {
  const log = new SampleLog();
  sayApart(log, spin, words("smooth"), "w1");
  sayApart(log, spin, words("rough"), "w2");
  expect(shown(log, spin)).toEqual(["smooth", "rough"]);
  expect(differs(log, spin)).toBe(true);
  sayApart(log, heat, words("warm"), "w1");
  sayApart(log, heat, words("warm"), "w2");
  expect(shown(log, heat)).toEqual(["warm", "warm"]);
  expect(differs(log, heat)).toBe(false);
});

test("[RC15] replaces counts inside the point, place and state only", () => {
  const log = new SampleLog();
  const elsewhere = say(log, key("whl.rock"), words("clear"));
  log.add({
    ...draftReply(act(), log.visit, spin, words("rough")),
    body: { key: spin, value: words("rough"), replaces: [elsewhere] },
  });
  expect(shown(log, key("whl.rock"))).toEqual(["clear"]);
});

test("[RC15] who replaced an entry replaced what that one had replaced, also once it is undone", () => {
  const log = new SampleLog();
  say(log, spin, words("smooth"));
  const second = say(log, spin, words("rough"));
  say(log, spin, words("notchy"), "w2");
  log.add({ ...draftNote(act(), log.visit, { text: "" }), kind: "undo", body: { of: [second] } });
  expect(shown(log, spin)).toEqual(["notchy"]);
});

test("[RC16] entries that replace each other in a ring all stand", () => {
  const log = new SampleLog();
  const a = draftReply(act(), log.visit, spin, words("smooth"));
  const b = draftReply(act(), log.visit, spin, words("rough"));
  log.add({ ...a, body: { key: spin, value: words("smooth"), replaces: [`visit:v/w1/2/${b.nonce}`] } });
  log.add({ ...b, body: { key: spin, value: words("rough"), replaces: [`visit:v/w1/1/${a.nonce}`] } });
  expect(shown(log, spin)).toEqual(["smooth", "rough"]);
  say(log, spin, words("notchy"));
  expect(shown(log, spin)).toEqual(["notchy"]);
});

test("[RC17] null takes a field's reply back and stands for nothing", () => {
  const log = new SampleLog();
  say(log, spin, words("smooth"));
  say(log, heat, words("warm"));
  say(log, spin, null);
  expect(log.visit.replies.has(keyText(spin))).toBe(false);
  expect(shown(log, heat)).toEqual(["warm"]);
  say(log, whole, null);
  expect(log.visit.replies.size).toBe(0);
});

test("[RC17] a reply after taking back stands alone, also when the taking back is undone", () => {
  const log = new SampleLog();
  say(log, spin, words("smooth"));
  const taken = say(log, spin, null);
  say(log, spin, words("rough"));
  log.add({ ...draftNote(act(), log.visit, { text: "" }), kind: "undo", body: { of: [taken] } });
  expect(shown(log, spin)).toEqual(["rough"]);
});

test("[RC19] equal replies: words in any order, readings as typed, a non-answer whatever was said beside it", () => {
  const pairs: readonly (readonly [ReplyValue, ReplyValue, boolean])[] = [
    [words("split", "greasy"), words("greasy", "split"), true],
    [words("split"), words("split", "greasy"), false],
    [reading("0.22"), reading("0.22"), true],
    [reading("0.22"), reading("0.220"), false],
    [
      reading("0.22"),
      { type: "reading", values: ["0.22"], unit: "mm", gauge: { resolution: 0.01, error: 0.02 } },
      false,
    ],
    [{ ...notReached, words: "under the tray" } as ReplyValue, notReached, true],
    [{ type: "non-answer", nonAnswer: "not-reached", reason: "too-hot" }, notReached, false],
  ];
  for (const [one, other, isSame] of pairs) {
    const log = new SampleLog();
    sayApart(log, spin, one, "w1");
    sayApart(log, spin, other, "w2");
    expect([...log.visit.replies.values()].map(({ differ }) => differ)).toEqual([!isSame]);
  }
});

test("[RC21] answering a field replaces a non-answer for the whole point; the other fields then have no reply", () => {
  const log = new SampleLog();
  say(log, spin, words("smooth"));
  say(log, heat, words("warm"));
  say(log, whole, notReached);
  expect([...log.visit.replies.keys()]).toEqual([keyText(whole)]);
  say(log, spin, words("rough"));
  expect([...log.visit.replies.keys()]).toEqual([keyText(spin)]);
});

test("[RC22] a non-answer replaces every field's reply, whatever field it was drafted for", () => {
  const log = new SampleLog();
  say(log, spin, words("smooth"));
  say(log, heat, words("warm"));
  say(log, spin, notReached);
  expect(shown(log, whole)).toEqual(["non-answer"]);
  expect(log.visit.replies.size).toBe(1);
});

test("[RC23] an answer and a non-answer apart both stand, under their own keys, and differ", () => {
  const log = new SampleLog();
  sayApart(log, spin, words("rough"), "w1");
  sayApart(log, whole, notReached, "w2");
  expect(shown(log, spin)).toEqual(["rough"]);
  expect(shown(log, whole)).toEqual(["non-answer"]);
  expect([differs(log, spin), differs(log, whole)]).toEqual([true, true]);
});

test("[RC24] settling says the chosen reply again in place of all it contradicts", () => {
  const log = new SampleLog();
  const one = sayApart(log, spin, words("smooth"), "w1");
  sayApart(log, spin, words("rough"), "w2");
  sayApart(log, spin, words("notchy"), "w3");
  sayApart(log, heat, words("warm"), "w3");
  log.add(draftSettle(act(), log.visit, spin, one), "w2");
  expect(shown(log, spin)).toEqual(["smooth"]);
  expect(differs(log, spin)).toBe(false);
  expect(shown(log, heat)).toEqual(["warm"]);
  expect(() => draftSettle(act(), log.visit, spin, one)).toThrow("does not stand");
});

test("[RC24] settling between an answer and a non-answer goes both ways", () => {
  for (const isAnswer of [true, false]) {
    const log = new SampleLog();
    const answer = sayApart(log, spin, words("rough"), "w1");
    sayApart(log, heat, words("warm"), "w1");
    const none = sayApart(log, whole, notReached, "w2");
    log.add(draftSettle(act(), log.visit, spin, isAnswer ? answer : none));
    expect([...log.visit.replies.keys()].sort()).toEqual(
      (isAnswer ? [keyText(heat), keyText(spin)] : [keyText(whole)]).sort(),
    );
    expect([...log.visit.replies.values()].every(({ differ }) => !differ)).toBe(true);
  }
});

test("[RC8] a clock ten years ahead wins nothing: both stand, and a later word in view of it replaces it", () => {
  const log = new SampleLog();
  log.add(draftReply(act(2_085_000_000_000), log.visit, spin, words("smooth")), "w2");
  sayApart(log, spin, words("rough"), "w1");
  expect(shown(log, spin)).toEqual(["rough", "smooth"]);
  say(log, spin, words("notchy"));
  expect(shown(log, spin)).toEqual(["notchy"]);
});

test("the history of a point keeps everything said there", () => {
  const log = new SampleLog();
  const first = say(log, spin, words("smooth"));
  const second = say(log, spin, words("rough"));
  log.add({ ...draftNote(act(), log.visit, { text: "" }), kind: "undo", body: { of: [second] } });
  say(log, spin, words("notchy"), "w2");
  const past = historyOf(log.visit, replySlot(spin));
  expect(past.map(({ is }) => is)).toEqual(["replaced", "undone", "standing"]);
  expect(past[0]?.id).toBe(first);
});

function opened(stream = "visit:v"): SampleLog {
  const log = new SampleLog(stream);
  log.add(draftVisit(act(), stream, opening("car:c")));
  return log;
}

test("[RC18] date and odometer start as the visit was opened with and are corrected like anything else", () => {
  const log = opened();
  expect(log.visit.on.map(({ value }) => value)).toEqual(["2026-02-03T09:30+01:00"]);
  expect(log.visit.odometer.map(({ value }) => value)).toEqual([{ value: "61 240", unit: "km" }]);
  log.add(draftDate(act(), log.visit, "2026-02-02T16:00+01:00"));
  log.add(draftOdometer(act(), log.visit, { value: "61 204", unit: "km" }));
  expect(log.visit.on.map(({ value }) => value)).toEqual(["2026-02-02T16:00+01:00"]);
  expect(log.visit.odometer.map(({ value }) => value)).toEqual([{ value: "61 204", unit: "km" }]);
  expect(log.visit.opened?.value.car).toBe("car:c");
});

test("[RC51] sounds of one point stand side by side, each with its length; one cut off says so", () => {
  const log = new SampleLog();
  const sound = { blob: HASH_A, type: "audio/webm;codecs=opus", ms: 4200, ...spinAt };
  log.add(draftSound(act(), log.visit, sound));
  log.add(draftSound(act(), log.visit, { ...sound, blob: HASH_B, place: "FL", ms: 0, cut: true }));
  expect(log.visit.sounds.map(({ value }) => [value.place, value.ms, value.cut])).toEqual([
    ["FR", 4200, undefined],
    ["FL", 0, true],
  ]);
});

test("[RC51] a sound taken back no longer stands and comes back with its undo undone", () => {
  const log = new SampleLog();
  const id = log.add(draftSound(act(), log.visit, { blob: HASH_A, type: "audio/mp4", ms: 1, ...spinAt }));
  const undo = log.add({ ...draftUndo(act(), log.visit, [id])[0] } as Draft);
  expect(log.visit.sounds).toEqual([]);
  log.add({ ...draftUndo(act(), log.visit, [undo])[0] } as Draft);
  expect(log.visit.sounds).toHaveLength(1);
});

test("[RC18] notes, complaints and pictures stand side by side; naming one puts the new one in its place", () => {
  const log = opened();
  const note = log.add(draftNote(act(), log.visit, { text: "weld at the lower tube" }));
  log.add(draftNote(act(), log.visit, { text: "new bolts" }));
  log.add(draftNote(act(), log.visit, { text: "weld at the upper tube" }, [note]));
  expect(log.visit.notes.map(({ value }) => value.text)).toEqual(["new bolts", "weld at the upper tube"]);
  const said = log.add(draftComplaint(act(), log.visit, { text: "hums when warm", complaint: "hum" }));
  log.add(draftComplaint(act(), log.visit, { text: "hums when warm, left bends only", complaint: "hum" }, [said]));
  expect(log.visit.complaints.map(({ value }) => value.text)).toEqual(["hums when warm, left bends only"]);
  const picture = { blob: HASH_A, type: "image/jpeg", width: 4, height: 3, point: "whl.seal", place: "FR" };
  const wrong = log.add(draftPicture(act(), log.visit, picture));
  log.add(draftPicture(act(), log.visit, { ...picture, place: "FL" }, [wrong]));
  expect(log.visit.pictures.map(({ value }) => value.place)).toEqual(["FL"]);
});

test("[RC18] a grade by hand stands per fault and place, and null gives the rules' own back", () => {
  const log = opened();
  const hand = { fault: "whl.race", place: "FR", reason: "noise grew on the road" };
  log.add(draftRegrade(act(), log.visit, { ...hand, grade: "dangerous" }));
  log.add(draftRegrade(act(), log.visit, { ...hand, place: "FL", grade: "minor" }));
  expect([...log.visit.regrades].map(([at, list]) => [at, list.map(({ value }) => value.grade)])).toEqual([
    ["whl.race@FR", ["dangerous"]],
    ["whl.race@FL", ["minor"]],
  ]);
  log.add(draftRegrade(act(), log.visit, { ...hand, grade: null }));
  expect([...log.visit.regrades.keys()]).toEqual(["whl.race@FL"]);
});

test("cautions told are kept, each time", () => {
  const log = opened();
  log.add(draftTold(act(), log.visit, "cau.to-workshop"));
  log.add(draftTold(act(), log.visit, "cau.to-workshop"));
  expect(log.visit.told).toHaveLength(2);
});

test("[RC35] closed, reopened, closed again: every judgement stays in the list", () => {
  const log = opened();
  log.add(draftClose(act(), log.visit, { assessment: HASH_A, engine: "1" }));
  expect(log.visit.closed?.value.assessment).toBe(HASH_A);
  log.add(draftReopen(act(), log.visit, "the other side too"));
  expect(log.visit.closed).toBeUndefined();
  expect(log.visit.reopened.map(({ value }) => value.reason)).toEqual(["the other side too"]);
  log.add(draftClose(act(), log.visit, { assessment: HASH_B, engine: "1" }));
  expect(log.visit.closed?.value.assessment).toBe(HASH_B);
  expect(log.visit.closings.map(({ value }) => value.assessment)).toEqual([HASH_A, HASH_B]);
});

const again = { before: HASH_B, after: HASH_C, engine: "2", common: HASH_C, limits: HASH_C };
const newerWheels = { id: "whl", edition: "e2", label: "Wheel bearings 2", blob: HASH_B };
const frozenIn = (visit: VisitState) => [visit.frozen, visit.sheets.map(({ id, edition }) => `${id} ${edition}`)];

test("[RC50] judged again: other sheets and limits judge from here on, and undo brings back those before", () => {
  const log = opened();
  const before = frozenIn(log.visit);
  log.add(draftJudgedAgain(act(), log.visit, { ...again, sheets: [newerWheels] }));
  const first = frozenIn(log.visit);
  expect(first).toEqual([{ common: HASH_C, limits: HASH_C }, ["whl e2"]]);
  log.add(draftJudgedAgain(act(), log.visit, { ...again, sheets: [newerWheels], limits: HASH_A }));
  expect(log.visit.frozen?.limits).toBe(HASH_A);
  expect(log.visit.judgedAgain).toHaveLength(2);
  const [one, two] = log.visit.judgedAgain.map(({ id }) => id);
  for (const draft of draftUndo(act(), log.visit, [two ?? ""])) log.add(draft);
  expect(frozenIn(log.visit)).toEqual(first);
  for (const draft of draftUndo(act(), log.visit, [one ?? ""])) log.add(draft);
  expect(frozenIn(log.visit)).toEqual(before);
  expect(log.visit.judgedAgain).toEqual([]);
});

test("[RC50] a phone whose clock ran ahead when it opened the visit does not keep it from being judged again", () => {
  const log = opened();
  const early = draftJudgedAgain(act(), log.visit, { ...again, sheets: [newerWheels] });
  log.add({ ...early, at: { wall: 1, count: 0 } });
  expect(frozenIn(log.visit)).toEqual([{ common: HASH_C, limits: HASH_C }, ["whl e2"]]);
  log.add(draftSheet(act(), log.visit, { id: "brk", edition: "e1", label: "Brakes 1", blob: HASH_C }));
  expect(log.visit.sheets.map(({ id }) => id)).toEqual(["whl", "brk"]);
});

test("[RC50] judging again as it was first written stays in the list and judges nothing", () => {
  const log = opened();
  const before = frozenIn(log.visit);
  const { common: _common, limits: _limits, ...first } = again;
  const asThen = { ...draftJudgedAgain(act(), log.visit, { ...again, sheets: [] }), v: 1 };
  log.add({ ...asThen, body: { ...first, sheets: [newerWheels] } });
  expect(log.visit.judgedAgain.map(({ value }) => value.after)).toEqual([HASH_C]);
  expect(log.visit.trouble.unknown).toEqual([]);
  expect(frozenIn(log.visit)).toEqual(before);
});

test("[RC35] reopened on one phone while closed again on another: it is open", () => {
  const log = opened();
  log.add(draftClose(act(), log.visit, { assessment: HASH_A, engine: "1" }));
  const seen = log.visit;
  log.add(draftReopen(act(), seen, "more"), "w2");
  log.add(draftClose(act(), seen, { assessment: HASH_B, engine: "1" }), "w3");
  expect(log.visit.closed).toBeUndefined();
  expect(log.visit.closings).toHaveLength(2);
});

test("[RC34] visits of one occasion fold as one: earliest opening, newest frozen edition of each sheet, both logs", () => {
  const here = opened("visit:a");
  const there = new SampleLog("visit:b");
  const newer = { id: "whl", edition: "e2", label: "Wheel bearings 2", blob: HASH_B };
  there.add(
    draftVisit(act(), "visit:b", opening("car:c", { sheets: [newer], limits: HASH_A, on: "2026-02-03T09:40+01:00" })),
    "w2",
  );
  there.add(draftSheet(act(), there.visit, { id: "brk", edition: "e1", label: "Brakes 1", blob: HASH_C }), "w2");
  say(here, spin, words("smooth"));
  sayApart(there, spin, words("rough"), "w2");
  const entries = [...there.entries, ...here.entries];
  const joined = foldVisit(entries);
  expect([joined.stream, joined.streams]).toEqual(["visit:a", ["visit:a", "visit:b"]]);
  expect(joined.sheets.map(({ id, edition }) => `${id} ${edition}`)).toEqual(["whl e2", "brk e1"]);
  expect(joined.frozen).toEqual({ common: HASH_B, limits: HASH_A });
  expect(joined.replies.get(keyText(spin))?.differ).toBe(true);
  const chosen = joined.replies.get(keyText(spin))?.standing[1]?.id ?? "";
  const settled = { ...draftSettle(act(), joined, spin, chosen), writer: "w1", seq: 3 };
  expect(foldVisit([...entries, settled]).replies.get(keyText(spin))?.standing).toHaveLength(1);
});

test("[RC13] any part of a visit's log is a visit", () => {
  const log = opened();
  say(log, spin, words("smooth"));
  say(log, spin, words("rough"));
  const [, second, third] = log.entries;
  if (!second || !third) throw new Error("no entries");
  const part = foldVisit([third]);
  expect(part.opened).toBeUndefined();
  expect(part.trouble.gaps).toEqual([{ stream: "visit:v", writer: "w1", from: 1, to: 2 }]);
  expect(part.replies.size).toBe(1);
  expect(foldVisit([third, second]).trouble.gaps).toEqual([{ stream: "visit:v", writer: "w1", from: 1, to: 1 }]);
});

test("[RC4] what is not known here has no effect and is reported with the reason", () => {
  const log = opened();
  const note = draftNote(act(), log.visit, { text: "x" });
  log.add({ ...note, kind: "from.later" });
  log.add({ ...note, nonce: "b", v: 2 });
  log.add({ ...note, nonce: "c", body: { text: 7 } });
  log.add({ ...note, nonce: "d", kind: "car.named", body: { name: "x", replaces: [] } });
  expect(log.visit.notes).toEqual([]);
  expect(log.visit.trouble.unknown.map(({ kind, v, why }) => `${kind} ${v} ${why}`).sort()).toEqual(
    ["from.later 1 kind", "note 2 newer", "note 1 body", "car.named 1 stream"].sort(),
  );
  expect(log.visit.trouble.gaps).toEqual([]);
});

test("entries of another kind of stream are left out", () => {
  const log = opened();
  log.add({ ...draftNote(act(), log.visit, { text: "x" }), stream: "car:c" });
  expect(log.visit.streams).toEqual(["visit:v"]);
});
