/** Proves the reading scale: foot of the lamp, limits hidden before entry, zones, graduations, figures that don't touch. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { markShapes } from "./marks.js";
import { scaleDrawing } from "./scale.js";
import type { ScaleInput } from "./scale-terms.js";
import { graduation, scaleWindow } from "./scale-window.js";
import type { Shape } from "./tree.js";

const WALL: ScaleInput = {
  direction: "under",
  edges: [
    { at: 1.4, grade: "advisory", text: "1.40" },
    { at: 1.32, grade: "minor", text: "1.32" },
    { at: 1.24, grade: "major", text: "1.24", caption: "major limit" },
    { at: 0.93, grade: "dangerous", text: "0.93" },
  ],
  nominal: { at: 1.55, text: "1.55", caption: "sound end" },
  window: [0.3, 4],
  resolution: 0.01,
  limitsShown: true,
  reading: { value: 1.26, uncertainty: 0.05 },
};
/** Defaults of the taper bearing's end float: common practice, no source. */
const FLOAT: ScaleInput = {
  direction: "over",
  edges: [
    { at: 0.1, grade: "advisory", text: "0.10" },
    { at: 0.13, grade: "minor", text: "0.13" },
    { at: 0.25, grade: "major", text: "0.25" },
    { at: 0.8, grade: "dangerous", text: "0.80" },
  ],
  window: [0, 2],
  resolution: 0.01,
  limitsShown: true,
};
const BOX = { width: 390, text: 15 };
const ofClass = (input: ScaleInput, look: string, box = BOX): readonly Shape[] =>
  scaleDrawing(input, box).shapes.filter((s) => String(s.attrs["class"]).split(" ").includes(look));
const texts = (input: ScaleInput): readonly string[] =>
  scaleDrawing(input, BOX).shapes.flatMap((s) => (s.tag === "text" ? [String(s.children[0])] : []));
const foot = (input: ScaleInput): readonly [number, number] => {
  const d = String(ofClass(input, "cone")[0]?.attrs["d"]);
  const ends = /L([\d.]+) [\d.]+H([\d.]+)Z/.exec(d);
  return [Number(ends?.[2]), Number(ends?.[1])];
};

test("the foot of the lamp is the value and its uncertainty on the ruler", () => {
  const { from, to } = scaleWindow(WALL, 350);
  const x = (value: number): number => 20 + ((value - from) / (to - from)) * 350;
  const [left, right] = foot(WALL);
  expect(left).toBeCloseTo(x(1.21), 1);
  expect(right).toBeCloseTo(x(1.31), 1);
});

test("a limit inside the foot goes on up into the light; one outside does not", () => {
  const inLamp = (value: number) =>
    ofClass({ ...WALL, reading: { value, uncertainty: 0.02 } }, "limit").filter((s) =>
      String(s.attrs["class"]).includes("in-lamp"),
    ).length;
  expect(inLamp(1.25)).toBe(1);
  expect(inLamp(1.29)).toBe(0);
});

test("before a figure is entered the lamp hangs unlit at the start and no limit is to be seen", () => {
  const before: ScaleInput = { ...WALL, reading: undefined };
  expect(ofClass(before, "cone")).toEqual([]);
  expect(ofClass(before, "unlit").length).toBe(1);
  expect(ofClass(before, "limit")).toEqual([]);
  expect(ofClass(before, "mark")).toEqual([]);
  expect(ofClass(before, "nominal")).toEqual([]);
  for (const limit of ["1.24", "1.40", "0.93", "1.55", "major limit"]) expect(texts(before)).not.toContain(limit);
  expect(texts(before).length).toBeGreaterThan(1);
});

test("limits that may not be shown stay away after entry too", () => {
  const hidden: ScaleInput = { ...WALL, limitsShown: false };
  expect(ofClass(hidden, "limit")).toEqual([]);
  expect(ofClass(hidden, "mark")).toEqual([]);
  expect(ofClass(hidden, "nominal")).toEqual([]);
  expect(texts(hidden)).not.toContain("1.24");
  expect(ofClass(hidden, "cone").length).toBe(1);
});

