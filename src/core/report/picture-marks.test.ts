import { expect, test } from "vitest";
import { MARKS } from "../../../tests/store/sample-pictures.js";
import { markedPicture, marksDrawing, rowsOf, spotsDrawing } from "./picture-marks.js";
import { drawingText } from "./to-text.js";
import type { Shape } from "./tree.js";

const SIZE = { width: 2000, height: 1000 };
const one = (type: keyof typeof MARKS, label = "1", nearer = 1): readonly Shape[] =>
  marksDrawing(SIZE, [{ drawn: MARKS[type], label }], nearer).shapes;

test.each(Object.keys(MARKS) as (keyof typeof MARKS)[])("every line of a mark is dark under light: %s", (type) => {
  const lines = one(type).filter(({ tag }) => tag !== "text");
  const [dark, light] = [lines.slice(0, lines.length / 2), lines.slice(lines.length / 2)];
  expect(new Set(dark.map(({ attrs }) => attrs["stroke"])).size).toBe(lines.length === 0 ? 0 : 1);
  for (const [index, line] of dark.entries()) {
    expect(Number(line.attrs["stroke-width"])).toBeGreaterThan(Number(light[index]?.attrs["stroke-width"]));
    expect({ ...line.attrs, stroke: 0, "stroke-width": 0 }).toEqual({
      ...light[index]?.attrs,
      stroke: 0,
      "stroke-width": 0,
    });
  }
  for (const text of one(type).filter(({ tag }) => tag === "text")) expect(text.attrs["paint-order"]).toBe("stroke");
});

test("spots lie in the picture's own pixels, and a ring goes through its rim", () => {
  expect(one("arrow")[0]?.attrs).toMatchObject({ x1: "0", y1: "0", x2: "1000", y2: "1000" });
  expect(one("ring")[0]?.attrs).toMatchObject({ cx: "1000", cy: "500", r: "200" });
});

test("only lines, circles and texts, so that any page can draw them", () => {
  const tags = (Object.keys(MARKS) as (keyof typeof MARKS)[]).flatMap((type) => one(type).map(({ tag }) => tag));
  expect([...new Set(tags)].sort()).toEqual(["circle", "line", "text"]);
});

test("looked at four times nearer, lines and words are as thin as before", () => {
  const wide = (nearer: number) => Number(one("scale", "4", nearer)[0]?.attrs["stroke-width"]);
  expect(wide(4)).toBeCloseTo(wide(1) / 4, 9);
});

test("words stand within the picture, in rows, to the side with more room", () => {
  expect(rowsOf("chafed through to the wire beside the clip")).toEqual([
    "chafed through to",
    "the wire beside the",
    "clip",
  ]);
  const at = (x: number, y: number) =>
    marksDrawing(SIZE, [{ drawn: { type: "words", at: [x, y], words: "a" }, label: "1 a" }]).shapes[0]?.attrs;
  expect(at(0.9, 0.5)?.["text-anchor"]).toBe("end");
  expect(at(0.1, 0.5)?.["text-anchor"]).toBe("start");
  for (const y of [0, 1]) {
    expect(Number(at(0.5, y)?.["y"])).toBeGreaterThan(0);
    expect(Number(at(0.5, y)?.["y"])).toBeLessThan(SIZE.height);
  }
});

test("spots being set are ringed, and the one moved about is crossed", () => {
  const { shapes } = spotsDrawing(SIZE, [[0.5, 0.5]], [0.1, 0.1]);
  expect(shapes.filter(({ tag }) => tag === "circle")).toHaveLength(2);
  expect(shapes.filter(({ tag }) => tag === "line")).toHaveLength(8);
  expect(spotsDrawing(SIZE, [], undefined).shapes).toEqual([]);
});

test("for a page of its own: the picture under its marks, words escaped", () => {
  const drawn = { type: "words", at: [0.1, 0.5], words: "<b>" } as const;
  const text = drawingText(markedPicture(SIZE, "pictures/a.jpg", [{ drawn, label: "1 <b>" }]), { label: "Seal" });
  expect(text).toMatch(/^<svg [^>]*viewBox="0 0 2000 1000"[^>]*><image href="pictures\/a.jpg"/);
  expect(text).toContain("1 &lt;b&gt;</text>");
});
