// Outflow: Encyclopaedia Britannica 11th ed. (1911), Hydraulics sections 17 to 20 and 37 (opened), and worked textbook
// problems named beside each. Dew point: WMO-No. 8 annex 4.B constants as quoted in two manuals, recomputed.
import { expect, test } from "vitest";
import { answer, figure, refused, told } from "../support/reckoned.js";

/** Books use a rounder g: time goes as one over its root. */
const withGravity = (seconds: number, g: number): number => seconds * Math.sqrt(9.80665 / g);

test("a worked physics problem: 1 m², 1 cm², 5 m empties in 10 000 s with g = 10", () => {
  const hole = Math.sqrt((4 * 0.0001) / Math.PI) * 1000;
  expect(withGravity(figure(`drain_time_straight(1, ${hole}, 5000, 0, 1)`), 10)).toBeCloseTo(10_000, 2);
});

test("textbook chapter on tank drainage, example 6.3: 2124.5 s printed", () => {
  const surface = Math.PI / 4;
  const found = withGravity(figure(`drain_time_straight(${surface}, 20, 1273.2395, 0, 0.6)`), 9.8);
  expect(Math.abs(found / 2124.5 - 1)).toBeLessThan(0.0005);
});

test("a calculus textbook rounds 0.2214 to 0.22 and prints 22.7 s for a hole of a tenth of the surface", () => {
  const hole = Math.sqrt((4 * 0.1) / Math.PI) * 1000;
  const found = withGravity(figure(`drain_time_straight(1, ${hole}, 25000, 0, 1)`), 9.8);
  expect(found).toBeCloseTo(22.588, 2);
  expect(Math.abs(found / 22.727 - 1)).toBeLessThan(0.008);
});

test("half emptied, and an orifice exercise with 14 m/s", () => {
  const surface = (Math.PI * 25) / 4;
  expect(withGravity(figure(`drain_time_straight(${surface}, 250, 3650, 1825, 0.62)`), 9.81)).toBeCloseTo(163.006, 2);
  // Q = 0.0105611 m³/s with g = 9.81: through 40 mm at 10 m.
  expect(figure("outflow(40, 10000, 0.6)") * Math.sqrt(9.81 / 9.80665)).toBeCloseTo(10.5611, 3);
});

test("a hemisphere has its own formula: 2285 s printed (example 6.4), not that of straight sides", () => {
  const own = withGravity(figure("drain_time_round_bottom(2000, 50, 1500, 0.6)"), 9.81);
  // The book rounds on the way: 0.03 % off.
  expect(Math.abs(own / 2285 - 1)).toBeLessThan(0.0005);
  const surface = Math.PI * (2 * 2 * 1.5 - 1.5 ** 2);
  expect(withGravity(figure(`drain_time_straight(${surface}, 50, 1500, 0, 0.6)`), 9.81)).toBeGreaterThan(1.3 * own);
});

test("a tapered well whose sides do not taper is a straight one", () => {
  const straight = figure(`drain_time_straight(${Math.PI * 0.0001}, 20, 50, 0, 0.62)`);
  expect(figure("drain_time_tapered(20, 20, 50, 0.62)")).toBeCloseTo(straight, 6);
  expect(figure("drain_time_tapered(200, 20, 50, 0.62)")).toBeGreaterThan(straight);
  expect(refused("drain_time_tapered(10, 20, 50, 0.62)")).toEqual(["trade.under-argument"]);
});

/**
 * Flow against the ideal, opened in the encyclopaedia: sharp edge section 20 (head of one foot), cylindrical mouthpiece
 * by experiment (theory gives 0.87), bellmouth section 19 (0.967 at half a metre), re-entrant mouthpiece section 37 (0.5
 * by theory; Borda measured 0.5149, Weisbach 0.5324, Bidone 0.5547).
 */
