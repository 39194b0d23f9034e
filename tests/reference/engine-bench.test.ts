// Compression and leak-down: workshop manuals (70 and 75 % rules), TM 5-3895-359 (example and diesel table), FAA AC
// 43.13-1B 8-14; a magazine letter for altitude. Standard atmosphere: ISO 2533 ratios recomputed. Shims, liners, seals:
// workshop manual examples. Lapping: geometry, recomputed.
import { expect, test } from "vitest";
import { answer, figure, refused, told } from "../support/reckoned.js";

const CYLINDERS = [
  ["445, 440, 405, 435", "[psi]", 8.9888, 91.011, 3],
  ["12.0, 11.8, 8.9, 11.9", "bar", 25.833, 74.167, 3],
  ["175, 170, 168, 172", "[psi]", 4, 96, 3],
] as const;

test.each(CYLINDERS)("cylinders at %s %s", (values, unit, spread, ratio, lowest) => {
  const list = `[${values
    .split(", ")
    .map((one) => `${one} ${unit === "bar" ? "bar" : "psi"}`)
    .join(", ")}]`;
  expect(figure(`compression_spread(${list})`)).toBeCloseTo(spread, 3);
  expect(figure(`lowest_over_highest(${list})`)).toBeCloseTo(ratio, 3);
  expect(figure(`lowest_cylinder(${list})`)).toBe(lowest);
});

const LEAKS = [
  [80, 60, 25],
  [80, 72, 10],
  [100, 85, 15],
  [80, 59, 26.25],
] as const;

test.each(LEAKS)("%s psi in, %s held", (supply, held, leak) => {
  expect(figure(`leak_down(${supply} psi, ${held} psi)`)).toBeCloseTo(leak, 9);
});

test("a cylinder can't hold more than is put in, and one figure is no spread", () => {
  expect(refused("leak_down(5, 6)")).toEqual(["trade.over-argument"]);
  expect(refused("compression_spread(12)")).toEqual(["trade.too-few"]);
});

test("a dead cylinder is all the spread there is, and four dead ones tell nothing", () => {
  expect(figure("compression_spread([12, 0, 11.8, 11.9])")).toBe(100);
  expect(figure("lowest_over_highest([12, 0, 11.8, 11.9])")).toBe(0);
  expect(figure("lowest_cylinder([12, 0, 11.8, 11.9])")).toBe(2);
  expect(refused("compression_spread([0, 0, 0, 0])")).toEqual(["trade.no-answer"]);
});

test("oil that lifts 8 bar to 10 gains a quarter; spread and lowest share make the whole", () => {
  expect(figure("wet_gain(8, 10)")).toBeCloseTo(25, 9);
  expect(figure("wet_gain(10, 10)")).toBe(0);
  const list = "[12, 9, 11.5]";
  expect(figure(`compression_spread(${list})`) + figure(`lowest_over_highest(${list})`)).toBeCloseTo(100, 9);
});

/** Feet and pressure ratio of the standard atmosphere. */
const HEIGHTS = [
  [500, 0.98206],
  [1500, 0.94697],
  [2500, 0.9129],
  [3500, 0.87983],
  [4500, 0.84774],
  [5500, 0.8166],
  [6500, 0.78639],
  [7500, 0.75709],
] as const;

test.each(HEIGHTS)("air pressure at %s feet", (feet, ratio) => {
  expect(figure(`pressure_share_at_height(${feet * 0.3048})`)).toBeCloseTo(ratio, 4);
});

/** Air pressure by stacking thin layers of standard air (288.15 K, 6.5 K a kilometre, 287.053 J/(kg K); from memory). */
function stacked(height: number): number {
  const layers = 2000;
  const thick = height / layers;
  let share = 1;
  for (let i = 0; i < layers; i++) {
    const kelvin = 288.15 - 0.0065 * (i + 0.5) * thick;
    share *= Math.exp((-9.80665 * thick) / (287.053 * kelvin));
  }
  return share;
}

test.each([-430, 0, 300, 1676.4, 3000, 5000])(
  "air pressure at %s m is that of air stacked layer by layer",
  (height) => {
    expect(figure(`pressure_share_at_height(${height})`)).toBeCloseTo(stacked(height), 5);
  },
);

test("workshop factors follow the density of the air, which falls more slowly: not mixed with pressure", () => {
  // 0.853 printed for 5500 feet (opened): as the density ratio of 0.849, not the pressure ratio of 0.817.
  expect(figure("pressure_share_at_height(1676.4)")).toBeLessThan(0.853 - 0.03);
});

test("120 psi at the sea is about 100 at 5000 feet (a magazine letter), and back again", () => {
  const share = figure("pressure_share_at_height(1524)");
  expect(120 * share).toBeCloseTo(99.846, 2);
  expect(figure("compression_at_sea(99.846 psi, 1524)")).toBeCloseTo(120 * 0.0689475729, 3);
  // 500, 1000 and 1500 m.
  const metres = [500, 1000, 1500].map((height) => figure(`pressure_share_at_height(${height})`));
  for (const [index, printed] of [0.942, 0.887, 0.835].entries()) expect(metres[index]).toBeCloseTo(printed, 3);
});

