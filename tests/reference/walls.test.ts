// Ultrasonic thickness: gauge manuals and a maker's table of sound speeds (texts seen in stored copies). Corrosion rate
// and life: API 570 and 510 as taught in public study guides, answer keys named beside each; codes not opened. Rust
// grades: ASTM D610 table 1 and ISO 4628-3 (areas of its comparison pictures, not limits of classes).
import { expect, test } from "vitest";
import { answer, figure, refused } from "../support/reckoned.js";

test("set to 5865 m/s in a metal of 5700, a gauge shows 2.9 % too much (published)", () => {
  expect(figure("wall_at_true_speed(10, 5700, 5865)")).toBeCloseTo(9.71867, 5);
  expect(10 / figure("wall_at_true_speed(10, 5700, 5865)")).toBeCloseTo(1.029, 3);
});

test("hot metal shows too thick, and echo time gives the wall", () => {
  expect(figure("wall_when_hot(5, 75, 20)")).toBeCloseTo(4.9505, 6);
  expect(figure("wall_by_echo(5920, 1)")).toBeCloseTo(2.96, 9);
});

test("paint of 2500 m/s counts about 2.4 times (published)", () => {
  expect(figure("paint_as_wall(0.1, 2500, 5920)")).toBeCloseTo(0.237, 3);
});

test("a wall of 0.78 that reads 1.56 may be doubled; at twice the probe's least it may not", () => {
  expect(answer("may_be_doubled(1.56, 0.8)").value).toBe(true);
  expect(answer("may_be_doubled(1.6, 0.8)").value).toBe(false);
});

test("a 0.914 mm tube at 0.79 has lost 13.6 %, whatever unit it was read in (arithmetic)", () => {
  expect(figure("wall_lost(0.79, 0.914)")).toBeCloseTo(13.57, 2);
  expect(figure("wall_lost([0.031102362 in, 0.9], 0.914 mm)")).toBeCloseTo(13.57, 2);
  expect(figure("wall_left([1.31, 1.28, 1.26], 1.55)") + figure("wall_lost([1.31, 1.28, 1.26], 1.55)")).toBeCloseTo(
    100,
  );
});

/** [what, reckoning, published answer, its rounding]. */
const API = [
  ["answer key, example 1", "loss_per_year(0.4, 0.26, 20)", 0.007, 0.0005],
  ["answer key, example 3", "loss_per_year(0.48, 0.41, 22)", 0.0032, 0.00005],
  ["answer key, example 5 (Apr 1999 to Sep 2003)", "loss_per_year(0.565, 0.521, 4.42)", 0.01, 0.0005],
  ["answer key, example 7", "remaining_life(0.211, 0.15, 0.003)", 20.3, 0.05],
  ["practice question 30", "remaining_life(0.21, 0.15, governing_rate(0.005, 0.01))", 6, 0.01],
  ["remaining-life sheet", "loss_per_year(7.8, 3.24, 15)", 0.304, 0.001],
  ["remaining-life sheet", "remaining_life(3.24, 0.37, 0.34)", 8.441, 0.001],
  ["answer key, example 8", "next_look(14, 10)", 7, 0.001],
  ["answer key, example 9", "next_look(9, 10)", 4.5, 0.001],
  ["answer key, example 9", "next_look(5.5, 10)", 2.75, 0.001],
  ["answer key, example 9", "next_look(11.2, 10)", 5.6, 0.001],
] as const;

test.each(API)("API 570/510, %s: %s", (_, text, published, rounding) => {
  expect(Math.abs(figure(text) - published)).toBeLessThanOrEqual(rounding);
});

test("short-term loss of 0.024 in 6 years rules over 0.032 in 13 (inputs published, answer recomputed)", () => {
  expect(figure("governing_rate(loss_per_year(0.75, 0.718, 13), loss_per_year(0.742, 0.718, 6))")).toBeCloseTo(
    0.004,
    9,
  );
});

test("no loss measured is no rate, never a life without end; a wall already at its least has no life left", () => {
  expect(refused("loss_per_year(3.0, 3.1, 2)")).toEqual(["trade.no-loss"]);
  expect(refused("remaining_life(3, 1, 0)")).toEqual(["trade.no-loss"]);
  expect(figure("remaining_life(1, 1, 0.1)")).toBe(0);
});

test("a thinner wall never lasts longer", () => {
  const lives = [3, 2.5, 2, 1.5, 1].map((wall) => figure(`remaining_life(${wall}, 1.2, 0.05)`));
  expect(lives).toEqual([...lives].sort((a, b) => b - a));
});

test("rust grade numbers at, under and over their edges (ASTM D610 table 1)", () => {
  const edges: readonly (readonly [number, number])[] = [
    [0, 10],
    [0.01, 10],
    [0.011, 9],
    [0.03, 9],
    [0.1, 8],
    [0.3, 7],
    [1, 6],
    [1.01, 5],
    [3, 5],
    [10, 4],
    [16, 3],
    [33, 2],
    [50, 1],
    [50.1, 0],
    [100, 0],
  ];
  for (const [share, grade] of edges) expect(figure(`rust_grade_number(${share})`)).toBe(grade);
});

test("a share as pictured is that degree (ISO 4628-3)", () => {
  const pictured: readonly (readonly [number, string])[] = [
    [0, "Ri 0"],
    [0.05, "Ri 1"],
    [0.5, "Ri 2"],
    [1, "Ri 3"],
    [8, "Ri 4"],
    [40, "Ri 5"],
    [50, "Ri 5"],
  ];
  for (const [share, degree] of pictured) expect(answer(`rust_degree(${share})`).value).toBe(degree);
});
