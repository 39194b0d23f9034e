/** Proves the geometry of the seven marks: cuts, solid or hollow, outline, and that no two are drawn alike. */
import { expect, test } from "vitest";
import { MARK_HEIGHT, MARK_WIDTH, MARKS, type MarkKind, markShapes } from "./marks.js";

const path = (mark: MarkKind): string => String(markShapes(mark)[0]?.attrs["d"]);
const solid = (mark: MarkKind): boolean => markShapes(mark)[0]?.attrs["fill"] === "currentColor";
/** Points of a path written with absolute M, L, H, V and Z. */
function points(d: string): readonly (readonly [number, number])[] {
  let [x, y] = [0, 0];
  return [...d.matchAll(/([MLHV])(-?[\d.]+)(?: (-?[\d.]+))?/g)].map(([, step, a, b]) => {
    if (step === "H") x = Number(a);
    else if (step === "V") y = Number(a);
    else [x, y] = [Number(a), Number(b)];
    return [x, y] as const;
  });
}

test("minor has one cut from the right, 7 deep and 6.2 high", () => {
  expect(path("minor")).toBe("M3 0H13V6.9L6 10L13 13.1V20H3Z");
  expect(solid("minor")).toBe(true);
});

test("major has two cuts from the right, at 6.3 and 13.7", () => {
  const tips = points(path("major")).filter(([x]) => x === 6);
  expect(tips.map(([, y]) => y)).toEqual([6.3, 13.7]);
  expect(solid("major")).toBe(true);
});

test("dangerous is wider and has three cuts from both sides, nearly through", () => {
  const all = points(path("dangerous"));
  expect(Math.min(...all.map(([x]) => x))).toBe(1);
  expect(Math.max(...all.map(([x]) => x))).toBe(15);
  const right = all.filter(([x]) => x === 9.4).map(([, y]) => y);
  const left = all.filter(([x]) => x === 6.6).map(([, y]) => y);
  expect(right).toEqual([4.6, 10, 15.4]);
  expect(left).toEqual([15.4, 10, 4.6]);
});

test("advisory marks one cut on a hollow stick, sound has none", () => {
  expect(points(path("advisory")).filter(([x]) => x > 5 && x < 9)).toEqual([[7.4, 10]]);
  expect(points(path("sound")).length).toBe(4);
  for (const mark of ["advisory", "sound"] as const) expect(markShapes(mark)[0]?.attrs["fill"]).toBe("none");
});

test("the two not looked at are broken outlines; only can't-get-at-it has the bar, low left to high right", () => {
  expect(path("not-looked").match(/M/g)?.length).toBeGreaterThan(5);
  expect(markShapes("not-looked").length).toBe(1);
  const bar = points(String(markShapes("cannot-reach")[1]?.attrs["d"]).replace("M.8", "M0.8"));
  const [start, end] = [bar[0] ?? [0, 0], bar[1] ?? [0, 0]];
  expect(start[0]).toBeLessThan(end[0]);
  expect(start[1]).toBeGreaterThan(end[1]);
});

test("every mark stays in its box and no two are alike", () => {
  expect(new Set(MARKS.map((mark) => JSON.stringify(markShapes(mark)))).size).toBe(MARKS.length);
  for (const mark of MARKS) {
    for (const [x, y] of points(path(mark))) {
      expect(x >= 0 && x <= MARK_WIDTH && y >= 0 && y <= MARK_HEIGHT, `${mark} ${x} ${y}`).toBe(true);
    }
  }
});

test("marks have no colour of their own", () => {
  for (const mark of MARKS) expect(JSON.stringify(markShapes(mark))).not.toMatch(/#|rgb|var\(/);
});