const EDGES = [
  ["sharp-edge", 0.62],
  ["short-tube", 0.82],
  ["rounded-entry", 0.97],
  ["inward-pipe", 0.5],
] as const;

test.each(EDGES)("%s lets through %s of the ideal flow", (edge, share) => {
  expect(figure(`discharge_coefficient(${edge})`)).toBe(share);
  expect(figure(`outflow(12, 50, discharge_coefficient(${edge}))`)).toBeCloseTo(
    share * figure("outflow(12, 50, 1)"),
    12,
  );
});

test("the encyclopaedia's tables: head in feet and coefficient of a sharp edge, within 3 % of ours (section 20)", () => {
  const printed = [
    [1, 0.62],
    [2, 0.613],
    [4, 0.608],
    [10, 0.605],
    [20, 0.603],
  ] as const;
  const ours = figure("discharge_coefficient(sharp-edge)");
  for (const [feet, coefficient] of printed) {
    expect(Math.abs(ours / coefficient - 1)).toBeLessThan(0.03);
    // Half an inch across, the formula beside the table: 0.6075 + 0.0098 / √h − 0.0037 d.
    expect(0.6075 + 0.0098 / Math.sqrt(feet) - 0.0037 * 0.5).toBeCloseTo(coefficient, 2);
  }
});

test("a sharp edge is a jet of 0.64 of the hole at 0.97 of the speed (encyclopaedia, section 17)", () => {
  expect(figure("discharge_coefficient(sharp-edge)")).toBeCloseTo(0.64 * 0.97, 2);
});

/** Seconds to empty, by letting it run out in small steps of the level: another way than the closed formulae. */
function runOut(depth: number, holeMm: number, coefficient: number, areaAt: (height: number) => number): number {
  const steps = 4000;
  const area = (Math.PI * (holeMm / 1000) ** 2) / 4;
  // The level falls as the square of even steps, so that the slow end is not stepped over.
  let seconds = 0;
  for (let step = 0; step < steps; step++) {
    const [low, high] = [(step / steps) ** 2 * depth, ((step + 1) / steps) ** 2 * depth];
    const middle = (low + high) / 2;
    seconds += (areaAt(middle) * (high - low)) / (coefficient * area * Math.sqrt(2 * 9.80665 * middle));
  }
  return seconds;
}

const SHAPES = [
  [
    "tapered, 200 over a hole of 20",
    "drain_time_tapered(200, 20, 300, 0.62)",
    0.3,
    20,
    0.62,
    (h: number) => (Math.PI / 4) * (0.02 + 0.6 * h) ** 2,
  ],
  [
    "tapered, 90 over a hole of 60",
    "drain_time_tapered(90, 60, 500, 0.8)",
    0.5,
    60,
    0.8,
    (h: number) => (Math.PI / 4) * (0.06 + 0.06 * h) ** 2,
  ],
  [
    "half a ball of 2 m",
    "drain_time_round_bottom(2000, 50, 1500, 0.6)",
    1.5,
    50,
    0.6,
    (h: number) => Math.PI * (4 * h - h ** 2),
  ],
  [
    "a whole ball",
    "drain_time_round_bottom(150, 10, 300, 0.97)",
    0.3,
    10,
    0.97,
    (h: number) => Math.PI * (0.3 * h - h ** 2),
  ],
  ["straight", "drain_time_straight(0.02, 12, 50, 0, 0.62)", 0.05, 12, 0.62, () => 0.02],
] as const;

test.each(SHAPES)("%s: as long as letting it run out step by step", (_, text, depth, hole, coefficient, areaAt) => {
  expect(figure(text) / runOut(depth, hole, coefficient, areaAt)).toBeCloseTo(1, 3);
});

