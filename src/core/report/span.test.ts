/** Proves the strip of dates: every day a stroke, shut days hatched, work where its days are, arrivals on their day. */
import { expect, test } from "vitest";
import { spanDrawing } from "./span.js";
import type { SpanDay, SpanInput } from "./span-terms.js";
import type { Drawing, Shape } from "./tree.js";

const box = { width: 390, text: 15 };
const days = (count: number, shut: readonly number[] = []): readonly SpanDay[] =>
  Array.from({ length: count }, (_, i) => ({
    day: `2026-12-${String(i + 1).padStart(2, "0")}`,
    shut: shut.includes(i),
    text: i % 7 === 0 ? `${i + 1} Dec` : undefined,
  }));
const input: SpanInput = {
  days: days(14, [5, 6, 12, 13]),
  rows: [
    {
      id: "aldo",
      text: "Aldo",
      look: "person",
      strokes: [
        { id: "2", from: 7, to: 9, text: "2" },
        { id: "1", from: 0, to: 2, text: "1" },
        { id: "between", from: 2, to: 7, look: "waits" },
      ],
    },
    { id: "lift", text: "Lift", look: "lift", strokes: [{ id: "up", from: 0, to: 2 }] },
  ],
  marks: [{ id: "bearing", at: 7, text: "bearing in", look: "arrival" }],
};
const of = (drawing: Drawing, look: string): readonly Shape[] =>
  drawing.shapes.filter((s) => s.attrs["class"] === look);
const moves = (part: Shape | undefined): number => (String(part?.attrs["d"]).match(/M/g) ?? []).length;
const startOf = (part: Shape | undefined): number => Number(/^M([\d.]+)/.exec(String(part?.attrs["d"]))?.[1]);
const written = (drawing: Drawing): readonly unknown[] =>
  drawing.shapes.filter((s) => s.tag === "text").map((s) => s.children[0]);

test("fourteen days have fifteen strokes: one where each begins and one at the end", () => {
  expect(moves(of(spanDrawing(input, box), "fine")[0])).toBe(15);
});

test("half a year keeps only the days that are written", () => {
  const long = { ...input, days: days(182) };
  expect(moves(of(spanDrawing(long, box), "fine")[0])).toBe(26 + 1);
});

test("shut days are hatched, and without any nothing is", () => {
  expect(moves(of(spanDrawing(input, box), "shut")[0])).toBe(4 * 5);
  expect(of(spanDrawing({ ...input, days: days(14) }, box), "shut")).toEqual([]);
});

test("work begins where its day begins, and so does the part that comes in that day", () => {
  const drawing = spanDrawing(input, box);
  expect(startOf(of(drawing, "work")[1])).toBe(20 + 7 * 25);
  expect(startOf(of(drawing, "mark-arrival")[0])).toBe(20 + 7 * 25);
  expect(of(drawing, "waits").length).toBe(1);
});

test("the lift is a band as long as it is taken", () => {
  const [band] = of(spanDrawing(input, box), "lift");
  expect([band?.attrs["x"], band?.attrs["width"]]).toEqual(["20", "50"]);
});

test("work that ends beyond the days shown ends at their edge, and a minute's work is still to be seen", () => {
  const strokes = [
    { id: "1", from: 3, to: 99 },
    { id: "2", from: 1, to: 1.001 },
  ];
  const drawing = spanDrawing({ ...input, rows: [{ id: "a", text: "A", look: "person", strokes }] }, box);
  const ends = of(drawing, "work").map((s) => Number(/H([\d.]+)/.exec(String(s.attrs["d"]))?.[1]));
  expect(ends).toEqual([20 + 25 + 3, 370]);
});

test("numbers and days that would touch are left out, names and what comes in are not", () => {
  const strokes = Array.from({ length: 30 }, (_, i) => ({ id: `${i}`, from: i * 0.1, to: i * 0.1 + 0.1, text: "88" }));
  const crowded = { ...input, rows: [{ id: "a", text: "Aldo", look: "person" as const, strokes }] };
  const texts = written(spanDrawing(crowded, box));
  const numbers = texts.filter((text) => text === "88").length;
  expect(numbers).toBeGreaterThan(0);
  expect(numbers).toBeLessThan(8);
  expect(texts).toContain("Aldo");
  expect(texts).toContain("bearing in");
});

test("no days, no drawing", () => {
  expect(spanDrawing({ ...input, days: [] }, box).shapes).toEqual([]);
});
