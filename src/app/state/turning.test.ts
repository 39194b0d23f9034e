import { expect, test } from "vitest";
import { type MarkAt, NO_TURNING, type TurningForm, turning, turningTyped } from "./turning.js";

const form = (part: Partial<TurningForm>): TurningForm => ({ ...NO_TURNING, ...part });
const marked = (part: Partial<TurningForm>) => new Map(turning(form(part)).marks.map((mark) => [mark.id, mark]));
const middle = (mark: MarkAt | undefined): number => ((mark?.from ?? Number.NaN) + (mark?.to ?? Number.NaN)) / 2;

test("ten turns in five seconds: two a second, a twentieth either way", () => {
  const turns = marked({ ten: "5" }).get("turns");
  expect([turns?.from, turns?.to]).toEqual([1.9, 2.1]);
  expect(middle(marked({ ten: "5" }).get("turns-twice"))).toBeCloseTo(4, 9);
});

test("by the speedometer: never faster than shown, as slow as UN Regulation 39 lets it be", () => {
  // 185/60 R14: 355.6 + 2 · 111 = 577.6 mm across, rolls 3.05 · 577.6 = 1761.7 mm.
  const turns = marked({ speed: "80", tyre: "185/60 R14" }).get("turns");
  expect(turns?.to).toBeCloseTo(80 / 3.6 / 1.76168, 4);
  expect(turns?.from).toBeCloseTo((80 - 4) / 1.1 / 3.6 / 1.76168, 4);
  // The true speed lies within: shown 80 at a true (80 − 4) / 1.1 is just allowed.
  const slow = (80 - 4) / 1.1;
  expect(80 - slow).toBeCloseTo(slow / 10 + 4, 9);
});

test("a bearing's own figures: the drive-end bearing of a published data set, per turn of its ring", () => {
  // Case Western Reserve University bearing data, 6205-2RS JEM SKF: 9 balls, ball 7.94 mm, pitch 39.04 mm, angle 0;
  // printed multiples of the turns: outer 3.5848, inner 5.4152, cage 0.39828, ball 4.7135 (both races struck).
  const marks = marked({ ten: "10", balls: "9", ball: "7.94", pitch: "39.04", ring: "inner" });
  expect(middle(marks.get("outer"))).toBeCloseTo(3.5848, 1);
  expect(middle(marks.get("inner"))).toBeCloseTo(5.4152, 1);
  expect(middle(marks.get("cage"))).toBeCloseTo(0.39828, 2);
  expect(middle(marks.get("element"))).toBeCloseTo(4.7135, 1);
  for (const { about } of marks.values()) expect(about).toBe(false);
});

test("the number of rolling elements alone gives the races, roughly and marked so", () => {
  const marks = marked({ ten: "10", balls: "10" });
  expect(marks.get("outer")).toMatchObject({ about: true });
  expect(middle(marks.get("outer"))).toBeCloseTo(4, 1);
  expect(middle(marks.get("inner"))).toBeCloseTo(6, 1);
  expect([...marks.keys()]).toEqual(["turns", "turns-twice", "outer", "inner"]);
});

test("nothing typed gives no marks; a speed without a tyre none; what can't be read is named", () => {
  expect(turning(NO_TURNING)).toEqual({ marks: [], unread: [] });
  expect(turning(form({ speed: "80" })).marks).toEqual([]);
  expect(turning(form({ speed: "fast", tyre: "big", ten: "0", balls: "-3" })).unread).toEqual([
    "ten",
    "speed",
    "balls",
    "tyre",
  ]);
  expect(turning(form({ ten: "5", balls: "9", ball: "50", pitch: "40" })).unread).toEqual(["ball"]);
});

test("tyres as people write them", () => {
  for (const tyre of ["185/60R14", "185/60 R 14", "185/60 HR14", "185/60VR14", " 185 / 60 - 14 "])
    expect(middle(marked({ speed: "80", tyre }).get("turns")), tyre).toBeCloseTo(11.75, 1);
  // A metric rim of 390 mm is not one of 390 inches.
  expect(middle(marked({ speed: "80", tyre: "220/55 R390" }).get("turns"))).toBeCloseTo(10.7, 1);
  for (const tyre of ["60/185", "185", "185/60/14"]) expect(turning(form({ tyre })).unread, tyre).toEqual(["tyre"]);
});

test("a form kept as text comes back; anything else is an empty one", () => {
  const kept = form({ ten: "5", balls: "9", ring: "inner" });
  expect(turningTyped(JSON.stringify(kept))).toEqual(kept);
  for (const odd of ["", "[1]", "null", '{"ten":5,"ring":"both"}']) expect(turningTyped(odd), odd).toEqual(NO_TURNING);
});
