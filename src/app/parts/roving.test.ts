/** Proves where arrow keys lead inside a group, and which element Tab reaches. */
import { expect, test } from "vitest";
import { roved, rovingTab } from "./roving.js";

test("arrows go on and round, Home and End to the ends, other keys nowhere", () => {
  expect(roved("ArrowDown", 2, 3)).toBe(0);
  expect(roved("ArrowLeft", 0, 3)).toBe(2);
  expect(roved("ArrowRight", 0, 3)).toBe(1);
  expect(roved("Home", 2, 3)).toBe(0);
  expect(roved("End", 0, 3)).toBe(2);
  expect(roved("Enter", 0, 3)).toBeNull();
  expect(roved("ArrowDown", 0, 0)).toBeNull();
});

test("exactly one reply is in the tab order: the chosen one, else the first", () => {
  const order = (chosen: number | null) => [0, 1, 2].map((i) => rovingTab(i === chosen, i, chosen !== null));
  expect(order(null)).toEqual([0, -1, -1]);
  expect(order(2)).toEqual([-1, -1, 0]);
});
