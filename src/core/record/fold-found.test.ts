// What a person adds to a visit beside the points asked: findings off the list, and the time there is for looking.
import { expect, test } from "vitest";
import { act, opening } from "../../../tests/store/sample.js";
import { SampleLog } from "../../../tests/store/sample-log.js";
import type { FreeFinding } from "./contract.js";
import { draftErase } from "./draft-erase.js";
import { draftClock, draftFinding } from "./draft-judged.js";
import { draftVisit } from "./draft-visit.js";
import { draftUndo } from "./undo.js";

const WIRE: FreeFinding = {
  place: "RL",
  words: "wire round the arm",
  grade: "major",
  reason: "nothing else holds it",
  mustStand: false,
};

function opened(): SampleLog {
  const log = new SampleLog("visit:v");
  log.add(draftVisit(act(), "visit:v", opening("car:c")));
  return log;
}

test("[RC52] a finding off the list is mended under its own name, differs where two mend it apart, and null takes it back", () => {
  const log = opened();
  log.add(draftFinding(act(), log.visit, "f1", WIRE));
  log.add(draftFinding(act(), log.visit, "f2", { ...WIRE, place: "FR" }));
  const apart = draftFinding(act(), log.visit, "f1", { ...WIRE, mustStand: true });
  const mended = log.add(draftFinding(act(), log.visit, "f1", { ...WIRE, place: "RR", job: { words: "mend it" } }));
  expect([...log.visit.found].map(([id, all]) => [id, all.map(({ value }) => value.place)])).toEqual([
    ["f1", ["RR"]],
    ["f2", ["FR"]],
  ]);
  const other = log.add(apart, "w2");
  expect(new Set(log.visit.found.get("f1")?.map(({ id }) => id))).toEqual(new Set([mended, other]));
  log.add(draftFinding(act(), log.visit, "f1", null));
  expect([...log.visit.found.keys()]).toEqual(["f2"]);
});

test("[RC52] undone, a mended finding is as it was; erased, it is gone and what it had replaced stays replaced", () => {
  const log = opened();
  log.add(draftFinding(act(), log.visit, "f1", WIRE));
  const mended = log.add(draftFinding(act(), log.visit, "f1", { ...WIRE, grade: "dangerous" }));
  const grades = () => log.visit.found.get("f1")?.map(({ value }) => value.grade);
  const undos = draftUndo(act(), log.visit, [mended]).map((undo) => log.add(undo));
  expect(grades()).toEqual(["major"]);
  for (const again of draftUndo(act(), log.visit, undos)) log.add(again);
  expect(grades()).toEqual(["dangerous"]);
  for (const erase of draftErase(act(), log.visit, [mended])) log.add(erase);
  expect(grades()).toBeUndefined();
});

test("[RC53] the time for looking is set, set anew and taken away", () => {
  const log = opened();
  log.add(draftClock(act(), log.visit, { from: "2026-02-03T10:00Z", minutes: 40 }));
  log.add(draftClock(act(), log.visit, { from: "2026-02-03T10:20Z", minutes: 30 }));
  expect(log.visit.clock.map(({ value }) => value.minutes)).toEqual([30]);
  log.add(draftClock(act(), log.visit, null));
  expect(log.visit.clock).toEqual([]);
});
