import { expect, test } from "vitest";
import { readTyped } from "../units/index.js";
import type { Limit, Point } from "./schema-types.js";
import { oddFigure, usualWindows } from "./usual-figures.js";

const limit = (more: Partial<Limit>): Limit => ({
  id: "lim.one",
  of: "whl.float",
  quantity: "length",
  unit: "mm",
  direction: "over",
  bands: { minor: 0.13, major: 0.25, dangerous: 0.8 },
  basis: "practice",
  source: "common practice, no source",
  aggregate: "max",
  class: "corner",
  ...more,
});
const point = (id: string, quantity: string, unit: string, window: [number, number]): Point => ({
  id,
  place: "corner",
  states: ["w8-off"],
  fields: { play: { quantity, unit, window } },
  who: ["technician"],
});
const odd = (typed: string, over: Limit, points: readonly Point[] = []) => {
  const { quantity } = over;
  const read = readTyped(typed, { quantity: quantity as "length", unit: over.unit });
  if (!read.ok) throw new Error(read.problems[0]?.code);
  return oddFigure(read.value, over, points, "major");
};
const slips = (typed: string, over: Limit, points: readonly Point[] = []) =>
  odd(typed, over, points)?.slips.map((slip) =>
    slip.is === "unit" ? slip.unit : slip.is === "factor" ? slip.factor : slip.is,
  );

const float = limit({});
const torque = limit({ quantity: "torque", unit: "N.m", direction: "under", bands: { major: 400 } });
const oil = limit({ quantity: "pressure", unit: "bar", direction: "under", bands: { minor: 1, major: 0.5 } });

test("a maker's figure of the order of the default is kept without a word, in whatever unit it is typed", () => {
  for (const typed of ["0.2", "0.05", "0.008 in", "8 thou", "1.5", "200 um"])
    expect(odd(typed, float), typed).toBe(undefined);
});

test("thousandths of an inch typed as millimetres, inches as millimetres, a decimal mark gone: each is named", () => {
  expect(slips("8", float)?.[0]).toBe("[mil_i]");
  expect(slips("0.008", float)?.[0]).toBe("[in_i]");
  expect(slips("25", float)).toContain(100);
  expect(slips("-0.2", float)).toEqual(["sign"]);
});

test("pounds on the square inch typed as bar, and kilopascals, are named", () => {
  expect(slips("12", oil)?.[0]).toBe("[psi]");
  expect(slips("60", oil)?.[0]).toBe("kPa");
  expect(odd("0.8", oil)).toBe(undefined);
});

test("a centre-lock's torque is no odd figure, and neither is one typed in pounds-feet", () => {
  for (const typed of ["700", "950", "500 lbf.ft", "70 kgf.m"]) expect(odd(typed, torque), typed).toBe(undefined);
  expect(slips("700 kgf.m", torque)).toContain("N.m");
});

test("no play at all is no odd figure: a nought is no slip", () => {
  for (const over of [float, oil, torque]) expect(odd("0", over)).toBe(undefined);
});

test("the window of the reading holds where it is narrower, but not over what lies between readings", () => {
  const tight = [point("whl.float", "length", "mm", [0, 1])];
  expect(odd("2", float)).toBe(undefined);
  expect(odd("2", float, tight)?.high).toBe(1);
  expect(odd("2", limit({ aggregate: "spread" }), tight)).toBe(undefined);
  expect(usualWindows(float, tight).map(({ of }) => of)).toEqual(["quantity", "reading", "default"]);
});

test("what is usual is told in the unit that was typed, the lower end first", () => {
  expect(odd("40 thou", limit({ bands: { major: 0.1 } }))).toMatchObject({ low: 0.787, high: 19.7 });
});

test("temperatures are compared by kelvins, and edges on both sides of nought by their size", () => {
  const hot = limit({ quantity: "temperature", unit: "Cel", bands: { minor: 95, major: 110 } });
  expect([odd("82", hot), odd("0", hot)]).toEqual([undefined, undefined]);
  expect(slips("230", hot)).toEqual(["[degF]"]);
  const both = limit({ bands: { minor: -0.02, major: 0.1 } });
  expect([odd("-0.4", both), odd("0.5", both)]).toEqual([undefined, undefined]);
  expect(odd("0.6", both)).toMatchObject({ low: -0.5, high: 0.5 });
  const below = limit({ direction: "under", bands: { major: -2 } });
  expect(odd("-3", below)).toBe(undefined);
  expect(slips("3", below)).toContain("sign");
  expect(usualWindows(limit({ bands: { major: 0 } }), []).map(({ of }) => of)).toEqual(["quantity"]);
});

test("a quantity nobody knows has no window, and nothing over it is odd", () => {
  expect(usualWindows(limit({ quantity: "taste" }), [])).toEqual([]);
});
