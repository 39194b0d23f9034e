// The chart of a part's readings: strokes as tall as their uncertainty, light to the limit, a gap at a new series.
import { expect, test } from "vitest";
import { drawingText } from "./to-text.js";
import { wearChart } from "./wear-chart.js";
import type { WearChartInput } from "./wear-terms.js";

const YEAR = 365;
const stroke = (day: number, value: number, uncertainty = 0.1) => ({ day, value, uncertainty, text: String(value) });
const BOX = { width: 350, text: 15 };
const input = (more: Partial<WearChartInput> = {}): WearChartInput => ({
  runs: [[stroke(0, 10), stroke(YEAR, 9)]],
  edges: [{ value: 6, text: "6 mm major" }],
  cone: { edge: 6, earliest: 1.5 * YEAR, latest: 2.5 * YEAR },
  visits: [0, YEAR],
  years: () => [200],
  year: () => "2025",
  ...more,
});
const of = (drawing: ReturnType<typeof wearChart>, name: string) =>
  drawing.shapes.filter(({ attrs }) => attrs["class"] === name);
/** Every number of a path. */
const numbers = (d: unknown): readonly number[] => (String(d).match(/-?\d+(\.\d+)?/g) ?? []).map(Number);

test("a reading twice as unsure has a stroke twice as tall", () => {
  const tall = (u: number) =>
    numbers(of(wearChart(input({ runs: [[stroke(0, 10, u)]] }), BOX), "reading")[0]?.attrs["d"])[2] ?? 0;
  expect(tall(1)).toBeGreaterThan(1.6 * tall(0.5));
  expect(tall(0)).toBeGreaterThanOrEqual(4);
});

test("the light begins at the newest reading and stands with its foot on the edge", () => {
  const drawing = wearChart(input(), BOX);
  const cone = numbers(of(drawing, "cone")[0]?.attrs["d"]);
  const edge = numbers(of(drawing, "edge")[0]?.attrs["d"])[1];
  expect(cone).toHaveLength(6);
  expect([cone[3], cone[5]]).toEqual([edge, edge]);
  expect(cone[4]).toBeGreaterThan(cone[2] ?? 0);
  expect(of(wearChart(input({ cone: undefined }), BOX), "cone")).toEqual([]);
});

test("a latest far ahead, or none, is cut off at the end of the drawing", () => {
  for (const latest of [400 * YEAR, undefined]) {
    const drawing = wearChart(input({ cone: { edge: 6, earliest: 300 * YEAR, latest } }), BOX);
    for (const x of numbers(of(drawing, "cone")[0]?.attrs["d"]).filter((_, i) => i % 2 === 0))
      expect(x).toBeLessThanOrEqual(BOX.width);
  }
});

test("a new series has a gap before it and no line across", () => {
  const drawing = wearChart(input({ runs: [[stroke(0, 7)], [stroke(YEAR, 10), stroke(2 * YEAR, 9)]] }), BOX);
  expect(of(drawing, "gap")).toHaveLength(1);
  expect(of(drawing, "run")).toHaveLength(1);
  expect(of(wearChart(input(), BOX), "gap")).toHaveLength(0);
});

test("limits and years are written; in a row there are no words at all", () => {
  const words = (drawing: ReturnType<typeof wearChart>) => drawing.shapes.flatMap(({ children }) => children);
  expect(words(wearChart(input(), BOX))).toEqual(expect.arrayContaining(["6 mm major", "2025", "10", "9"]));
  expect(words(wearChart(input({ small: true }), BOX))).toEqual([]);
});

test("nothing is drawn without a reading, nor outside a narrow box", () => {
  expect(wearChart(input({ runs: [] }), BOX).shapes).toEqual([]);
  const narrow = wearChart(input(), { width: 280, text: 20 });
  expect(drawingText(narrow)).not.toContain("NaN");
  for (const one of narrow.shapes) if (one.tag === "text") expect(Number(one.attrs["x"])).toBeLessThanOrEqual(280);
});

test("a limit's words stand clear of the figures", () => {
  // The first two readings lie on the left, just below a limit that the last one has passed.
  const runs = [[stroke(0, 0.02, 0.01), stroke(YEAR, 0.03, 0.01), stroke(2 * YEAR, 0.31, 0.01)]];
  const edges = [
    { value: 0.08, text: "0.08 mm major" },
    { value: 0.5, text: "0.5 mm dangerous" },
  ];
  const drawing = wearChart(input({ runs, edges, cone: { edge: 0.5, earliest: 2.6 * YEAR, latest: 3.8 * YEAR } }), BOX);
  const rooms = drawing.shapes.flatMap(({ tag, attrs, children }) => {
    if (tag !== "text") return [];
    const wide = String(children[0]).length * 0.5 * BOX.text;
    const left = Number(attrs["x"]) - (attrs["text-anchor"] === "middle" ? wide / 2 : 0);
    return [{ left, right: left + wide, top: Number(attrs["y"]) - BOX.text * 0.8, foot: Number(attrs["y"]) }];
  });
  expect(rooms.length).toBeGreaterThan(4);
  for (const [i, a] of rooms.entries())
    for (const b of rooms.slice(i + 1))
      expect(a.left < b.right && b.left < a.right && a.top < b.foot && b.top < a.foot).toBe(false);
});
