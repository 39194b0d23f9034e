// Text made ready for the sheet: signs it has no form for, lines, paths of drawings.
import { expect, test } from "vitest";
import { NO_SIGN, printable } from "./signs.js";
import { pathSteps } from "./svg-path.js";
import { wrapped } from "./wrap.js";

const latin = (code: number): boolean => code < 0x250 || [0x2009, 0x2013, 0x3a9, 0xb5].includes(code);
const width = (text: string): number => text.length;

test("a sign without a form is a crossed box, once for each, and is named", () => {
  expect(printable("ab水c", latin)).toEqual({ text: `ab${NO_SIGN}c`, missing: ["水"] });
  expect(printable("🚗!", latin)).toEqual({ text: `${NO_SIGN}!`, missing: ["🚗"] });
});

test("signs that look alike, and letters put together of two, need no box", () => {
  expect(printable("5\u202fkm \u2126 \u03bc e\u0301", latin)).toEqual({ text: "5\u2009km Ω µ é", missing: [] });
});

test("marks of direction and joins show nothing and are no loss", () => {
  expect(printable("a\u2068b\u200d\ufe0f", latin)).toEqual({ text: "ab", missing: [] });
});

test("lines are no wider than their room, and no word is lost", () => {
  const lines = wrapped("one two three four five", 9, width);
  expect(lines).toEqual(["one two", "three", "four five"]);
});

test("a word wider than a line is broken where it must be", () => {
  expect(wrapped("a verylongword b", 5, width)).toEqual(["a", "veryl", "ongwo", "rd b"]);
  expect(wrapped("", 5, width)).toEqual([""]);
});

test("commands of a path become absolute steps, relative ones and repeats too", () => {
  expect(pathSteps("M1 2l3 4H9V1Z").map(({ op, c }) => [op, ...c])).toEqual([
    ["m", 1, 2],
    ["l", 4, 6],
    ["l", 9, 6],
    ["l", 9, 1],
    ["h"],
  ]);
  expect(pathSteps("M0 0Q3 3 6 0").at(-1)).toEqual({ op: "c", c: [2, 2, 4, 2, 6, 0] });
  expect(pathSteps("M.8 1L2 3 4 5").map(({ op }) => op)).toEqual(["m", "l", "l"]);
});

test("a command our drawings do not use is refused, not drawn wrong", () => {
  expect(() => pathSteps("M0 0A1 1 0 0 0 2 2")).toThrow("A is not drawn");
  expect(() => pathSteps("M0")).toThrow("lacks numbers");
});
