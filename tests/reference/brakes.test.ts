// Brakes: UK car test inspection manual 3.7 and 3.8 (2012) and Directive 2010/48/EU for formulae, vectors recomputed;
// Directive 2014/45/EU Annex I 1.2.2 for least efficiencies. Fluid: 49 CFR 571.116 S5.1.1 and S5.1.2. Play: UK manual of
// 2012 (13, 48, 75 mm at 380 mm). Public copies known to be wrong stand here as what must not come out.
import { expect, test } from "vitest";
import { figure, refused } from "../support/reckoned.js";

test("efficiency is effort over weight, never weight over effort", () => {
  expect(figure("brake_efficiency(7000 N, 1400 kg)")).toBeCloseTo(50.9858, 4);
  expect(figure("brake_efficiency([2000, 2000, 745, 745], 1120)")).toBeCloseTo(49.9843, 4);
  expect(figure("brake_efficiency(2746, 1400)")).toBeCloseTo(20.001, 3);
  // One page tells readers to divide weight by effort.
  expect(figure("brake_efficiency(7000, 1400)")).not.toBeCloseTo((100 * 1400 * 9.80665) / 7000, 0);
});

test("by deceleration and by stopping distance", () => {
  expect(figure("efficiency_by_deceleration(4.905)")).toBeCloseTo(50.0171, 4);
  expect(figure("efficiency_by_deceleration(5.688)")).toBeCloseTo(58.0015, 4);
  expect(figure("efficiency_by_deceleration(7.85)")).toBeCloseTo(80.0477, 4);
  expect(figure("deceleration_of_stop(20 mph, 8.2)")).toBeCloseTo(4.8743, 3);
  // 5.7 m/s² and 48 km/h in 17 m, as worked in the trade's own notes.
  expect(figure("efficiency_by_deceleration(5.7)")).toBeCloseTo(58.1, 1);
  expect(figure("efficiency_by_deceleration(deceleration_of_stop(48 km/h, 17))")).toBeCloseTo(53.3, 1);
  expect(figure("dive_error(2)")).toBeCloseTo(3.5, 1);
});

test("30 % imbalance is the 70 % rule, and two dead brakes have none", () => {
  expect(figure("brake_imbalance(200, 150)")).toBe(25);
  expect(figure("brake_imbalance(200, 140)")).toBe(30);
  expect(figure("brake_imbalance(175, 250)")).toBe(30);
  expect(refused("brake_imbalance(0, 0)")).toEqual(["trade.both-zero"]);
});

test("imbalance does not care for the side or the unit, and a weaker brake never makes it less", () => {
  expect(figure("brake_imbalance(2100, 1500)")).toBe(figure("brake_imbalance(1500, 2100)"));
  expect(figure("brake_imbalance(210 kgf, 150 kgf)")).toBeCloseTo(figure("brake_imbalance(2100, 1500)"), 9);
  const weaker = [2000, 1800, 1400, 700, 0].map((right) => figure(`brake_imbalance(2000, ${right})`));
  expect(weaker).toEqual([...weaker].sort((a, b) => a - b));
  expect(weaker.at(-1)).toBe(100);
});

test("effort by weight and deceleration by free fall are the same share (force is mass times acceleration)", () => {
  for (const deceleration of [2, 4.9, 7.85])
    expect(figure(`brake_efficiency(${1120 * deceleration} N, 1120 kg)`)).toBeCloseTo(
      figure(`efficiency_by_deceleration(${deceleration})`),
      9,
    );
});

test("least service efficiency by country and first use", () => {
  expect(figure("service_brake_minimum(UK, 2010.66)")).toBe(50);
  expect(figure("service_brake_minimum(UK, 2010.67)")).toBe(58);
  expect(figure("service_brake_minimum(EU, 2011.99)")).toBe(50);
  expect(figure("service_brake_minimum(EU, 2012)")).toBe(58);
  expect(figure("service_brake_minimum(UK, 1967.9)")).toBe(40);
  expect(figure("parking_brake_minimum(split-circuits)")).toBe(16);
  expect(figure("parking_brake_minimum(single-circuit)")).toBe(25);
});

