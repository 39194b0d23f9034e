import { expect, test } from "vitest";
import {
  canonicalUnit,
  canonicalUnitOf,
  convert,
  convertStep,
  fromCanonical,
  isQuantity,
  QUANTITIES,
  type Quantity,
  toCanonical,
  unitOf,
  unitsOf,
} from "./index.js";

/**
 * NIST SP 811 (2008) appendix B.8 as printed, except where the source column says otherwise. The number of digits is
 * the printed one.
 */
const PRINTED: readonly (readonly [from: string, to: string, quantity: Quantity, factor: number])[] = [
  ["lbf·ft", "N·m", "torque", 1.355818],
  ["kgf·m", "N·m", "torque", 9.80665],
  ["kgf·cm", "N·m", "torque", 0.0980665],
  ["psi", "kPa", "pressure", 6.894757],
  ["bar", "kPa", "pressure", 100],
  ["atm", "kPa", "pressure", 101.325],
  ["in", "mm", "length", 25.4],
  ["ft", "m", "length", 0.3048],
  ["mil", "mm", "length", 0.0254],
  ["lb", "kg", "mass", 0.45359237],
  ["imp gal", "L", "volume", 4.54609],
  ["US gal", "L", "volume", 3.785412],
  ["hp", "W", "power", 745.6999],
  ["PS", "W", "power", 735.49875],
  ["mi", "km", "distance", 1.609344],
  ["mph", "km/h", "speed", 1.609344],
  ["lbf", "N", "force", 4.448222],
  ["oz", "g", "mass", 28.34952],
  // Conventional columns, from memory in our notes: printed SP 811 was not seen for these.
  ["inHg", "kPa", "pressure", 3.386389],
  ["mmHg", "kPa", "pressure", 0.1333224],
];

test.each(PRINTED)("1 %s is %s (%s) as printed in NIST SP 811 B.8", (from, to, quantity, factor) => {
  const digits = factor.toString().replace(/^0\.0*|\./g, "").length;
  expect(Number(convert(1, from, to, quantity).toPrecision(digits))).toBe(factor);
});

test("derived factors agree with their definitions to the last digit", () => {
  // 0.453 592 37 kg × 9.806 65 m/s² over a square inch of 0.0254 m, and times a foot of 0.3048 m.
  const poundForce = 0.45359237 * 9.80665;
  expect(convert(1, "psi", "Pa", "pressure")).toBeCloseTo(poundForce / 0.0254 ** 2, 9);
  expect(convert(1, "lbf·ft", "N·m", "torque")).toBeCloseTo(poundForce * 0.3048, 13);
  expect(convert(1, "lbf·in", "N·m", "torque")).toBeCloseTo(poundForce * 0.0254, 13);
  expect(convert(1, "hp", "W", "power")).toBeCloseTo(550 * poundForce * 0.3048, 9);
  expect(convert(1, "US gal", "L", "volume")).toBeCloseTo((231 * 2.54 ** 3) / 1000, 12);
  expect(convert(1, "mi", "m", "distance")).toBe(5280 * 0.3048);
});

test("worked figures of the trade come out as printed", () => {
  expect(convert(100, "lbf.ft", "N.m", "torque")).toBeCloseTo(135.58179, 5);
  expect(convert(2.2, "bar", "psi", "pressure")).toBeCloseTo(31.9083, 4);
  expect(convert(0.008, "in", "mm", "length")).toBe(0.2032);
  expect(convert(1.6, "mm", "in", "length") * 32).toBeCloseTo(2.01575, 5);
  expect(convert(4, "thou", "mm", "length")).toBe(0.1016);
  expect(convert(0.004, "in", "mm", "length")).toBe(0.1016);
});

test("a thou is no millimetre, a kilogram-metre no ten newton-metres, a difference of 9 °F is 5 K", () => {
  expect(convert(5, "thou", "mm", "length")).toBe(0.127);
  expect(convert(1, "kgf.m", "N.m", "torque")).toBe(9.80665);
  expect(convert(9, "°F", "K", "temperature_difference")).toBe(5);
});

test("temperatures shift their zero, steps do not", () => {
  expect(convert(32, "°F", "°C", "temperature")).toBe(0);
  expect(convert(212, "°F", "°C", "temperature")).toBe(100);
  expect(convert(-40, "°C", "°F", "temperature")).toBe(-40);
  expect(convert(98.6, "°F", "°C", "temperature")).toBe(37);
  expect(convert(293.15, "K", "°C", "temperature")).toBe(20);
  expect(convert(20, "°C", "K", "temperature")).toBe(293.15);
  expect(convertStep(1.8, "°F", "°C", "temperature")).toBe(1);
  expect(convertStep(0.01, "mm", "in", "length")).toBeCloseTo(0.01 / 25.4, 18);
});

