/** Proves when replies go to one column, and which place a finger on the plan means. */
import { expect, test } from "vitest";
import { nearestPlace } from "./car-plan.js";
import { columnsFor } from "./reply-grid.js";

const replies = (...words: readonly string[]) => words.map((w) => ({ words: w }));

test("short replies stand in two columns", () => {
  expect(columnsFor(replies("Smooth", "Light grumble", "Rough", "Notchy", "Can\u2019t get at it"))).toBe(2);
});

test("one reply of more than two lines, or one long word, puts all in one column", () => {
  expect(columnsFor(replies("Smooth", "Grease thrown on the brake and the rim"))).toBe(1);
  expect(columnsFor(replies("Smooth", "Radlagergeräusch"))).toBe(1);
});

test("a sketch leaves less room for words", () => {
  expect(columnsFor([{ words: "Thrown on the brake", sketch: "drawing" }])).toBe(1);
  expect(columnsFor([{ words: "Thrown on the brake" }])).toBe(2);
});

test("a finger means the nearest place within reach, and none when it is far from all", () => {
  const spots = [
    { id: "FL", x: 90, y: 120 },
    { id: "outrigger-L-1", x: 136, y: 112 },
  ];
  expect(nearestPlace(spots, 110, 118, 44)).toBe("FL");
  expect(nearestPlace(spots, 120, 118, 44)).toBe("outrigger-L-1");
  expect(nearestPlace(spots, 250, 60, 44)).toBeNull();
  expect(nearestPlace([], 0, 0, 44)).toBeNull();
});
