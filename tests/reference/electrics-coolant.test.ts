// Battery: two public tables of rest voltage (opened; they differ by up to 0.15 V, ours is the one that tells less
// charge); starter manual for drops.
// Coolant: handbook of chemistry table 5.13 (propylene, by volume); ethylene by mass: rows at 35, 40 and 60 seen, the
// others from memory, unverified; a published mixing example.
import { expect, test } from "vitest";
import { figure, refused, told } from "../support/reckoned.js";

/** Charge, volts in the one table and in the other, which has the empty battery. */
const RESTED = [
  [100, 12.66, 12.6],
  [75, 12.45, 12.4],
  [50, 12.3, 12.2],
  [25, 12.15, 12],
] as const;

test.each(RESTED)(
  "%s in a hundred: %s V in the one table, %s V in the other, and never told kinder",
  (percent, careful, kind) => {
    expect(figure(`battery_charge(${careful})`)).toBeCloseTo(percent, 9);
    expect(figure(`battery_charge(${kind})`)).toBeLessThan(percent);
  },
);

test("charge between the rows, empty and full", () => {
  expect(figure("battery_charge(11.6)")).toBe(0);
  expect(figure("battery_charge(11)")).toBe(0);
  expect(figure("battery_charge(11.71)")).toBeCloseTo(5, 9);
  expect(figure("battery_charge(12.39)")).toBeCloseTo(65, 9);
  expect(figure("battery_charge(12.597)")).toBeCloseTo(92.5, 9);
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

test("more volts are never less charge, twice the drain is half the days", () => {
  const charges = Array.from({ length: 25 }, (_, step) => figure(`battery_charge(${(11 + step / 10).toFixed(1)})`));
  expect(charges).toEqual([...charges].sort((a, b) => a - b));
  const [once, twice] = [50, 100].map((drain) => figure(`drain_days(60, 50, ${drain} mA)`));
  expect(once).toBeCloseTo(2 * (twice ?? 0), 12);
});

test("propylene glycol freezes as printed, and in between", () => {
  const rows: readonly (readonly [number, number])[] = [
    [0, 0],
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
  // Straight from pure water on: a tenth of a hundredth part already counts.
  expect(figure("freezing_propylene(0.05)")).toBeCloseTo(-0.011, 9);
});

/** Per cent by mass, °C, whether the row was seen; the others are from memory, unverified. */
const ETHYLENE = [
  [0, 0, "seen"],
  [10, -3.2, "memory"],
  [20, -7.8, "memory"],
  [30, -14.1, "memory"],
  [35, -18.8, "seen"],
  [40, -23.8, "seen"],
  [50, -33.8, "memory"],
  [60, -51.2, "seen"],
] as const;

test("ethylene glycol by the rows, and half way between two of them half way down", () => {
  for (const [index, [percent, celsius]] of ETHYLENE.entries()) {
    expect(figure(`freezing_ethylene(${percent})`)).toBeCloseTo(celsius, 9);
    const [nextPercent, nextCelsius] = ETHYLENE[index + 1] ?? [percent, celsius];
    expect(figure(`freezing_ethylene(${(percent + nextPercent) / 2})`)).toBeCloseTo((celsius + nextCelsius) / 2, 9);
  }
  expect(figure("freezing_ethylene(0.05)")).toBeCloseTo(-0.016, 9);
});

test("ethylene: rows from memory lie within the 3 K that handbooks differ by of the ideal law near pure water", () => {
  // 1.853 K kg/mol, 62.07 g/mol (physics, not a table of coolants): holds while it is thin.
  const ideal = (percent: number) => (-1.853 * 1000 * percent) / (62.07 * (100 - percent));
  for (const [percent, celsius] of ETHYLENE.slice(0, 4)) expect(Math.abs(celsius - ideal(percent))).toBeLessThan(3);
});

test("beyond 60 % the table ends, since protection gets worse", () => {
  expect(refused("freezing_ethylene(65)")).toEqual(["trade.range"]);
});

test("how much to swap: 3.86 L of 18 from 30 to 45 %, 2.29 of 8 to 50 %, 1.6 L of water back to 40 %", () => {
  expect(figure("coolant_to_strengthen(18, 30, 45)")).toBeCloseTo(3.857, 3);
  expect(figure("coolant_to_strengthen(8, 30, 50)")).toBeCloseTo(2.2857, 4);
  expect(figure("coolant_to_thin(8, 50, 40)")).toBeCloseTo(1.6, 9);
  expect(told("coolant_to_strengthen(8, 50, 40)")).toContain("wanted is too small beside the others; at least 50");
  expect(told("coolant_to_thin(8, 40, 50)")).toContain("wanted is too large beside the others; at most 40");
  // Nothing to do is nothing swapped.
  expect(figure("coolant_to_strengthen(8, 40, 40)")).toBe(0);
  expect(figure("coolant_to_thin(8, 40, 40)")).toBe(0);
});

test("after the swap the strength is the one wanted, with water too", () => {
  const away = figure("coolant_to_thin(18, 50, 35)");
  expect((100 * 0.5 * (18 - away)) / 18).toBeCloseTo(35, 9);
  const out = figure("coolant_to_strengthen(18, 30, 45)");
  expect((100 * (0.3 * (18 - out) + out)) / 18).toBeCloseTo(45, 9);
});

test("1000 parts at 30 % by mass hold 277.6 of glycol (published)", () => {
  expect(figure("glycol_for_mass_share(1000 L, 30, 1.1155)")).toBeCloseTo(277.559, 3);
  // Pure glycol is all glycol, and one as heavy as water fills its share.
  expect(figure("glycol_for_mass_share(1000 L, 100, 1.1155)")).toBeCloseTo(1000, 9);
  expect(figure("glycol_for_mass_share(1000 L, 30, 1)")).toBeCloseTo(300, 9);
});