test("canonical numbers are free of binary noise, so that a reading at the edge is at the edge", () => {
  expect(toCanonical(0.1, "cm", "length")).toBe(1);
  expect(toCanonical(0.3, "m", "length")).toBe(300);
  expect(toCanonical(1.1, "m", "length")).toBe(1100);
  expect(toCanonical(18, "mo", "age")).toBe(1.5);
  expect(toCanonical(60, "min", "duration")).toBe(3600);
  expect(toCanonical(90, "'", "angle")).toBe(1.5);
  expect(toCanonical(250, "kPa", "pressure")).toBe(2.5);
  expect(toCanonical(3000, "rpm", "frequency")).toBe(50);
  expect(fromCanonical(0.1016, "thou", "length")).toBe(4);
  for (let thou = 1; thou <= 400; thou++)
    expect(toCanonical(thou, "thou", "length")).toBe(Number((thou * 0.0254).toFixed(4)));
});

test("a year is 365.25 days, a month its twelfth, a week seven days", () => {
  expect(convert(1, "a", "d", "age")).toBe(365.25);
  expect(convert(1, "mo", "d", "age")).toBe(30.4375);
  expect(convert(1461, "d", "wk", "age")).toBeCloseTo(1461 / 7, 12);
});

test("converting there and back gives the same number for every unit of every quantity", () => {
  for (const quantity of QUANTITIES)
    for (const { code } of unitsOf(quantity))
      for (const value of [0, 0.13, 1, 7.5, 100, -3.25])
        expect([code, fromCanonical(toCanonical(value, code, quantity), code, quantity)]).toEqual([code, value]);
});

test("every quantity has its canonical unit first, with factor one", () => {
  for (const quantity of QUANTITIES) {
    const [first] = unitsOf(quantity);
    expect(first).toMatchObject({ code: canonicalUnit(quantity), over: 1, under: 1, before: 0 });
    expect(canonicalUnitOf(quantity)).toBe(first);
  }
});

test("no spelling means two units of one quantity", () => {
  for (const quantity of QUANTITIES) {
    const spelled = unitsOf(quantity).flatMap((unit) => unit.spelled.filter((text, i, all) => all.indexOf(text) === i));
    expect(spelled.filter((text, i) => spelled.indexOf(text) !== i)).toEqual([]);
    for (const unit of unitsOf(quantity))
      for (const text of [unit.code, unit.shown]) expect(unitOf(text, quantity)).toBe(unit);
  }
});

test.each([
  ["Nm", "N.m"],
  ["N·m", "N.m"],
  ["N m", "N.m"],
  ["nm", "N.m"],
  ["ft-lb", "[ft_i].[lbf_av]"],
  ["°C", "Cel"],
  ["º C", "Cel"],
  ["µm", "um"],
  ["PSI", "[psi]"],
  ["Bar", "bar"],
  ["km/h", "km/h"],
  ["″", "[in_i]"],
  ["Ω", "Ohm"],
  ["Ah", "A.h"],
  ["cc", "mL"],
  ["years", "a"],
])("%s is understood as %s", (text, code) => {
  expect(unitOf(text)?.code).toBe(code);
});

test("one sign is read by its quantity", () => {
  expect(unitOf("'", "length")?.code).toBe("[ft_i]");
  expect(unitOf("'", "angle")?.code).toBe("'");
  expect(unitOf("°C", "temperature")?.code).toBe("Cel");
  expect(unitOf("°C", "temperature_difference")?.code).toBe("K");
  expect(unitOf("m", "length")?.code).toBe("m");
  expect(unitOf("m", "duration")).toBeUndefined();
  expect(unitOf("furlong")).toBeUndefined();
  expect(unitOf("", "length")).toBeUndefined();
  expect(unitOf("", "ratio")?.code).toBe("1");
});

test("capitals count where they tell two units apart", () => {
  expect(unitOf("mPa", "pressure")).toBeUndefined();
  for (const careless of ["MPa", "mpa", "MPA"]) expect(unitOf(careless, "pressure")?.code).toBe("MPa");
  for (const careless of ["mm", "MM", "Mm"]) expect(unitOf(careless, "length")?.code).toBe("mm");
  expect(unitOf("mV", "voltage")?.code).toBe("mV");
});