test("shims: a maker's chart prints 3.15 for 2.95 at 0.47", () => {
  expect(figure("shim_needed(2.95, 0.47, 0.27)")).toBeCloseTo(3.15, 9);
  const stock = "[2.60, 2.65, 2.70, 3.10, 3.15, 3.20]";
  expect(figure(`shim_to_fit(2.95, 0.47, 0.27, ${stock})`)).toBe(3.15);
  expect(figure(`shim_to_fit(2.7, 0.12, 0.2, ${stock})`)).toBe(2.6);
  expect(figure(`clearance_with_shim(2.7, 0.12, shim_to_fit(2.7, 0.12, 0.2, ${stock}))`)).toBeCloseTo(0.22, 9);
  expect(figure("shim_needed(3.1, 0.25, 0.25)")).toBe(3.1);
  expect(answer("shim_step_suspicious(2.7, 3.11)").value).toBe(true);
  expect(answer("shim_step_suspicious(2.75, 3.15)").value).toBe(false);
});

test("of two shims as near, the thinner: it does not leave the valve tight", () => {
  expect(figure("shim_to_fit(2.70, 0.225, 0.20, [2.70, 2.75])")).toBe(2.7);
});

test("no shim is thinner than nothing, and what is left is told", () => {
  expect(figure("shim_needed(2, 0.05, 2)")).toBeCloseTo(0.05, 9);
  expect(refused("shim_needed(2, 0, 2)")).toEqual(["trade.no-shim"]);
  expect(refused("shim_needed(2, 0, 2.05)")).toEqual(["trade.no-shim"]);
  // Whatever is fitted, clearance and shim together stay the same.
  for (const shim of [2.5, 2.7, 3.1])
    expect(figure(`clearance_with_shim(2.7, 0.2, ${shim})`) + shim).toBeCloseTo(2.9, 9);
});

const LAPPED = [
  [0.25, 0.08, 0, 0.08, 0.17],
  [0.25, 0.05, 30, 0.057735, 0.19226],
  [0.15, 0.12, 45, 0.16971, -0.019706],
] as const;

test.each(LAPPED)("clearance %s, %s mm lapped off at %s°", (before, metal, angle, rise, after) => {
  const up = figure(`valve_rise_by_lapping(${metal}, ${angle})`);
  expect(up).toBeCloseTo(rise, 5);
  expect(figure(`clearance_after_lapping(${before}, ${up})`)).toBeCloseTo(after, 4);
});

test("lapping only ever closes the gap", () => {
  const gaps = [0, 0.05, 0.1, 0.2].map((metal) =>
    figure(`clearance_after_lapping(0.25, valve_rise_by_lapping(${metal}, 45))`),
  );
  expect(gaps).toEqual([...gaps].sort((a, b) => b - a));
});

test("liner seal: 0.23 wanted, 0.10 the largest measured, so 0.13; of the sizes the one below", () => {
  expect(figure("spacer_needed(0, [0.10, 0.08], 0.23)")).toBeCloseTo(0.13, 9);
  expect(figure("spacer_to_fit(0.13, [0.110, 0.122, 0.135])")).toBe(0.122);
  expect(figure("spacer_needed(0.102, 0.045, 0.080)")).toBeCloseTo(0.137, 9);
  expect(figure("stand_out_with_spacer([0.045, 0.03], 0.102, 0.137)")).toBeCloseTo(0.08, 9);
  expect(refused("spacer_to_fit(0.1, [0.2])")).toEqual(["trade.no-spacer"]);
  expect(refused("spacer_needed(0.05, 0.3, 0.08)")).toEqual(["trade.stands-too-high"]);
});

test("a liner that stands just as wanted needs no spacer, one a hair too high has none", () => {
  expect(figure("spacer_needed(0.5, 0.25, -0.25)")).toBe(0);
  expect(figure("spacer_needed(0.5, 0.25, -0.1875)")).toBe(0.0625);
  expect(refused("spacer_needed(0.5, 0.25, -0.3125)")).toEqual(["trade.stands-too-high"]);
  expect(told("spacer_needed(0.5, 0.25, -0.3125)")).toContain("it stands too high even without a spacer (heights)");
});

test("neighbours, tilt and flatness are widest differences", () => {
  expect(figure("neighbour_step([0.05, 0.06, 0.02, 0.03])")).toBeCloseTo(0.04, 9);
  expect(figure("liner_tilt([0.05, 0.06, 0.02, 0.03])")).toBeCloseTo(0.04, 9);
  expect(figure("flatness([0, 0.03, 0.05, 0.02])")).toBeCloseTo(0.05, 9);
  expect(figure("seal_squeeze(3, 2.4)")).toBeCloseTo(20, 9);
});

test("the mean of a maker's thrust shim example: 1.93 less the middle of 0.11 to 0.17 is 1.79", () => {
  expect(1.93 - figure("mean_reading([0.11, 0.17])")).toBeCloseTo(1.79, 9);
});
