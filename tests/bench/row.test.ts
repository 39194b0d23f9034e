import { expect, test } from "vitest";
import { interleaved, percentile } from "./row.js";

test("percentiles of a hundred even steps are those steps", () => {
  const steps = Array.from({ length: 100 }, (_, index) => index + 1);
  expect(percentile(steps, 0.5)).toBe(50);
  expect(percentile(steps, 0.95)).toBe(95);
  expect(percentile([7], 0.95)).toBe(7);
  expect(percentile([], 0.5)).toBeNaN();
});

test("ten times the work takes clearly longer, side by side", () => {
  const spin = (turns: number) => () => {
    let sum = 0;
    for (let turn = 0; turn < turns; turn++) sum += Math.sqrt(turn);
    return sum;
  };
  const { once = 0, tenfold = 0 } = interleaved({ once: spin(2_000), tenfold: spin(20_000) }, 7);
  expect(tenfold).toBeGreaterThan(once * 2);
});
