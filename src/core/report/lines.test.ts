import { expect, test } from "vitest";
import { linesDrawing } from "./lines.js";
import type { LinesInput } from "./lines-terms.js";
import { drawingText } from "./to-text.js";

const BOX = { width: 350, text: 15 };
const INPUT: LinesInput = {
  traces: [
    { id: "l", text: "Left", look: "full", points: [20, 40, 80, 160].map((at) => ({ at, height: -40 })) },
    { id: "r", text: "Right", look: "dashed", points: [20, 40, 80, 160].map((at) => ({ at, height: -20 })) },
  ],
  axis: { from: 20, to: 160, by: "octaves" },
  figures: [
    { at: 20, text: "20" },
    { at: 160, text: "160" },
  ],
  heights: {
    from: -60,
    to: 0,
    figures: [
      { at: -60, text: "-60" },
      { at: 0, text: "0" },
    ],
  },
  marks: [{ id: "turn", at: 40, text: "wheel turns" }],
};

const paths = (input: LinesInput, look: string): string[] =>
  [...drawingText(linesDrawing(input, BOX)).matchAll(/<path class="([^"]*)" d="([^"]*)"/g)].flatMap(([, name, d]) =>
    name === look && d !== undefined ? [d] : [],
  );
const xs = (d: string): number[] => [...d.matchAll(/[ML]([\d.]+)/g)].map(([, x]) => Number(x));
const ys = (d: string): number[] => [...d.matchAll(/[ML][\d.]+ ([\d.]+)/g)].map(([, y]) => Number(y));

test("an octave is as wide wherever it stands, a step as wide on an axis of steps", () => {
  const [, line = ""] = paths(INPUT, "trace full");
  const [a = 0, b = 0, c = 0, d = 0] = xs(line);
  expect(b - a).toBeCloseTo(c - b, 1);
  expect(c - b).toBeCloseTo(d - c, 1);
  const [, stepped = ""] = paths({ ...INPUT, axis: { from: 20, to: 160, by: "steps" } }, "trace full");
  const [e = 0, f = 0, g = 0] = xs(stepped);
  expect((g - f) / (f - e)).toBeCloseTo(2, 1);
});

test("the louder line lies higher, each is drawn in its own look beside its words", () => {
  const [, quiet = ""] = paths(INPUT, "trace full");
  const [, loud = ""] = paths(INPUT, "trace dashed");
  expect(Math.max(...ys(loud))).toBeLessThan(Math.min(...ys(quiet)));
  expect(ys(quiet)).toHaveLength(4);
  for (const words of ["Left", "Right", "wheel turns"]) expect(drawingText(linesDrawing(INPUT, BOX))).toContain(words);
});

test("a mark off the axis is left out, and so is what a line has beyond its ends", () => {
  const far = { ...INPUT, marks: [{ id: "far", at: 900, text: "far away" }] };
  expect(drawingText(linesDrawing(far, BOX))).not.toContain("far away");
  const points = [5, 20, 40, 9000].map((at) => ({ at, height: -30 }));
  const [, line = ""] = paths({ ...INPUT, traces: [{ id: "l", text: "Long", look: "full", points }] }, "trace full");
  expect(xs(line)).toHaveLength(2);
});

test("higher than the field or lower is drawn at its edge; nothing is wider than its box; no lines, no height", () => {
  const wild = {
    ...INPUT,
    traces: [
      {
        id: "w",
        text: "Wild",
        look: "full" as const,
        points: [
          { at: 20, height: 40 },
          { at: 160, height: -400 },
        ],
      },
    ],
  };
  const [, line = ""] = paths(wild, "trace full");
  for (const x of xs(line)) expect(x).toBeLessThanOrEqual(BOX.width);
  expect(ys(line)).toEqual([12, 162]);
  expect(linesDrawing({ ...INPUT, traces: [] }, BOX).height).toBe(0);
});
