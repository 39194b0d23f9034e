import { expect, test } from "vitest";
import { MARKS } from "../../../tests/store/sample-pictures.js";
import type { NamedMark, PictureMark } from "../../core/record/index.js";
import { markMade, pickOf } from "./mark-made.js";
import { allSpots, begin, isWhole, moveBy, pressAt, setHere } from "./marking.js";
import { marksSentence, marksView } from "./marks-view.js";

test("two presses set both spots; a third moves the last, and none leaves the picture", () => {
  const two = pressAt(pressAt(begin("arrow"), [0.1, 0.1]), [0.5, 0.5]);
  expect([isWhole(two), allSpots(two)]).toEqual([
    true,
    [
      [0.1, 0.1],
      [0.5, 0.5],
    ],
  ]);
  expect(allSpots(pressAt(two, [1.4, -2]))).toEqual([
    [0.1, 0.1],
    [1, 0],
  ]);
});

test("by keys: Enter begins in the middle and sets; the second spot counts once it is moved", () => {
  const first = setHere(begin("ring"));
  expect(first.here).toEqual([0.5, 0.5]);
  const waiting = setHere(first);
  expect(isWhole(waiting)).toBe(false);
  expect(setHere(waiting)).toEqual(waiting);
  expect(isWhole(moveBy(waiting, 0.1, 0))).toBe(true);
});

const typed = { words: "", value: "", unit: "mm", shown: 375, width: 2000, scale: undefined, decimalComma: false };
const line = pressAt(pressAt(begin("scale"), [0, 0.5]), [1, 0.5]);

test("a known length is kept as typed with its unit, and not without", () => {
  expect(markMade({ ...typed, marking: line, value: "2,5", unit: "cm" })).toMatchObject({
    known: { value: "2.5", unit: "cm" },
    pick: 1.5 / 375,
  });
  expect(markMade({ ...typed, marking: line, value: "3/4 in" })).toMatchObject({
    known: { value: "3/4", unit: "[in_i]" },
  });
  for (const value of ["", "0", "about"]) expect(markMade({ ...typed, marking: line, value })).toBeUndefined();
});

test("nothing is made of two spots in one, of words nobody wrote, or of a length without a known one", () => {
  const one = pressAt(pressAt(begin("arrow"), [0.2, 0.2]), [0.2, 0.2]);
  expect(markMade({ ...typed, marking: one })).toBeUndefined();
  expect(markMade({ ...typed, marking: pressAt(begin("words"), [0.2, 0.2]), words: " " })).toBeUndefined();
  expect(markMade({ ...typed, marking: { ...line, tool: "length" } })).toBeUndefined();
  expect(markMade({ ...typed, marking: { ...line, tool: "length" }, scale: "m1" })).toMatchObject({ by: "m1" });
});

test("a spot is never finer than a pixel of the picture, however near it is looked at", () => {
  expect([pickOf(375, 2000), pickOf(6000, 1000)]).toEqual([0.004, 0.001]);
});

const named = (...drawn: readonly PictureMark[]): readonly NamedMark[] =>
  drawn.map((value, index) => ({
    mark: `m${index + 1}`,
    stands: { id: "", value, at: { wall: 1, count: 0 }, by: "anna" },
  }));
const SIZE = { width: 1000, height: 1000 };

test("marks are numbered and told in words, lengths with how far off they may be, in millimetres and inches", () => {
  const { arrow, ring, words, scale, length } = MARKS;
  const view = marksView(named(arrow, ring, words, scale, length), SIZE);
  expect(view.lines.map(({ says }) => says)).toEqual([
    "Arrow to the lower middle",
    "Ring, middle",
    "“chafed here”, lower left",
    "Known length, 25.0 mm",
    "10.0 ± 0.4 mm (0.39 ± 0.02 in)",
  ]);
  expect(view.lines[4]).toMatchObject({ second: "by mark 4", drawn: { label: "5 10.0 ± 0.4 mm" } });
  expect([view.scale, view.measures]).toEqual(["m4", true]);
  expect(marksSentence(view)).toMatch(/^1: Arrow .*; 2: Ring/);
});

test("a length whose known length was taken back says so and gives no figure", () => {
  const view = marksView(named(MARKS.length), SIZE);
  expect(view.lines[0]?.says).toBe("Not measured: its known length was taken back.");
  expect(view.scale).toBeUndefined();
});
