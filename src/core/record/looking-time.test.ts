// The time there is for looking: what stands, and how much of it is left whatever became of app, phone and place.
import { expect, test } from "vitest";
import { act, opening } from "../../../tests/store/sample.js";
import { SampleLog } from "../../../tests/store/sample-log.js";
import { draftClock } from "./draft-judged.js";
import { draftVisit } from "./draft-visit.js";
import { goneOn, lookingTimeOf, timeLeft } from "./looking-time.js";
import { draftUndo } from "./undo.js";

const AT = Date.parse("2026-02-03T10:00+01:00");
const MIN = 60_000;
const FORTY = { from: "2026-02-03T10:00+01:00", minutes: 40 };

function opened(purpose: "viewing" | "workshop" = "viewing"): SampleLog {
  const log = new SampleLog("visit:v");
  log.add(draftVisit(act(), "visit:v", { ...opening("car:c"), purpose, on: FORTY.from }));
  return log;
}

test("[RC53] a viewing of which nothing was said has forty minutes from its opening, any other visit none", () => {
  expect(lookingTimeOf(opened().visit)).toEqual(FORTY);
  expect(lookingTimeOf(opened("workshop").visit)).toBeUndefined();
});

test("[RC53] taken away there is none, and undone the forty minutes are back", () => {
  const log = opened();
  const taken = log.add(draftClock(act(), log.visit, null));
  expect(lookingTimeOf(log.visit)).toBeUndefined();
  log.add(draftUndo(act(), log.visit, [taken]));
  expect(lookingTimeOf(log.visit)).toEqual(FORTY);
});

test("[RC53] of two that differ the one that ends first counts", () => {
  const log = opened();
  const apart = draftClock(act(), log.visit, { ...FORTY, minutes: 25 });
  log.add(draftClock(act(), log.visit, { ...FORTY, minutes: 60 }));
  log.add(apart, "w2");
  expect(log.visit.clock).toHaveLength(2);
  expect(lookingTimeOf(log.visit)?.minutes).toBe(25);
});

test("[RC53] what is left rests on the kept start alone, the same in another time zone and across summer time", () => {
  expect(timeLeft(FORTY, AT + 13 * MIN)).toEqual({ is: "running", seconds: 27 * 60 });
  expect(timeLeft({ ...FORTY, from: "2026-02-03T04:00-05:00" }, AT + 13 * MIN).seconds).toBe(27 * 60);
  // The night the clocks go forward: 01:50 winter time, 03:10 summer time, twenty minutes in between.
  const night = { from: "2026-03-29T01:50+01:00", minutes: 40 };
  expect(timeLeft(night, Date.parse("2026-03-29T03:10+02:00"))).toEqual({ is: "running", seconds: 20 * 60 });
});

test("[RC53] at the end it is over and says since when; half a day later it was another occasion", () => {
  expect(timeLeft(FORTY, AT + 40 * MIN)).toEqual({ is: "over", seconds: 0 });
  expect(timeLeft(FORTY, AT + 47 * MIN)).toEqual({ is: "over", seconds: 7 * 60 });
  expect(timeLeft(FORTY, AT + 12 * 60 * MIN).is).toBe("ended");
});

test("[RC53] a clock put back before the start is told and never made into more time than there was", () => {
  expect(timeLeft(FORTY, AT - 30_000)).toEqual({ is: "running", seconds: 40 * 60 });
  expect(timeLeft(FORTY, AT - 5 * MIN)).toEqual({ is: "unsure", seconds: 40 * 60 });
});

test("[RC53] stopped it stands still however long, and goes on with what was left", () => {
  const stopped = { ...FORTY, stopped: "2026-02-03T10:12:30+01:00" };
  expect(timeLeft(stopped, AT + 90 * MIN)).toEqual({ is: "stopped", seconds: 27.5 * 60 });
  const on = goneOn(stopped, AT + 90 * MIN, (wall) => new Date(wall).toISOString());
  expect(on).not.toHaveProperty("stopped");
  expect(timeLeft(on, AT + 90 * MIN)).toEqual({ is: "running", seconds: 27.5 * 60 });
  expect(timeLeft(on, AT + 100 * MIN).seconds).toBe(17.5 * 60);
});
