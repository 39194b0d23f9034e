// Money as people write and read it.
import { afterEach, expect, test } from "vitest";
import { decimalComma } from "../texts/figures.js";
import { moneyText, roundMoneyText, typedMoney } from "./money-words.js";

const EURO = { currency: "EUR", minorDigits: 2 };

afterEach(() => {
  decimalComma.value = false;
});

test("the sign before the figure, two, no or three digits behind the point", () => {
  expect(moneyText(123_450, EURO)).toBe("€1234.50");
  expect(moneyText(5, EURO)).toBe("€0.05");
  expect(moneyText(1500, { currency: "JPY", minorDigits: 0 })).toBe("¥1500");
  expect(moneyText(-1234, { currency: "KWD", minorDigits: 3 })).toBe("\u2212KWD\u202f1.234");
  decimalComma.value = true;
  expect(moneyText(1_234_550, EURO)).toBe("€12\u202f345,50");
});

test("letters that are no currency are shown as they were written", () => {
  expect(moneyText(100, { currency: "X", minorDigits: 2 })).toBe("X1.00");
});

test("a list shows whole units", () => {
  expect([roundMoneyText(123_450, EURO), roundMoneyText(49, EURO)]).toEqual(["€1235", "€0"]);
});

test("what is typed becomes minor units, or nothing", () => {
  expect(["1100", "1 100,5", "0.05", "3."].map((typed) => typedMoney(typed, 2))).toEqual([110_000, 110_050, 5, 300]);
  expect(["", "-3", "1.234", "abc", "1,2,3"].map((typed) => typedMoney(typed, 2))).toEqual(Array(5).fill(undefined));
  expect(typedMoney("12.5", 0)).toBeUndefined();
});

test("thousands may be marked off where the decimals say which sign is which", () => {
  const typed = ["2.500,00", "2,500.00", "1'234.50", "1 234,5", "1.234.567,8"];
  expect(typed.map((text) => typedMoney(text, 2))).toEqual([250_000, 250_000, 123_450, 123_450, 123_456_780]);
  for (const odd of ["25.00,00", "1.234.567", "2.500,001", "1,23.4", ".500,00"])
    expect(typedMoney(odd, 2), odd).toBeUndefined();
});
