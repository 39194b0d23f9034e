// The time for looking on the top line: minutes begun, strokes of the ruler, what is said aloud and when.
import { expect, test } from "vitest";
import { act, opening } from "../../../tests/store/sample.js";
import { SampleLog } from "../../../tests/store/sample-log.js";
import { draftClock, draftVisit } from "../../core/record/index.js";
import { viewingClock } from "./viewing-clock.js";

const FROM = "2026-02-03T10:00+01:00";
const at = (minutes: number): number => Date.parse(FROM) + minutes * 60_000;

function viewing(): SampleLog {
  const log = new SampleLog("visit:v");
  log.add(draftVisit(act(), "visit:v", { ...opening("car:c"), purpose: "viewing", on: FROM }));
  return log;
}
const strokes = (now: number): string =>
  viewingClock(viewing().visit, now)
    ?.ticks.map((tick) => ({ done: "|", here: "I", open: "." })[tick])
    .join("") ?? "";

test("minutes begun count as left, and the ruler has a stroke for every eighth of the time", () => {
  expect(viewingClock(viewing().visit, at(0))).toMatchObject({ is: "running", left: 40, minutes: 40, until: at(40) });
  expect(viewingClock(viewing().visit, at(12.2))).toMatchObject({ left: 28 });
  expect([strokes(at(0)), strokes(at(4.9)), strokes(at(5)), strokes(at(39)), strokes(at(55))]).toEqual([
    "I.......",
    "I.......",
    "|I......",
    "|||||||I",
    "||||||||",
  ]);
});

test("it is said aloud at ten and at five minutes left and when it is up, and at no other moment", () => {
  const said = Array.from({ length: 60 }, (_, minute) => viewingClock(viewing().visit, at(minute))?.said);
  expect(said.map((one, minute) => (one === said[minute - 1] ? undefined : [minute, one])).filter(Boolean)).toEqual([
    [30, 10],
    [35, 5],
    [40, 0],
  ]);
});

test("stopped it says nothing aloud and keeps its minutes; taken away there is none", () => {
  const log = viewing();
  log.add(draftClock(act(), log.visit, { from: FROM, minutes: 40, stopped: "2026-02-03T10:33+01:00" }));
  expect(viewingClock(log.visit, at(300))).toMatchObject({ is: "stopped", left: 7, said: undefined });
  log.add(draftClock(act(), log.visit, null));
  expect(viewingClock(log.visit, at(1))).toBeUndefined();
});

test("on another day there is no clock any more", () => {
  expect(viewingClock(viewing().visit, at(60 * 24))).toBeUndefined();
});
