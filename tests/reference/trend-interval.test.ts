// Fieller's interval by another way: no formula for its ends, but trying where the fitted line may still be at the limit.
// Student's points from the distribution itself (summed up, not looked up). Sen's slope by counting, on small lists.
import { expect, test } from "vitest";
import { leastSquaresCrossing, medianLine } from "../../src/core/trade/trend.js";

/** Integral by Simpson's rule over even steps. */
function area(of: (at: number) => number, from: number, to: number): number {
  const steps = 400;
  const h = (to - from) / steps;
  let sum = of(from) + of(to);
  for (let i = 1; i < steps; i++) sum += (i % 2 === 0 ? 2 : 4) * of(from + i * h);
  return (sum * h) / 3;
}

/** Where a function that falls through nothing does so. */
function root(of: (at: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2;
    if (of(middle) > 0 === of(low) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Half width that holds 90 of 100 of Student's distribution: with t = √f · tan θ it is a power of the cosine. */
function student(freedom: number): number {
  const density = (theta: number) => Math.cos(theta) ** (freedom - 1);
  const whole = area(density, 0, Math.PI / 2);
  const theta = root((end) => 0.9 - area(density, 0, end) / whole, 0, Math.PI / 2);
  return Math.sqrt(freedom) * Math.tan(theta);
}

/** Ends of the times at which the line may be at the limit, by trying; `t` half widths of its own scatter. */
function tried(x: readonly number[], y: readonly number[], edge: number, t: number): readonly [number, number] {
  const n = x.length;
  const [mx, my] = [x, y].map((list) => list.reduce((sum, one) => sum + one, 0) / n) as [number, number];
  const sxx = x.reduce((sum, one) => sum + (one - mx) ** 2, 0);
  const slope = x.reduce((sum, one, i) => sum + (one - mx) * ((y[i] ?? 0) - my), 0) / sxx;
  const scatter = x.reduce((sum, one, i) => sum + ((y[i] ?? 0) - my - slope * (one - mx)) ** 2, 0) / (n - 2);
  const off = (at: number) => (my + slope * (at - mx) - edge) ** 2 - t ** 2 * scatter * (1 / n + (at - mx) ** 2 / sxx);
  const at = mx + (edge - my) / slope;
  const outwards = (way: 1 | -1): number => {
    let far = 1;
    while (off(at + way * far) < 0 && far < 1e6) far *= 2;
    return root(off, at, at + way * far);
  };
  return [outwards(-1), outwards(1)];
}

const COUNTS = [3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 25, 40];

test.each(COUNTS)("%s readings: as wide as trying finds it", (n) => {
  const x = Array.from({ length: n }, (_, i) => 3 * i + (i % 3));
  const y = x.map((one, i) => 10 - 0.2 * one + 0.04 * Math.sin(7 * i + 1));
  const found = leastSquaresCrossing(x, y, -4);
  const [from, to] = tried(x, y, -4, student(n - 2));
  const width = to - from;
  // Student's points are written to six figures; beyond the table they are read off between its end and the normal one.
  expect(Math.abs((found?.from ?? Number.NaN) - from)).toBeLessThan(0.001 * width);
  expect(Math.abs((found?.to ?? Number.NaN) - to)).toBeLessThan(0.001 * width);
  expect(found?.at).toBeGreaterThan(from);
  expect(found?.at).toBeLessThan(to);
});

/** Five readings that scatter about a straight line by a pattern that turns it neither way (−1, 2, 0, −2, 1). */
const scattered = (share: number) => {
  const size = (Math.sqrt(3 * share) * 0.5) / student(3);
  return [-1, 2, 0, -2, 1].map((one, i) => 10 - 0.5 * (i - 2) + one * size);
};

test("scatter that could hide the whole slope leaves no interval, a little less leaves a wide one", () => {
  const x = [-2, -1, 0, 1, 2];
  const hidden = leastSquaresCrossing(x, scattered(1.05), 8);
  expect(hidden?.at).toBeCloseTo(4, 9);
  expect(hidden?.from).toBeUndefined();
  expect(hidden?.to).toBeUndefined();
  const y = scattered(0.93);
  const found = leastSquaresCrossing(x, y, 8);
  const [from, to] = tried(x, y, 8, student(3));
  expect((found?.from ?? Number.NaN) / from).toBeCloseTo(1, 1);
  expect((found?.to ?? Number.NaN) / to).toBeCloseTo(1, 1);
});

test("the median slope leaves as many pairs steeper as flatter", () => {
  const [x, y] = [
    [0, 1, 3, 4, 8],
    [10, 9.1, 8.3, 8.4, 5],
  ];
  const slope = medianLine(x, y)?.slope ?? Number.NaN;
  const pairs = x.flatMap((a, i) => x.slice(i + 1).map((b, k) => ((y[i + 1 + k] ?? 0) - (y[i] ?? 0)) / (b - a)));
  expect(pairs.filter((one) => one > slope)).toHaveLength(pairs.filter((one) => one < slope).length);
});