test("a ball holds no more than its own height, a rising level is no emptying", () => {
  expect(figure("drain_time_round_bottom(100, 10, 200, 0.6)")).toBeGreaterThan(0);
  expect(told("drain_time_round_bottom(100, 10, 201, 0.6)")).toContain(
    "start is too large beside the others; at most 200",
  );
  expect(told("drain_time_straight(1, 10, 50, 60, 0.6)")).toContain("end is too large beside the others; at most 50");
  expect(told("drain_time_tapered(10, 20, 50, 0.62)")).toContain("top is too small beside the others; at least 20");
  expect(figure("drain_time_straight(1, 10, 50, 50, 0.6)")).toBe(0);
});

test("a smaller hole, a deeper well or a duller edge never empties sooner", () => {
  const times = (texts: readonly string[]) => texts.map(figure);
  const rising = (row: readonly number[]) => expect(row).toEqual([...row].sort((a, b) => a - b));
  rising(times([20, 15, 12, 8, 3].map((hole) => `drain_time_straight(0.02, ${hole}, 50, 0, 0.62)`)));
  rising(times([10, 50, 90, 400].map((start) => `drain_time_straight(0.02, 12, ${start}, 0, 0.62)`)));
  rising(times([0.97, 0.8, 0.62, 0.5].map((c) => `drain_time_straight(0.02, 12, 50, 0, ${c})`)));
  rising(times([10, 20, 40, 80].map((took) => `hole_open(8 s, ${took} s)`)));
});

test("dividing volume by starting flow gives half the true time", () => {
  // A clear 12 mm hole under 50 mm passes a litre in about 15 s while it stays full, and needs twice as long to empty it.
  const flow = figure("outflow(12, 50, 0.62)");
  expect(1 / flow).toBeCloseTo(14.4, 0);
  const surface = 0.001 / 0.05;
  expect(figure(`drain_time_straight(${surface}, 12, 50, 0, 0.62)`)).toBeCloseTo(2 / flow, 6);
  expect(figure(`time_by_starting_flow(1, ${flow})`)).toBeCloseTo(2 / flow, 9);
});

test("a hole that takes twice as long is half open, and never more than open", () => {
  expect(figure("hole_open(30 s, 15 s)")).toBe(50);
  expect(figure("hole_open(10 s, 15 s)")).toBe(100);
  expect(refused("drain_time_straight(1, 10, 50, 60, 0.6)")).toEqual(["trade.over-argument"]);
});

const DEW = [
  [20, 50, 9.2552],
  [25, 60, 16.693],
  [15, 80, 11.575],
  [5, 70, -0.022141],
  [0, 80, -3.0404],
  [40, 50, 27.598],
  [20, 100, 20],
  [12, 75, 7.7027],
  [12, 85, 9.6],
  [8, 70, 2.9],
] as const;

test.each(DEW)("air at %s °C, %s in a hundred: dew point %s °C", (air, humidity, dew) => {
  expect(Math.abs(figure(`dew_point(${air}, ${humidity})`) - dew)).toBeLessThan(0.06);
});

test("40 °C and half wet: 27.6 °C (an instrument maker's sheet, from memory)", () => {
  expect(figure("dew_point(40, 50)")).toBeCloseTo(27.6, 1);
});

const WET = [
  [20, 65, 13, -0.2174],
  [20, 65, 12.9, -0.3174],
  [8, 90, 6, -0.4585],
] as const;

test.each(WET)("at %s °C, %s in a hundred, a surface of %s °C is wet", (air, humidity, surface, margin) => {
  expect(figure(`condensation_margin(${air}, ${humidity}, ${surface})`)).toBeCloseTo(margin, 3);
  expect(answer(`condenses(${air}, ${humidity}, ${surface})`).value).toBe(true);
});

test("paint wants three kelvin over the dew point; dry air has no dew point to tell", () => {
  expect(answer("dry_enough_to_paint(20, 50, 12.2)").value).toBe(false);
  expect(answer("dry_enough_to_paint(20, 50, 12.3)").value).toBe(true);
  expect(refused("dew_point(20, 0)")).toEqual(["trade.range"]);
});
