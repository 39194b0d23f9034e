/** Mending what was read: one reading replaced by another, units the trade uses. */
import { expect, test } from "vitest";
import { isQuantity, QUANTITIES, unitsOf } from "../../core/units/index.js";
import { setUpIn, unitsOffered, withReplaced } from "./reading-view.js";
import { tradeUnits } from "./trade-units.js";

const play = { quantity: "length", unit: "mm", window: [0, 2] as [number, number], shots: 3 };
const inch = { value: 0.01, unit: "[in_i]", text: "0.010", canonical: 0.254, decimals: 3 };

test("a changed reading takes the place of the old one, among its fellows in their unit", () => {
  const before = { type: "reading", values: ["0.10", "0.20"], unit: "mm" } as const;
  expect(withReplaced(play, before, 0, inch, undefined)).toEqual({ ...before, values: ["0.254", "0.20"] });
});

test("a lone reading is replaced with the unit it was typed in", () => {
  const before = { type: "reading", values: ["0.10"], unit: "mm" } as const;
  expect(withReplaced(play, before, 0, inch, undefined)).toEqual({
    type: "reading",
    values: ["0.010"],
    unit: "[in_i]",
  });
});

test("lengths are offered in mm, in and thou; an age in years, not by a letter", () => {
  expect(unitsOffered(play).map(({ words }) => words)).toEqual(["mm", "in", "thou"]);
  expect(unitsOffered({ quantity: "age", unit: "a", window: [0, 60] }).map(({ words }) => words)).toEqual([
    "years",
    "months",
  ]);
});

test("every unit offered is one of its quantity, and no more than three are", () => {
  for (const quantity of QUANTITIES) {
    if (!isQuantity(quantity)) throw new Error(quantity);
    const codes = unitsOf(quantity).map(({ code }) => code);
    expect(codes, quantity).toEqual(expect.arrayContaining([...tradeUnits(quantity)]));
    expect(tradeUnits(quantity).length, quantity).toBeLessThanOrEqual(3);
  }
});

test("a set-up error is told in the unit shown", () => {
  expect(setUpIn(play, 0.0254, "[mil_i]")).toBeCloseTo(1, 9);
  expect(setUpIn(play, undefined, "mm")).toBeUndefined();
});
