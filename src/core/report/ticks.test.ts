/** Proves the graduations: one stroke a point, its height by look, and joining when there are too many to see. */
import { expect, test } from "vitest";
import { type TickLook, ticksDrawing } from "./ticks.js";

const looks = (ticks: readonly TickLook[]): readonly unknown[] =>
  ticksDrawing(ticks).shapes.map((s) => s.attrs["class"]);
const foot = (d: unknown): number => Number(/^M([\d.]+)/.exec(String(d))?.[1]);

test("answered is tall, here is taller, to come is short", () => {
  const [done, here, open] = ticksDrawing(["done", "here", "open"]).shapes.map((s) =>
    Number(/V(\d+)/.exec(String(s.attrs["d"]))?.[1]),
  );
  expect(here).toBeLessThan(done ?? 0);
  expect(done).toBeLessThan(open ?? 0);
});

test("twelve points take a ruler of 125 units, four stay close together", () => {
  expect(ticksDrawing(Array.from({ length: 12 }, () => "open")).width).toBeCloseTo(125, 9);
  expect(ticksDrawing(["done", "here", "open", "open"]).width).toBe(63);
});

test("strokes are evenly spaced", () => {
  const feet = ticksDrawing(Array.from({ length: 7 }, () => "done")).shapes.map((s) => foot(s.attrs["d"]));
  const gaps = feet.slice(1).map((x, i) => x - (feet[i] ?? 0));
  for (const gap of gaps) expect(gap).toBeCloseTo(20, 1);
});

test("one point and none are drawn without a gap", () => {
  expect(looks(["here"])).toEqual(["tick here"]);
  expect(ticksDrawing([]).shapes).toEqual([]);
});

test("above forty-one points neighbours are joined; a joined stroke is done only when all of it is", () => {
  const many: TickLook[] = Array.from({ length: 58 }, (_, i) => (i < 5 ? "done" : i === 30 ? "here" : "open"));
  const drawn = looks(many);
  expect(drawn.length).toBe(29);
  expect(drawn.filter((look) => look === "tick here").length).toBe(1);
  // Points 0–3 are two whole pairs; point 4 shares its stroke with one not answered yet.
  expect(drawn.slice(0, 3)).toEqual(["tick done", "tick done", "tick open"]);
});
