import { expect, test } from "vitest";
import { decimalsOf, fromCanonical, plausible, rounded, show, showTyped, tidy } from "./index.js";

test.each([
  [0.01, 2],
  [0.05, 2],
  [0.5, 1],
  [0.25, 2],
  [0.1, 1],
  [1, 0],
  [25, 0],
  [0.001, 3],
  // 0.01 mm in inches, and a thou in millimetres.
  [0.00039370078740157, 4],
  [0.0254, 3],
  [0, 0],
  [Number.NaN, 0],
  [1e-12, 6],
])("a gauge step of %s shows %i decimals", (step, decimals) => {
  expect(decimalsOf(step)).toBe(decimals);
});

test("no more digits than the gauge gives, halves away from zero as written in decimals", () => {
  expect(show(0.1 + 0.2, 2)).toBe("0.30");
  expect(show(1.005, 2)).toBe("1.01");
  expect(show(-1.005, 2)).toBe("−1.01");
  expect(show(2.5, 0)).toBe("3");
  expect(show(-2.5, 0)).toBe("−3");
  expect(show(24.02, 2, true)).toBe("24,02");
  expect(show(-0.001, 2)).toBe("0.00");
  expect(show(1234567.891, 1)).toBe("1234567.9");
  expect(show(fromCanonical(0.13, "[in_i]", "length"), 4)).toBe("0.0051");
  expect(show(Number.NaN, 2)).toBe("–");
  expect(show(Number.POSITIVE_INFINITY, 0)).toBe("–");
});

test("rounding never leaves the neighbourhood of the number", () => {
  for (let i = -500; i <= 500; i++) {
    const value = i / 7;
    expect(Math.abs(rounded(value, 2) - value)).toBeLessThanOrEqual(0.005 + 1e-12);
  }
  expect(rounded(0, 3)).toBe(0);
  expect(rounded(1e-7, 2)).toBe(0);
});

test("what was typed is shown with its decimals and one's own mark", () => {
  expect(showTyped("0.220", true)).toBe("0,220");
  expect(showTyped("-5")).toBe("−5");
  expect(showTyped("1 1/2", true)).toBe("1 1/2");
});

test("tidying removes binary noise and nothing else", () => {
  expect(tidy(0.1 + 0.2)).toBe(0.3);
  expect(tidy(3 - 2.9)).toBe(0.1);
  expect(tidy(0.123456789012345)).toBe(0.123456789012345);
  expect(tidy(Number.POSITIVE_INFINITY)).toBe(Number.POSITIVE_INFINITY);
});

test("outside its window a reading is asked again, at the ends it is not", () => {
  expect(plausible(0, [0, 2])).toBe("inside");
  expect(plausible(2, [0, 2])).toBe("inside");
  expect(plausible(-0.01, [0, 2])).toBe("below");
  expect(plausible(20, [0, 2])).toBe("above");
});
