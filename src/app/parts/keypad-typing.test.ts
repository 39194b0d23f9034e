/** Proves what each key makes of the figure typed so far. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { type PadKey, typed } from "./keypad-typing.js";

const DIGITS = "0123456789";
const isKey = (sign: string): sign is PadKey => sign.length === 1 && DIGITS.includes(sign);
const NAMED: Readonly<Record<string, PadKey>> = { ".": "decimal", "-": "minus", "/": "fraction", "<": "rub-out" };
/** Presses keys written as one text: digits, `.` decimal, `-` minus, `/` fraction, `<` rub out. */
function pressed(keys: string, decimal: "." | "," = "."): string {
  return [...keys].reduce((value, sign) => {
    const key = isKey(sign) ? sign : NAMED[sign];
    if (key === undefined) throw new Error(`no key ${sign}`);
    return typed(value, key, decimal);
  }, "");
}

test("digits and the locale's decimal sign make the figure as written", () => {
  expect(pressed("1.26")).toBe("1.26");
  expect(pressed("0.24", ",")).toBe("0,24");
});

test("a decimal sign first gets a nought before it, a second one is not taken", () => {
  expect(pressed(".5")).toBe("0.5");
  expect(pressed("-.5")).toBe("-0.5");
  expect(pressed("1.2.6")).toBe("1.26");
});

test("a nought before other digits gives way, noughts after the sign stay", () => {
  expect(pressed("05")).toBe("5");
  expect(pressed("-05")).toBe("-5");
  expect(pressed("0.005")).toBe("0.005");
});

test("minus goes on and off whatever was typed before", () => {
  expect(pressed("3-")).toBe("-3");
  expect(pressed("3--")).toBe("3");
});

test("three thirty-seconds, and one and three thirty-seconds", () => {
  expect(pressed("3/32")).toBe("3/32");
  expect(pressed("1//3/32")).toBe("1 3/32");
});

test("no fraction of a fraction, of a decimal or of nothing", () => {
  expect(pressed("3/3/2")).toBe("3/32");
  expect(pressed("1.5/2")).toBe("1.52");
  expect(pressed("/3")).toBe("3");
  expect(pressed("3/.2")).toBe("3/2");
});

test("rub out takes the last sign, and nothing from nothing", () => {
  expect(pressed("12.<<3")).toBe("13");
  expect(pressed("<")).toBe("");
});

test("whatever is pressed, the figure is one a person could have written, and rubbing out ends it", () => {
  const keys = fc.array(fc.constantFrom(...DIGITS, ".", "-", "/", "<"), { maxLength: 40 });
  fc.assert(
    fc.property(keys, fc.constantFrom(".", ","), (sequence, decimal) => {
      const value = pressed(sequence.join(""), decimal);
      expect(value).toMatch(/^-?(\d+([.,]\d*)?|\d+ ?(\d+)?(\/\d*)?)?$/);
      expect(value.length).toBeLessThanOrEqual(14);
      expect([...value].reduce((rest) => typed(rest, "rub-out"), value)).toBe("");
    }),
    { seed: 20261125 },
  );
});