test("a unit of another quantity throws: that is our own mistake, not a person's", () => {
  expect(() => convert(1, "bar", "mm", "length")).toThrow("bar is no unit of length.");
  expect(isQuantity("length")).toBe(true);
  expect(isQuantity("toString")).toBe(false);
});

/** One of each unit in canonical units, from its definition: SI prefixes, minutes and hours, feet of 12 in, ounces of 1/16 lb. */
const ONE: Readonly<Record<Quantity, Readonly<Record<string, number>>>> = {
  length: { mm: 1, "[in_i]": 25.4, "[mil_i]": 0.0254, um: 0.001, cm: 10, m: 1000, "[ft_i]": 12 * 25.4 },
  distance: { km: 1, "[mi_i]": (5280 * 12 * 25.4) / 1e6, m: 0.001 },
  temperature: { Cel: 1, "[degF]": (1 - 32) / 1.8, K: 1 - 273.15 },
  temperature_difference: { K: 1, "[degF]": 1 / 1.8 },
  torque: {
    "N.m": 1,
    "[ft_i].[lbf_av]": 0.45359237 * 9.80665 * 0.3048,
    "[in_i].[lbf_av]": 0.45359237 * 9.80665 * 0.0254,
    "kgf.m": 9.80665,
    "kgf.cm": 0.0980665,
    "N.cm": 0.01,
  },
  force: { N: 1, kN: 1000, daN: 10, kgf: 9.80665, "[lbf_av]": 0.45359237 * 9.80665 },
  pressure: {
    bar: 1,
    "[psi]": (0.45359237 * 9.80665) / 0.0254 ** 2 / 1e5,
    kPa: 0.01,
    mbar: 0.001,
    MPa: 10,
    Pa: 1e-5,
    att: 0.980665,
    atm: 1.01325,
    // Conventional columns: density 13 595.1 kg/m³ × standard gravity; printed with 7 digits, from memory.
    "mm[Hg]": 0.001333224,
    "[in_i'Hg]": 0.03386389,
  },
  voltage: { V: 1, mV: 0.001 },
  current: { A: 1, mA: 0.001 },
  charge: { "A.h": 1, "mA.h": 0.001 },
  resistance: { Ohm: 1, mOhm: 0.001, kOhm: 1000 },
  power: { kW: 1, W: 0.001, "[HP]": (550 * 0.45359237 * 9.80665 * 0.3048) / 1000, "75.kgf.m/s": (75 * 9.80665) / 1000 },
  speed: { "km/h": 1, "[mi_i]/h": 1.609344, "m/s": 3.6 },
  angle: { deg: 1, "'": 1 / 60 },
  duration: { s: 1, min: 60, h: 3600, d: 86400 },
  age: { a: 1, mo: 1 / 12, wk: 7 / 365.25, d: 1 / 365.25 },
  volume: {
    L: 1,
    mL: 0.001,
    "[gal_br]": 4.54609,
    "[gal_us]": (231 * 2.54 ** 3) / 1000,
    "[pt_br]": 4.54609 / 8,
    "[qt_us]": (231 * 2.54 ** 3) / 4000,
  },
  mass: { kg: 1, g: 0.001, "[lb_av]": 0.45359237, "[oz_av]": 0.45359237 / 16, t: 1000 },
  percent: { "%": 1 },
  ratio: { "1": 1 },
  frequency: { Hz: 1, kHz: 1000, "/min": 1 / 60 },
  area: { cm2: 1, mm2: 0.01, m2: 10_000 },
  section_modulus: { cm3: 1, mm3: 0.001 },
  second_moment: { cm4: 1, mm4: 0.0001 },
};

test("every unit in the table has the size of its definition", () => {
  for (const quantity of QUANTITIES) {
    expect(unitsOf(quantity).map(({ code }) => code)).toEqual(Object.keys(ONE[quantity]));
    for (const [code, one] of Object.entries(ONE[quantity])) {
      expect(Math.abs(toCanonical(1, code, quantity) - one)).toBeLessThanOrEqual(1e-12 * Math.abs(one));
    }
  }
});

test("a column of mercury is 13 595.1 kg/m³ in standard gravity", () => {
  expect(convert(1, "mmHg", "Pa", "pressure")).toBeCloseTo(13.5951 * 9.80665, 3);
  expect(convert(1, "inHg", "Pa", "pressure")).toBeCloseTo(13.5951 * 9.80665 * 25.4, 2);
});
