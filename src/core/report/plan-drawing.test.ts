/** Proves the plan: which lines a place inks, which way the car lies, where places are pressed, marks upright. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { type PlanInput, planDrawing, smallCarDrawing } from "./plan-drawing.js";
import { isDrawn, spotOf } from "./plan-spots.js";
import type { PlaceLook, PlanPlace } from "./plan-terms.js";
import type { Shape } from "./tree.js";

const place = (id: string, look: PlaceLook, more: Partial<PlanPlace> = {}): PlanPlace => ({ id, look, ...more });
const plan = (places: readonly PlanPlace[], more: Partial<PlanInput> = {}) =>
  planDrawing({ plan: "chassis", side: "left", places, ...more });

function all(shapes: readonly (Shape | string)[]): readonly Shape[] {
  return shapes.flatMap((s) => (typeof s === "string" ? [] : [s, ...all(s.children)]));
}
const ofLook = (input: ReturnType<typeof plan>, look: string): readonly Shape[] =>
  all(input.drawing.shapes).filter((s) => s.attrs["class"] === look);
const CORNERS = ["FL", "FR", "RL", "RR"];

test("a place not in the visit is drawn thin, never as looked at and never as not looked at", () => {
  const drawn = plan(CORNERS.map((id) => place(id, "done")));
  expect(ofLook(drawn, "ghost").length).toBeGreaterThan(10);
  expect(ofLook(drawn, "not-looked")).toEqual([]);
});

test("a corner inks its wheel, its wing and its arms, on its own side only", () => {
  const left = ofLook(plan([place("RL", "here")]), "here");
  expect(left.length).toBe(3);
  // The left half is the mirror of the right.
  expect(left.every((s) => String(s.attrs["transform"]).startsWith("matrix(1 0 0 -1"))).toBe(true);
  const right = ofLook(plan([place("RR", "here")]), "here");
  expect(right.length).toBe(3);
  expect(right.some((s) => s.attrs["transform"] !== undefined)).toBe(false);
});

test("a line of several places is inked only when all are done, and warm when one is at any", () => {
  const nose = (a: PlaceLook, b: PlaceLook): unknown =>
    all(plan([place("nose-box", a), place("lamp-bowl-L", b)], { plan: "body" }).drawing.shapes).find((s) =>
      String(s.attrs["d"]).startsWith("M45 126"),
    )?.attrs["class"];
  expect(nose("done", "done")).toBe("done");
  expect(nose("done", "not-looked")).toBe("not-looked");
  expect(nose("done", "here")).toBe("here");
});

test("the nearest place decides: a rail of its own before its side, its side before the whole car", () => {
  const drawn = plan([place("car", "not-looked"), place("side-L", "done"), place("main-rail-L-mid", "here")]);
  expect(ofLook(drawn, "here").length).toBe(1);
  expect(ofLook(drawn, "done").length).toBeGreaterThan(5);
  expect(ofLook(drawn, "not-looked").length).toBeGreaterThan(5);
});

test("pick-ups are drawn only where the visit asks for them", () => {
  const without = all(plan(CORNERS.map((id) => place(id, "done"))).drawing.shapes).length;
  const withOne = all(plan([...CORNERS, "pickup-FL-lower-fore"].map((id) => place(id, "done"))).drawing.shapes).length;
  expect(withOne).toBe(without + 1);
});

test("warm lines come last, so that nothing covers them", () => {
  const looks = all(plan([place("FL", "here"), place("FR", "done"), place("car", "not-looked")]).drawing.shapes)
    .map((s) => s.attrs["class"])
    .filter((c) => c === "here" || c === "done" || c === "not-looked" || c === "ghost");
  expect(looks.lastIndexOf("done")).toBeLessThan(looks.indexOf("here"));
  expect(looks.lastIndexOf("not-looked")).toBeLessThan(looks.indexOf("done"));
});

test("the side one stands at lies at the bottom, nose left on the left, nose right on the right", () => {
  const at = (id: string, side: "left" | "right") => spotOf("chassis", side, id) ?? { x: 0, y: 0 };
  expect(at("RL", "left").y).toBeGreaterThan(at("RR", "left").y);
  expect(at("RR", "right").y).toBeGreaterThan(at("RL", "right").y);
  expect(at("FL", "left").x).toBeLessThan(at("RL", "left").x);
  expect(at("FR", "right").x).toBeGreaterThan(at("RR", "right").x);
  // The lines turn with the places, by half a turn about the middle.
  const turn = (side: "left" | "right"): unknown => plan([], { side }).drawing.shapes[0]?.attrs["transform"];
  expect(turn("left")).toBeUndefined();
  expect(turn("right")).toBe("rotate(180 180 78)");
});

test("a place only this car has lies where its `at` says, left at the bottom; without `at` it is left out", () => {
  const drawn = plan([place("brace", "done", { at: [50, 10] }), place("somewhere", "done")]);
  expect(drawn.spots.map((s) => s.id)).toEqual(["brace"]);
  const spot = drawn.spots[0] ?? { x: 0, y: 0 };
  expect(spot.x).toBeCloseTo(188.3, 1);
  expect(spot.y).toBeGreaterThan(120);
  expect(all(drawn.drawing.shapes).filter((s) => s.tag === "rect" && s.attrs["width"] === 6).length).toBe(1);
});

test("`at` agrees with the drawing where the drawing knows the place: axles, nose and tail", () => {
  const x = (share: number) => spotOf("chassis", "left", "only-here", [share, 12])?.x ?? 0;
  expect(x(18)).toBeCloseTo(spotOf("chassis", "left", "FL")?.x ?? 0, 5);
  expect(x(80)).toBeCloseTo(spotOf("chassis", "left", "RL")?.x ?? 0, 5);
  expect(x(0)).toBe(11);
  expect(x(100)).toBe(348);
  const shares = Array.from({ length: 101 }, (_, share) => x(share));
  expect([...shares].sort((a, b) => a - b)).toEqual(shares);
});

test("marks stand upright and inboard of their place, whichever way the car lies", () => {
  for (const side of ["left", "right"] as const) {
    const drawn = plan([place("RL", "done", { mark: "major" })], { side });
    const marks = all(drawn.drawing.shapes).filter((s) => s.attrs["class"] === "mark");
    expect(marks.length).toBe(1);
    expect(String(marks[0]?.attrs["transform"])).not.toContain("rotate");
    const spot = spotOf("chassis", side, "RL");
    expect(Math.abs((spot?.mark[1] ?? 0) - 78)).toBeLessThan(Math.abs((spot?.y ?? 0) - 78));
  }
});

test("the cone hangs from the place one is at and ends on the foot of the drawing, inside its width", () => {
  for (const id of ["FL", "RL", "main-rail-L-mid", "car"]) {
    const drawn = plan([place(id, "here")], { cone: true });
    const fill = all(drawn.drawing.shapes).find((s) => s.attrs["class"] === "cone-fill");
    const numbers = [...String(fill?.attrs["d"]).matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(
      (m) => [Number(m[1]), Number(m[2])] as const,
    );
    const [a, b, c, d] = numbers.map(([x, y]) => ({ x, y }));
    expect(a?.y).toBe(b?.y);
    expect(c?.y).toBe(184);
    expect(d?.x).toBeGreaterThanOrEqual(0);
    expect(c?.x).toBeLessThanOrEqual(390);
    const middle = ((a?.x ?? 0) + (b?.x ?? 0)) / 2;
    expect(Math.abs(middle - (drawn.spots[0]?.x ?? 0))).toBeLessThan(1);
  }
  expect(ofLook(plan([place("FL", "done")], { cone: true }), "cone-fill")).toEqual([]);
});

test("the small car is dotted when never looked at, inked when looked at", () => {
  const looks = (looked: boolean) => new Set(all(smallCarDrawing(looked).shapes).map((s) => s.attrs["class"]));
  expect(looks(false)).toEqual(new Set([undefined, "not-looked"]));
  expect(looks(true)).toEqual(new Set([undefined, "done"]));
});

test("every place lies inside the drawing, and its two sides are half a turn apart", () => {
  const ids = [
    "FL",
    "FR",
    "RL",
    "RR",
    "car",
    "axle-F",
    "axle-R",
    "side-L",
    "main-rail-R-aft",
    "tail-rails",
    "pickup-RR-lower-aft",
  ];
  const looks: readonly PlaceLook[] = ["not-looked", "done", "here"];
  fc.assert(
    fc.property(
      fc.constantFrom(...ids),
      fc.constantFrom(...looks),
      fc.constantFrom("body", "chassis"),
      (id, look, kind) => {
        const seen = (side: "left" | "right") => planDrawing({ plan: kind, side, places: [place(id, look)] }).spots[0];
        const [left, right] = [seen("left"), seen("right")];
        expect(isDrawn(kind, id)).toBe(true);
        expect((left?.x ?? -1) > 0 && (left?.x ?? 999) < 360 && (left?.y ?? -1) > 0 && (left?.y ?? 999) < 156).toBe(
          true,
        );
        expect((left?.x ?? 0) + (right?.x ?? 0)).toBeCloseTo(360, 5);
        expect((left?.y ?? 0) + (right?.y ?? 0)).toBeCloseTo(156, 5);
      },
    ),
    { seed: 20261125 },
  );
});