test("each zone carries its mark: worse the farther past, the mildest is hollow", () => {
  const marks = (input: ScaleInput): readonly string[] =>
    ofClass(input, "mark")
      .map((s) => JSON.stringify(s.children))
      .map((drawn) => (drawn.includes('"fill":"none"') ? "hollow" : "solid"));
  expect(marks(WALL)).toEqual(["solid", "solid", "solid", "hollow", "hollow"]);
  expect(marks({ ...FLOAT, reading: { value: 0.12, uncertainty: 0.02 } })).toEqual([
    "hollow",
    "hollow",
    "solid",
    "solid",
  ]);
});

test("inside every edge stands the mark of sound, beyond the last one that of its grade", () => {
  const marks = ofClass({ ...FLOAT, reading: { value: 0.2, uncertainty: 0.02 } }, "mark").map((s) => s.children);
  expect(marks[0]).toEqual(markShapes("sound"));
  expect(marks.at(-1)).toEqual(markShapes("major"));
});

test("an edge far from the reading is left off rather than squeezing the zones near it", () => {
  const near = scaleWindow({ ...FLOAT, reading: { value: 0.12, uncertainty: 0.02 } }, 350).edges.map((e) => e.text);
  expect(near).toEqual(["0.10", "0.13", "0.25"]);
  const far = scaleWindow({ ...FLOAT, reading: { value: 0.75, uncertainty: 0.02 } }, 350).edges.map((e) => e.text);
  expect(far).toContain("0.80");
});

test("a reading beyond the plausible window is still on the ruler", () => {
  const { from, to } = scaleWindow({ ...FLOAT, reading: { value: 2.6, uncertainty: 0.02 } }, 350);
  expect(from).toBeLessThan(2.6);
  expect(to).toBeGreaterThanOrEqual(2.6);
});

test("graduations are 1, 2 or 5 times a power of ten, no finer than the gauge, with room between", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 5000, noNaN: true }),
      fc.integer({ min: 200, max: 900 }),
      (span, length) => {
        const { step } = graduation(span, length, 0.01);
        expect(step).toBeGreaterThanOrEqual(0.00999);
        expect((step / span) * length).toBeGreaterThanOrEqual(4.4);
        const lead = step / 10 ** Math.floor(Math.log10(step) + 1e-9);
        expect([1, 2, 5, 10].some((base) => Math.abs(lead - base) < 1e-6)).toBe(true);
      },
    ),
    { seed: 20261125 },
  );
});

test("figures never touch: neighbours in one row keep their distance at any width and size of text", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 260, max: 720 }),
      fc.constantFrom(15, 17.6, 30),
      fc.array(fc.double({ min: 0, max: 2, noNaN: true }), { minLength: 1, maxLength: 4 }),
      fc.double({ min: 0, max: 2, noNaN: true }),
      (width, text, ats, value) => {
        const grades = ["advisory", "minor", "major", "dangerous"] as const;
        const edges = [...ats]
          .sort((a, b) => a - b)
          .map((at, i) => ({ at, grade: grades[i] ?? "major", text: at.toFixed(2) }));
        const input: ScaleInput = {
          direction: "over",
          edges,
          window: [0, 2],
          limitsShown: true,
          reading: { value, uncertainty: 0.05 },
        };
        const figures = scaleDrawing(input, { width, text }).shapes.filter((s) => s.attrs["class"] === "figure");
        const ends = new Map<string, number>();
        for (const figure of figures) {
          const half = (String(figure.children[0]).length * 0.5 * text) / 2;
          const row = String(figure.attrs["y"]);
          expect(Number(figure.attrs["x"]) - half).toBeGreaterThanOrEqual(ends.get(row) ?? 0);
          ends.set(row, Number(figure.attrs["x"]) + half);
        }
      },
    ),
    { seed: 20261125 },
  );
});

test("the drawing is as high as its last row of words", () => {
  const drawing = scaleDrawing(WALL, BOX);
  const lowest = Math.max(...drawing.shapes.filter((s) => s.tag === "text").map((s) => Number(s.attrs["y"])));
  expect(drawing.height).toBeGreaterThan(lowest);
  expect(drawing.height - lowest).toBeLessThan(15);
});
