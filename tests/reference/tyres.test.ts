// Tyres: load index UN R30 annex 4 as reprinted twice (71 to 110; 68 to 70 once, 60 to 67 from memory); date codes 49 CFR
// 574.5 and handbook pages; size examples of published calculators' pages (rounded figures). Wrong public copies stand
// here as what must not come out.
import { expect, test } from "vitest";
import { answer, figure, refused } from "../support/reckoned.js";

const LOADS: Readonly<Record<number, number>> = {
  60: 250,
  64: 280,
  68: 315,
  70: 335,
  71: 345,
  75: 387,
  80: 450,
  82: 475,
  88: 560,
  91: 615,
  95: 690,
  100: 800,
  103: 875,
  105: 925,
  109: 1030,
  110: 1060,
};

test("load by index, where two public copies print 857 and 924", () => {
  for (const [index, kg] of Object.entries(LOADS)) expect(figure(`tyre_load(${index})`)).toBe(kg);
  expect(figure("tyre_load(103)")).not.toBe(857);
  expect(figure("tyre_load(105)")).not.toBe(924);
});

test("the table rises step by step and follows 45 · 10^(index / 80) within 1.4 %", () => {
  for (let index = 60; index <= 110; index++) {
    const kg = figure(`tyre_load(${index})`);
    if (index > 60) expect(kg).toBeGreaterThan(figure(`tyre_load(${index - 1})`));
    expect(Math.abs(kg / (45 * 10 ** (index / 80)) - 1)).toBeLessThan(0.0145);
  }
  expect(refused("tyre_load(59)")).toEqual(["trade.range"]);
  expect(refused("tyre_load(90.5)")).toEqual(["trade.whole"]);
});

test("H lies between U and V", () => {
  const [u, h, v] = ["U", "H", "V"].map((symbol) => figure(`tyre_speed(${symbol})`));
  expect([u, h, v]).toEqual([200, 210, 240]);
});

test("load falls at high speed", () => {
  expect(figure("tyre_load_at_speed(91, V, 225)")).toBeCloseTo(587.325, 3);
  expect(figure("tyre_load_at_speed(91, W, 255)")).toBeCloseTo(568.875, 3);
  expect(figure("tyre_load_at_speed(91, V, 210)")).toBe(615);
  expect(refused("tyre_load_at_speed(91, H, 211)")).toEqual(["trade.over-argument"]);
  expect(answer("tyre_carries(91, V, 1230, 240)").value).toBe(true);
  expect(answer("tyre_carries(91, V, 1231, 240)").value).toBe(false);
  expect(answer("tyre_carries(91, H, 1000, 211)").value).toBe(false);
});

/** section, aspect, rim in inches; height, diameter, circumference and turns a mile as published (rounded). */
const SIZES = [
  [205, 55, 16, 112.75, 631.9, 1985, 503.735],
  [225, 60, 17, 135, 701.8, 2204, 453.562],
  [225, 45, 17, 101.25, 634.3, 1992, 501.829],
  [245, 55, 18, 134.75, 726.7, 2283, 438.021],
  [155, 80, 13, 124, 578.2, 1816, 550.519],
  [165, 80, 15, 132, 645, 2026, 493.504],
] as const;

test.each(SIZES)("%s/%s R%s", (section, aspect, rim, height, diameter, circumference, turns) => {
  expect(figure(`tyre_section_height(${section}, ${aspect})`)).toBeCloseTo(height, 9);
  const d = figure(`tyre_diameter(${section}, ${aspect}, ${rim} in)`);
  expect(d).toBeCloseTo(diameter, 6);
  expect(Math.abs(figure(`tyre_circumference(${d})`) - circumference)).toBeLessThan(1);
  expect(figure(`tyre_turns_per_km(${d})`)).toBeCloseTo(turns, 2);
});

test("a rim of 390 mm is no rim of 15 inches", () => {
  expect(figure("tyre_diameter(190, 65, 390 mm)") - figure("tyre_diameter(190, 65, inches(15))")).toBeCloseTo(9, 9);
});

test("other sizes: −1.3 % and 10.6 % printed", () => {
  const change = (before: string, after: string) =>
    figure(`tyre_size_change(tyre_diameter(${before}), tyre_diameter(${after}))`);
  expect(change("215, 65, 17 in", "225, 60, 17 in")).toBeCloseTo(-1.3356, 3);
  expect(change("205, 55, 16 in", "225, 65, 16 in")).toBeCloseTo(10.603, 2);
});

test("date codes: age on 25 November 2026", () => {
  const today = 2026 + 328 / 365;
  expect(figure(`tyre_age("2314", ${today})`)).toBeCloseTo(12.5, 1);
  expect(figure(`tyre_age("0721", ${today})`)).toBeCloseTo(5.8, 1);
  expect(figure(`tyre_age_at_least("498", ${today})`)).toBeCloseTo(28, 0);
});

test("three figures name no decade: never a date, and those of week 0, 54 or the future none at all", () => {
  for (const code of ["317", "031", "498"]) expect(refused(`tyre_age("${code}", 2026)`)).toEqual(["trade.date-decade"]);
  expect(figure('tyre_age("0301", 2026)')).toBeCloseTo(25, 0);
  expect(refused('tyre_age("5299", 2026)')).toEqual(["trade.date-future"]);
  expect(refused('tyre_age("0012", 2026)')).toEqual(["trade.date-week"]);
  expect(refused('tyre_age("5412", 2026)')).toEqual(["trade.date-week"]);
  expect(refused('tyre_age("12", 2026)')).toEqual(["trade.date-length"]);
  expect(refused('tyre_age("a123", 2026)')).toEqual(["trade.date-length"]);
});

test("2.2 bar at 20 °C shows about 1.98 at 0 °C: cold, not leaking (arithmetic)", () => {
  expect(figure("warm_pressure(2.2, 20, 0)")).toBeCloseTo(1.98, 2);
});
