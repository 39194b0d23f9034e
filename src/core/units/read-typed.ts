/** Understands what a person types for a reading, or says why not. Never guesses between two meanings. */
import { fail, ok, type Problem, problem, type Result } from "../terms/index.js";
import { toCanonical } from "./convert.js";
import type { Quantity } from "./quantities.js";
import { type Unit, unitOf, unitsOf } from "./table.js";

export interface ReadOptions {
  readonly quantity: Quantity;
  /** Unit when none is typed: UCUM code or accepted spelling. */
  readonly unit: string;
  /** The person's own decimal mark is the comma: "1,234" is then plain and "1.234" is not. Not for kept texts. */
  readonly decimalComma?: boolean;
}

export interface Reading {
  /** The number as typed with the decimal mark made a point: "0.220", "-5", "1 1/2". This goes into the record. */
  readonly text: string;
  /** UCUM code typed or assumed. */
  readonly unit: string;
  /** In `unit`. */
  readonly value: number;
  /** In the canonical unit of the quantity. */
  readonly canonical: number;
  /** Digits typed after the decimal mark; null for a fraction. */
  readonly decimals: number | null;
}

/** Longer than any reading with its unit; keeps every number finite. */
const LONGEST = 40;

const VULGAR: Readonly<Record<string, string>> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅓": "1/3",
  "⅔": "2/3",
};

interface NumberTyped {
  readonly text: string;
  readonly value: number;
  readonly decimals: number | null;
}

/**
 * Reads a typed reading: decimals with point or comma, fractions, mixed numbers, a sign, a unit.
 * Problems (texts in units/messages.ts) carry the typed text as `typed`, and code units.
 * empty · too-long · not-a-number · not-finite · two-numbers · ambiguous-mark · zero-below · unknown-unit ·
 * other-quantity · fraction-needs-unit.
 */
export function readTyped(typed: string, options: ReadOptions): Result<Reading> {
  const refuse = (code: string, params: Problem["params"] = {}) =>
    fail(problem(`units.${code}`, {}, { typed: typed.slice(0, LONGEST), quantity: options.quantity, ...params }));
  if (typed.length > LONGEST) return refuse("too-long", { longest: LONGEST });
  const plain = plainMarks(typed);
  if (plain === "") return refuse("empty");
  if (/^[+-]?\s*(inf|nan|∞)/i.test(plain)) return refuse("not-finite");

  const parts = /^([+-]?)\s*(.*)$/.exec(plain);
  const [, sign = "", rest = ""] = parts ?? [];
  const split = splitNumber(rest, options.decimalComma === true);
  if (typeof split === "string") return refuse(split);
  const unit = unitTyped(split.unit, options);
  if (typeof unit === "string") return refuse(unit, unitParams(split.unit, options));

  const isFraction = split.number.decimals === null;
  if (isFraction && split.unit === "" && isMetricLength(unit))
    return refuse("fraction-needs-unit", { unit: unit.shown });
  const value = sign === "-" && split.number.value !== 0 ? -split.number.value : split.number.value;
  return ok({
    text: sign === "-" ? `-${split.number.text}` : split.number.text,
    unit: unit.code,
    value,
    canonical: toCanonical(value, unit.code, options.quantity),
    decimals: split.number.decimals,
  });
}

/** Typographic signs as the plain ones, spaces as one space. */
function plainMarks(typed: string): string {
  return typed
    .replace(/[½¼¾⅛⅜⅝⅞⅓⅔]/gu, (sign) => ` ${VULGAR[sign] ?? sign}`)
    .replace(/[−–‒﹣－]/gu, "-")
    .replace(/[⁄∕]/gu, "/")
    .replace(/[\s\u00a0\u2000-\u200b\u202f]+/gu, " ")
    .trim();
}

/** The number in front and what follows it, or the code that says why not. */
function splitNumber(text: string, decimalComma: boolean): { number: NumberTyped; unit: string } | string {
  const mixed = /^(\d+)(?: |-)(\d+) ?\/ ?(\d+)(?![\d.,])(.*)$/.exec(text);
  if (mixed) return fraction(Number(mixed[1]), mixed[2] ?? "", mixed[3] ?? "", mixed[4] ?? "");
  const plain = /^(\d+) ?\/ ?(\d+)(?![\d.,])(.*)$/.exec(text);
  if (plain) return fraction(null, plain[1] ?? "", plain[2] ?? "", plain[3] ?? "");
  const decimal = /^([\d.,]*\d[\d.,]*)(.*)$/.exec(text);
  if (!decimal) return "not-a-number";
  const unit = (decimal[2] ?? "").trim();
  if (/^e[+-]?\d/i.test(unit)) return "not-a-number";
  const number = decimalNumber(decimal[1] ?? "", decimalComma);
  return typeof number === "string" ? number : { number, unit };
}

function fraction(
  whole: number | null,
  over: string,
  under: string,
  rest: string,
): { number: NumberTyped; unit: string } | string {
  if (Number(under) === 0) return "zero-below";
  const text = `${whole === null ? "" : `${whole} `}${Number(over)}/${Number(under)}`;
  return { number: { text, value: (whole ?? 0) + Number(over) / Number(under), decimals: null }, unit: rest.trim() };
}

function decimalNumber(token: string, decimalComma: boolean): NumberTyped | string {
  const marks = token.replace(/\d/g, "");
  if (marks.length > 1) return /^(,+\.?|\.+,)$/.test(marks) && /^\d/.test(token) ? "ambiguous-mark" : "not-a-number";
  // A mark before exactly three digits may set thousands apart; after a lone 0 it cannot.
  const foreign = decimalComma ? "." : ",";
  if (marks === foreign && /^[1-9]\d{0,2}[.,]\d{3}$/.test(token)) return "ambiguous-mark";
  const [whole = "", after = ""] = token.split(/[.,]/);
  const text = `${whole.replace(/^0+(?=\d)/, "") || "0"}${after === "" ? "" : `.${after}`}`;
  return { text, value: Number(text), decimals: after.length };
}

/** The unit meant, or the code that says why not. */
function unitTyped(text: string, options: ReadOptions): Unit | string {
  const unit = unitOf(text === "" ? options.unit : text, options.quantity);
  if (unit !== undefined) return unit;
  if (text !== "" && unitOf(text) !== undefined) return "other-quantity";
  return /\d/.test(text) ? "two-numbers" : "unknown-unit";
}

function unitParams(text: string, options: ReadOptions): Problem["params"] {
  return {
    unit: text === "" ? options.unit : text,
    of: unitOf(text)?.quantity ?? "",
    expected: unitsOf(options.quantity).map((unit) => unit.shown),
  };
}

/** Inch fractions are the trade's; 3/32 with millimetres set may be meant as inches, 25 times as much. */
function isMetricLength(unit: Unit): boolean {
  return unit.quantity === "length" && ["mm", "um", "cm", "m"].includes(unit.code);
}
