// [AS1]–[AS4] Several readings into one value with its uncertainty.
import { expect, test } from "vitest";
import { aggregate, onlyGrows, singleU } from "./reading.js";

const shots = (...values: number[]) => ({ values, resolution: 0.01, error: 0.01, setUp: 0.02 });
const single = Math.sqrt(0.0001 / 12 + (0.0001 + 0.0004) / 3);

test("[AS1] gauge error and set-up error add in quadrature, whatever the gauge", () => {
  expect(singleU(shots(0))).toBeCloseTo(single, 15);
});

test("[AS2] no reading has no value, never nought", () => {
  for (const how of ["max", "min", "mean", "median", "spread", "each"] as const)
    expect(aggregate(shots(), how)).toBeUndefined();
});

test("[AS2] largest, smallest and each carry the uncertainty of one reading", () => {
  expect(aggregate(shots(0.1, 0.3, 0.2), "max")).toEqual({ value: 0.3, u: single });
  expect(aggregate(shots(0.1, 0.3, 0.2), "min")).toEqual({ value: 0.1, u: single });
  expect(aggregate(shots(0.1, 0.3, 0.2), "each", "over")?.value).toBe(0.3);
  expect(aggregate(shots(0.1, 0.3, 0.2), "each", "under")?.value).toBe(0.1);
});

test("[AS2] the mean adds the scatter of its repeats; one reading has none", () => {
  // 0.1, 0.3: s² = 0.02, s²/n = 0.01
  expect(aggregate(shots(0.1, 0.3), "mean")?.value).toBeCloseTo(0.2, 12);
  expect(aggregate(shots(0.1, 0.3), "mean")?.u).toBeCloseTo(Math.sqrt(single ** 2 + 0.01), 12);
  expect(aggregate(shots(0.1), "mean")).toEqual({ value: 0.1, u: single });
});

test("[AS2] the median of an even number lies between the middle two", () => {
  expect(aggregate(shots(4, 1, 3, 2), "median")?.value).toBe(2.5);
  expect(aggregate(shots(9, 1, 3), "median")?.value).toBe(3);
});

test("[AS2] the spread of one reading is nought with the uncertainty of two", () => {
  const spread = aggregate(shots(0.2, 0.5, 0.3), "spread");
  expect(spread?.value).toBeCloseTo(0.3, 12);
  expect(spread?.u).toBeCloseTo(Math.SQRT2 * single, 12);
  expect(aggregate(shots(0.2), "spread")?.value).toBe(0);
});

test("[AS4] only what further readings cannot better counts while readings are still to come", () => {
  expect(onlyGrows("max", "over")).toBe(true);
  expect(onlyGrows("min", "over")).toBe(false);
  expect(onlyGrows("min", "under")).toBe(true);
  expect(onlyGrows("spread", "over")).toBe(true);
  expect(onlyGrows("each", "under")).toBe(true);
  expect(onlyGrows("mean", "over")).toBe(false);
});