const FLUID = [
  ["DOT 3", 205, 140],
  ["DOT 4", 230, 155],
  ["DOT 5", 260, 180],
  ["DOT 5.1", 260, 180],
] as const;

test.each(FLUID)("%s boils at no less than %s °C dry and %s °C wet", (grade, dry, wet) => {
  expect(figure(`dry_boiling_minimum("${grade}")`)).toBe(dry);
  expect(figure(`wet_boiling_minimum("${grade}")`)).toBe(wet);
  expect(figure(`boiling_reserve("${grade}", ${wet} Cel)`)).toBe(0);
  expect(figure(`water_by_boiling("${grade}", ${dry})`)).toBe(0);
  expect(figure(`water_by_boiling("${grade}", ${wet})`)).toBeCloseTo(3.7, 9);
});

test("DOT 4 at 154 °C is below its wet minimum, DOT 3 at 180 °C is not", () => {
  expect(figure('boiling_reserve("DOT 4", 154)')).toBeLessThan(0);
  expect(figure('boiling_reserve("DOT 3", 356 degF)')).toBeCloseTo(40, 6);
  // Some pages print 270 / 190 °C for DOT 5.1.
  expect(figure('dry_boiling_minimum("DOT 5.1")')).not.toBe(270);
  expect(figure('wet_boiling_minimum("DOT 5.1")')).not.toBe(190);
});

test("fluid that boils over its dry minimum has no water to tell, and a lower boiling point never tells less", () => {
  expect(figure('water_by_boiling("DOT 4", 231)')).toBe(0);
  expect(figure('water_by_boiling("DOT 4", 300)')).toBe(0);
  const water = [300, 230, 200, 155, 120].map((celsius) => figure(`water_by_boiling("DOT 4", ${celsius})`));
  expect(water).toEqual([...water].sort((a, b) => a - b));
  // By weight (S6.2), half way between 230 and 155; some pages print 3.7 % by volume.
  expect(figure('water_by_boiling("DOT 4", 192.5)')).toBeCloseTo(1.85, 9);
});

test("toe of 2 mm on 380 mm is 0.30°, in or out", () => {
  expect(figure("toe_angle(2, 380)")).toBeCloseTo(0.30156, 4);
  expect(figure("toe_angle(-2, 380)")).toBeCloseTo(-0.30156, 4);
  expect(figure("toe_angle(0, 380)")).toBe(0);
  // Small angles: the sine is the angle.
  expect(figure("toe_angle(3, 400)")).toBeCloseTo((3 / 400) * (180 / Math.PI), 4);
});

test("disc spread and pad taper do not depend on order or unit", () => {
  expect(figure("disc_spread([24.01, 23.98, 24.00, 24.02])")).toBeCloseTo(0.04, 9);
  expect(figure("disc_spread([24.02, 24.00, 23.98, 24.01])")).toBeCloseTo(0.04, 9);
  expect(figure("pad_taper(3/16 in, 4.7625 mm)")).toBeCloseTo(0, 9);
});

test("1 mm at a radius of 310 is about 0.26 mm over a bearing pair of 80 (arithmetic)", () => {
  expect(figure("joint_play_from_rim(1, 310, 80)")).toBeCloseTo(0.258, 3);
  expect(figure("rim_movement_from_play(joint_play_from_rim(1, 310, 80), 310, 80)")).toBeCloseTo(1, 12);
});

test("steering play of 13 mm on a 380 mm wheel is 3.92°, and 11.6 mm on one of 340", () => {
  expect(figure("steering_play_angle(13, 380)")).toBeCloseTo(3.92, 2);
  expect(figure("steering_play_allowed(rack, 340)")).toBeCloseTo(11.6, 1);
  expect(figure("steering_play_allowed(rack-several-joints, 380)")).toBe(48);
  expect(figure("steering_play_allowed(box, 15 in)")).toBeCloseTo(75.2, 1);
  expect(refused("steering_play_angle(400, 380)")).toEqual(["trade.over-argument"]);
});

test("hub and disc may cancel: the disc's own run-out is never told as none because the hub's is larger", () => {
  expect(figure("disc_run_out_own(0.10, 0.04)")).toBeCloseTo(0.06, 9);
  expect(figure("disc_run_out_own(0.04, 0.10)")).toBeCloseTo(0.06, 9);
});
