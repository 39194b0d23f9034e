import { expect, test } from "vitest";
import { MARKS } from "../../../tests/store/sample-pictures.js";
import { knownIn, lengthOf, type PictureLength, toldIn } from "./picture-length.js";

const SIZE = { width: 1000, height: 1000 };
const { scale, length } = MARKS;

test("a length is to the known length as their distances in the picture, in pixels both ways", () => {
  // 25 mm over 500 px; 200 px upright are 10 mm, and in a picture half as high 100 px are 5 mm.
  expect((lengthOf(length, scale, SIZE) as PictureLength).mm).toBeCloseTo(10, 9);
  expect((lengthOf(length, scale, { width: 1000, height: 500 }) as PictureLength).mm).toBeCloseTo(5, 9);
});

test("the worst case: every spot two picks off in all, and the known length half its last digit", () => {
  const told = lengthOf(length, scale, SIZE) as PictureLength;
  // By hand: (24.95 × 196) / 504 and (25.05 × 204) / 496.
  expect(told.low).toBeCloseTo((24.95 * 196) / 504, 9);
  expect(told.high).toBeCloseTo((25.05 * 204) / 496, 9);
});

test("a length no longer than its spots may be off reaches down to nothing, never below", () => {
  const short = { ...length, to: [0.3, 0.202] as const };
  expect((lengthOf(short, scale, SIZE) as PictureLength).low).toBe(0);
});

test("no known length, one that says nothing, one too short in the picture: no figure", () => {
  expect(lengthOf(length, undefined, SIZE)).toBe("no-scale");
  const by = (value: string, unit = "mm") => lengthOf(length, { ...scale, known: { value, unit } }, SIZE);
  expect([by("about so"), by("0"), by("-3"), by("25", "kg")]).toEqual(["not-read", "not-read", "not-read", "not-read"]);
  const near = (to: number) => lengthOf(length, { ...scale, to: [to, 0.5] as const }, SIZE);
  // Five times two picks of 2 px are 20 px.
  expect(near(0.269)).toBe("too-short");
  expect(near(0.271)).not.toBe("too-short");
});

test.each<readonly [string, string, number, number]>([
  ["25", "mm", 25, 0.5],
  ["25.0", "mm", 25, 0.05],
  ["2.5", "cm", 25, 0.5],
  ["1", "[in_i]", 25.4, 12.7],
  ["1 1/2", "[in_i]", 38.1, 6.35],
])("%s %s says as much as its last digit or its smallest part", (value, unit, mm, off) => {
  const known = knownIn({ value, unit });
  expect(known?.mm).toBeCloseTo(mm, 9);
  expect(known?.off).toBeCloseTo(off, 9);
});

test("told: the uncertainty in one digit, rounded up, and the value no finer", () => {
  const told = (mm: number, off: number, unit = 1) => toldIn({ mm, low: mm - off, high: mm + off / 2 }, unit);
  expect(told(10.038, 0.341)).toEqual({ value: 10, off: 0.4, decimals: 1 });
  expect(told(24.94, 0.3)).toMatchObject({ value: expect.closeTo(24.9, 9), off: expect.closeTo(0.3, 9), decimals: 1 });
  expect(told(123.4, 12)).toEqual({ value: 123, off: 20, decimals: 0 });
  expect(told(10, 0.95)).toMatchObject({ off: 1, decimals: 0 });
  expect(told(25.4, 0.254, 25.4)).toMatchObject({ value: 1, off: expect.closeTo(0.01, 9), decimals: 2 });
});
