/** Proves the ruler of an estimate: lamp over likely, foot from low to high, the budget always to be seen, text kept apart. */
import { expect, test } from "vitest";
import { rangeDrawing } from "./range.js";
import type { RangeInput } from "./range-terms.js";
import type { Drawing, Shape } from "./tree.js";

const figure = (at: number, text = String(at)) => ({ at, text });
const estimate: RangeInput = { low: figure(685), likely: figure(960, "likely 960"), high: figure(1290) };
const box = { width: 390, text: 15 };

const of = (drawing: Drawing, look: string): readonly Shape[] =>
  drawing.shapes.filter((s) => s.attrs["class"] === look);
const numbersOf = (part: Shape | undefined): readonly number[] =>
  (String(part?.attrs["d"]).match(/-?[\d.]+/g) ?? []).map(Number);
const labels = (drawing: Drawing) =>
  drawing.shapes
    .filter((s) => s.tag === "text")
    .map((s) => ({ text: String(s.children[0]), x: Number(s.attrs["x"]), y: Number(s.attrs["y"]) }));

/** Feet of the light on the ruler and the middle of the lamp. */
function light(drawing: Drawing): { readonly low: number; readonly likely: number; readonly high: number } {
  const [from = 0, , to = 0, high = 0, , low = 0] = numbersOf(of(drawing, "cone")[0]);
  return { low, likely: (from + to) / 2, high };
}

test("the light falls from low to high, and the lamp divides it as likely divides the estimate", () => {
  const { low, likely, high } = light(rangeDrawing(estimate, box));
  expect((likely - low) / (high - low)).toBeCloseTo((960 - 685) / (1290 - 685), 3);
});

test("an estimate without spread still has a foot to be seen, and its figure is written once below", () => {
  const drawing = rangeDrawing({ low: figure(60), likely: figure(60, "likely 60"), high: figure(60) }, box);
  const { low, high } = light(drawing);
  expect(high - low).toBe(8);
  expect(labels(drawing).map(({ text }) => text)).toEqual(["likely 60", "60"]);
});

test("the budget stands on the same ruler as the light", () => {
  const drawing = rangeDrawing({ ...estimate, budget: figure(1290, "budget") }, box);
  expect(numbersOf(of(drawing, "budget")[0])[0]).toBeCloseTo(light(drawing).high, 2);
  expect(of(drawing, "base far")).toEqual([]);
});

test.each([
  ["above", 90_000, 370],
  ["below", 1, 20],
])("a budget far %s stands at the end behind a gap, and the light keeps its width", (_, at, x) => {
  const input = { low: figure(9000), likely: figure(9100), high: figure(9200), budget: figure(at, "budget") };
  const drawing = rangeDrawing(input, box);
  expect(numbersOf(of(drawing, "budget")[0])[0]).toBe(x);
  expect(of(drawing, "base far").length).toBe(1);
  const { low, high } = light(drawing);
  expect(high - low).toBeGreaterThan(0.3 * 350);
});

test("without a budget or an 80 % figure neither has a stroke", () => {
  const drawing = rangeDrawing(estimate, box);
  expect([...of(drawing, "budget"), ...of(drawing, "p80")]).toEqual([]);
});

test("the 80 % figure stands between likely and high", () => {
  const drawing = rangeDrawing({ ...estimate, p80: figure(1080, "four in five") }, box);
  const { likely, high } = light(drawing);
  const x = numbersOf(of(drawing, "p80")[0])[0] ?? 0;
  expect(x).toBeGreaterThan(likely);
  expect(x).toBeLessThan(high);
});

test("nothing written is cut off or touches its neighbour, from 320 px at twice the text to 500 px", () => {
  const full = { ...estimate, p80: figure(1080, "4 in 5: 1 080"), budget: figure(1100, "budget 1 100") };
  for (const width of [320, 360, 390, 500]) {
    for (const text of [15, 20, 30]) {
      const drawing = rangeDrawing(full, { width, text });
      const placed = labels(drawing).map((l) => ({ ...l, half: (l.text.length * 0.47 * text) / 2 }));
      placed.forEach((a, i) => {
        expect(a.x - a.half, a.text).toBeGreaterThanOrEqual(0);
        expect(a.x + a.half, a.text).toBeLessThanOrEqual(width);
        expect(a.y, a.text).toBeLessThan(drawing.height);
        for (const b of placed.slice(i + 1)) {
          const apart = Math.abs(a.x - b.x) >= a.half + b.half || Math.abs(a.y - b.y) >= text;
          expect(apart, `${a.text} and ${b.text} at ${width} px`).toBe(true);
        }
      });
    }
  }
});
