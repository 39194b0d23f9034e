// Battery: two public tables of rest voltage (they differ by 0.1 V; the more careful is ours); starter manual for drops.
// Coolant: handbook of chemistry table 5.13 (propylene, by volume); three rows of ethylene seen, the others from memory;
// a published mixing example.
import { expect, test } from "vitest";
import { figure, refused } from "../support/reckoned.js";

test("charge by rest voltage, never more than the kinder table says", () => {
  const rows: readonly (readonly [number, number])[] = [
    [12.6, 100],
    [12.4, 75],
    [12.2, 50],
    [12, 25],
    [11.6, 0],
  ];
  for (const [volts, percent] of rows) expect(figure(`battery_charge(${volts})`)).toBeCloseTo(percent, 9);
  expect(figure("battery_charge(12.3)")).toBeCloseTo(62.5, 9);
  expect(figure("battery_charge(11)")).toBe(0);
  expect(figure("battery_charge(13)")).toBe(100);
});

test("how long a drain takes: 25 and 4.86 days", () => {
  expect(figure("drain_days(60 Ah, 50, 50 mA)")).toBeCloseTo(25, 9);
  expect(figure("drain_days(70, 50, 300 mA)")).toBeCloseTo(4.8611, 4);
  expect(refused("drain_days(60, 50, 0)")).toEqual(["trade.no-drain"]);
  expect(figure("current_by_shunt(0.02 V, 1 Ohm)")).toBeCloseTo(0.02, 9);
});

test("starter circuit: 0.5 V feed, 0.3 V earth, 0.8 V both", () => {
  const [feed, earth, both] = ["feed", "earth", "both"].map((part) => figure(`voltage_drop_allowed(${part})`));
  expect([feed, earth, both]).toEqual([0.5, 0.3, 0.8]);
  expect(figure("joint_heat(0.5, 200)")).toBeCloseTo(0.1, 9);
});

test("propylene glycol freezes as printed, and in between", () => {
  const rows: readonly (readonly [number, number])[] = [
    [5, -1.1],
    [10, -2.2],
    [15, -3.9],
    [20, -6.7],
    [25, -8.9],
    [30, -12.8],
    [35, -16.1],
    [40, -20.6],
    [45, -26.7],
    [50, -33.3],
  ];
  for (const [percent, celsius] of rows) expect(figure(`freezing_propylene(${percent})`)).toBeCloseTo(celsius, 9);
  expect(figure("freezing_propylene(47.5)")).toBeCloseTo(-30, 9);
});

test("ethylene glycol: the rows that were seen; beyond 60 % the table ends, since protection gets worse", () => {
  const rows: readonly (readonly [number, number])[] = [
    [35, -18.8],
    [40, -23.8],
    [60, -51.2],
  ];
  for (const [percent, celsius] of rows) expect(figure(`freezing_ethylene(${percent})`)).toBeCloseTo(celsius, 9);
  expect(refused("freezing_ethylene(65)")).toEqual(["trade.range"]);
});

test("how much to swap: 3.86 L of 18 from 30 to 45 %, 2.29 of 8 to 50 %, 1.6 L of water back to 40 %", () => {
  expect(figure("coolant_to_strengthen(18, 30, 45)")).toBeCloseTo(3.857, 3);
  expect(figure("coolant_to_strengthen(8, 30, 50)")).toBeCloseTo(2.2857, 4);
  expect(figure("coolant_to_thin(8, 50, 40)")).toBeCloseTo(1.6, 9);
  expect(refused("coolant_to_strengthen(8, 50, 40)")).toEqual(["trade.under-argument"]);
  expect(refused("coolant_to_thin(8, 40, 50)")).toEqual(["trade.over-argument"]);
});

test("after the swap the strength is the one wanted", () => {
  const out = figure("coolant_to_strengthen(18, 30, 45)");
  expect((100 * (0.3 * (18 - out) + out)) / 18).toBeCloseTo(45, 9);
});

test("1000 parts at 30 % by mass hold 277.6 of glycol (published)", () => {
  expect(figure("glycol_for_mass_share(1000 L, 30, 1.1155)")).toBeCloseTo(277.559, 3);
});
