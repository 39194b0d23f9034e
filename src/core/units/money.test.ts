import { expect, test } from "vitest";
import { less, minorOf, money, share, split, sum } from "./index.js";

const parts = (minor: number, weights: readonly number[]): readonly number[] =>
  split(money(minor), weights).map(minorOf);

test("sums and differences are exact", () => {
  expect(minorOf(sum(money(1999), money(1), money(-500)))).toBe(1500);
  expect(minorOf(sum())).toBe(0);
  expect(minorOf(less(money(10), money(25)))).toBe(-15);
  expect(Object.is(minorOf(less(money(5), money(5))), 0)).toBe(true);
});

test("a share is rounded half away from zero", () => {
  expect(minorOf(share(money(5), 1, 2))).toBe(3);
  expect(minorOf(share(money(-5), 1, 2))).toBe(-3);
  expect(minorOf(share(money(5), -1, 2))).toBe(-3);
  expect(minorOf(share(money(4), 1, 3))).toBe(1);
  expect(minorOf(share(money(5), 1, 3))).toBe(2);
  // 100 minutes at 95.00 an hour
  expect(minorOf(share(money(9500), 100, 60))).toBe(15833);
  // 19 % of 0.50
  expect(minorOf(share(money(50), 19, 100))).toBe(10);
  expect(minorOf(share(money(9_007_199_254_740_991), 3, 3))).toBe(9_007_199_254_740_991);
});

test("a split adds up, with what is left over at the largest remainders", () => {
  expect(parts(100, [1, 1, 1])).toEqual([34, 33, 33]);
  expect(parts(-100, [1, 1, 1])).toEqual([-34, -33, -33]);
  expect(parts(10, [3, 3, 1])).toEqual([4, 4, 2]);
  expect(parts(101, [50, 30, 20])).toEqual([51, 30, 20]);
  expect(parts(2, [0, 1, 0, 2])).toEqual([0, 1, 0, 1]);
  expect(parts(0, [1, 2])).toEqual([0, 0]);
});

test("a split always adds up and never strays a whole unit from its share", () => {
  for (let minor = -50; minor <= 50; minor += 7)
    for (const weights of [
      [1, 2, 3],
      [7, 7, 7, 1],
      [1, 0, 5],
      [999, 1],
    ]) {
      const total = weights.reduce((all, weight) => all + weight, 0);
      const made = parts(minor, weights);
      expect(made.reduce((all, part) => all + part, 0)).toBe(minor);
      made.forEach((part, i) => {
        expect(Math.abs(part - (minor * (weights[i] ?? 0)) / total)).toBeLessThan(1);
      });
    }
});

test("what is no whole number of minor units, no share and no weight is our own mistake", () => {
  expect(() => money(0.5)).toThrow(RangeError);
  expect(() => money(2 ** 53)).toThrow(RangeError);
  expect(() => share(money(1), 1, 0)).toThrow(RangeError);
  expect(() => share(money(1), 0.5, 1)).toThrow(RangeError);
  expect(() => split(money(1), [])).toThrow(RangeError);
  expect(() => split(money(1), [1, -1])).toThrow(RangeError);
  expect(() => sum(money(9_007_199_254_740_991), money(1))).toThrow(RangeError);
});
