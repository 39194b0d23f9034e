/** Proves the writing of drawings as SVG text: named or hidden, every sign escaped. */
import { expect, test } from "vitest";
import { planDrawing } from "./plan-drawing.js";
import { drawingText } from "./to-text.js";
import { n, shape } from "./tree.js";

const figure = { width: 10, height: 4, shapes: [shape("text", { class: 'a"b' }, ["5 < 6 & 7"])] };

test("a drawing with a label is an image, one without is hidden", () => {
  expect(drawingText(figure, { label: "Plan <left>" })).toContain('role="img" aria-label="Plan &lt;left&gt;"');
  expect(drawingText(figure)).toContain('aria-hidden="true"');
});

test("signs of markup in words and attributes are escaped", () => {
  expect(drawingText(figure)).toContain('<text class="a&quot;b">5 &lt; 6 &amp; 7</text>');
});

test("a letter a person wrote can't become an element", () => {
  const place = { id: "FL", look: "done", letter: "<script>" } as const;
  const text = drawingText(planDrawing({ plan: "body", side: "left", places: [place] }).drawing);
  expect(text).not.toContain("<script>");
  expect(text).toContain("&lt;script&gt;");
});

test("numbers are written short: two decimals at most, no minus zero", () => {
  expect(n(1.004)).toBe("1");
  expect(n(-0.001)).toBe("0");
  expect(n(12.345)).toBe("12.35");
});
