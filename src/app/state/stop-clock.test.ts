import { expect, test } from "vitest";
import type { TextShelf } from "./settings.js";
import { markStopped, stopClock, stoppedAt } from "./stop-clock.js";

const NOW = 1_770_000_000_000;
const after = (seconds: number) => stopClock(NOW, NOW + seconds * 1000, 180);

test("three minutes run down from the stop and then say how long they are over", () => {
  expect(after(0)).toEqual({ is: "running", figure: "3:00" });
  expect(after(55)).toEqual({ is: "running", figure: "2:05" });
  expect(after(179.9)).toEqual({ is: "running", figure: "0:01" });
  expect(after(180)).toEqual({ is: "over", figure: "0:00" });
  expect(after(265)).toEqual({ is: "over", figure: "1:25" });
});

test("no stop, one of an hour ago and one of a clock set back are no stop", () => {
  for (const clock of [stopClock(undefined, NOW, 180), after(3600), after(-1)])
    expect(clock).toEqual({ is: "not started", figure: "3:00" });
});

test("the stop is remembered for its own visit", () => {
  const kept = new Map<string, string>();
  const shelf: TextShelf = {
    get: (key) => kept.get(key) ?? null,
    put: (key, text) => void kept.set(key, text),
    drop: (key) => void kept.delete(key),
  };
  markStopped(shelf, "visit:a", NOW);
  expect([stoppedAt(shelf, "visit:a"), stoppedAt(shelf, "visit:b")]).toEqual([NOW, undefined]);
});
