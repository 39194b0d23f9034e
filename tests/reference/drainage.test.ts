// Outflow: Encyclopaedia Britannica 11th ed. (1911), Hydraulics sections 17 and 18 (opened), and worked textbook problems
// named beside each. Dew point: WMO-No. 8 annex 4.B constants as quoted in two manuals, recomputed.
import { expect, test } from "vitest";
import { answer, figure, refused } from "../support/reckoned.js";

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

test("a calculus textbook rounds 0.2214 to 0.22 and prints 22.7 s", () => {
  const hole = Math.sqrt(4 / Math.PI) * 1000;
  expect(refused(`drain_time_straight(10, ${hole}, 25000, 0, 1)`)).toEqual(["trade.range"]);
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
