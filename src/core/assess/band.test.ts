// [AS6]–[AS7] How a value lies to the edges of a limit.
import { expect, test } from "vitest";
import { compareNumbers, isBeyond, isPast, spanOf, standingOf } from "./band.js";

test("[AS6] 3.0 less 0.1 is 2.9, and 0.1 and 0.2 make 0.3", () => {
  expect(compareNumbers(3.0 - 0.1, 2.9)).toBe(0);
  expect(compareNumbers(0.1 + 0.2, 0.3)).toBe(0);
  expect(compareNumbers(2.9, 2.9001)).toBe(-1);
  expect(isPast(0.1 + 0.2, 0.3, "over")).toBe(false);
  expect(isPast(0.1 + 0.2, 0.3, "at-or-over")).toBe(true);
});

test("[AS6] zero and near nothing are told apart from a real step", () => {
  expect(compareNumbers(0, 0)).toBe(0);
  expect(compareNumbers(0, 1e-6)).toBe(-1);
  expect(compareNumbers(-1e-6, 0)).toBe(-1);
});

test("[AS7] a reading on the guard band's very edge passes, one beyond it is past", () => {
  // U exactly 0.02: 0.10 − 0.02 = 0.08 passes, 0.10 + 0.02 = 0.12 is still too close, 0.121 is past
  const at = (y: number) => standingOf(spanOf(y, 0.01, { major: 0.1 }, "over"));
  expect([at(0.08), at(0.0801), at(0.1), at(0.12), at(0.1201)]).toEqual([
    "clear",
    "too close",
    "too close",
    "too close",
    "past",
  ]);
});

test("[AS7] 'at or over' counts the edge itself", () => {
  expect(standingOf(spanOf(90, 0, { major: 90 }, "over"))).toBe("clear");
  expect(standingOf(spanOf(90, 0, { major: 90 }, "at-or-over"))).toBe("past");
});

test("[AS7] minor and advisory edges are judged by the value alone", () => {
  const bands = { advisory: 0.1, minor: 0.13, major: 0.25, dangerous: 0.8 };
  expect(spanOf(0.135, 0.02, bands, "over")).toEqual({ low: 2, high: 2 });
  expect(spanOf(0.129, 0.02, bands, "over")).toEqual({ low: 1, high: 1 });
  expect(spanOf(0.24, 0.02, bands, "over")).toEqual({ low: 2, high: 3 });
  expect(spanOf(0.79, 0.02, bands, "over")).toEqual({ low: 3, high: 4 });
});

test("[AS7] a lower limit is the upper one mirrored", () => {
  const upper = { minor: 1, major: 2, dangerous: 3 };
  const lower = { minor: -1, major: -2, dangerous: -3 };
  for (const y of [0.5, 1, 1.5, 1.95, 2, 2.05, 2.9, 3.2])
    expect(spanOf(-y, 0.03, lower, "under")).toEqual(spanOf(y, 0.03, upper, "over"));
});

test("[AS7] a gauge too coarse for the limit spans several grades", () => {
  expect(spanOf(0.4, 0.5, { major: 0.25, dangerous: 0.8 }, "over")).toEqual({ low: 0, high: 4 });
});

test("an edge lies beyond another in the direction the limit looks", () => {
  expect(isBeyond(0.3, 0.8, "over")).toBe(true);
  expect(isBeyond(0.9, 0.8, "over")).toBe(false);
  expect(isBeyond(3, 1.5, "under")).toBe(true);
  expect(isBeyond(1.5, 1.5, "at-or-under")).toBe(false);
});
