/** What a key of the keypad makes of the figure typed so far. Pure text; refuses to know numbers, units or limits. */

export type PadKey =
  | "0"
  | "1"
  | "2"
  | "3"
  | "4"
  | "5"
  | "6"
  | "7"
  | "8"
  | "9"
  | "decimal"
  | "minus"
  | "fraction"
  | "rub-out";

/** Longest figure that still fits the line. */
const MOST = 10;

/** Whole, fraction begun and whole-with-fraction, without their sign. */
const WHOLE = /^\d+$/;
const BEGUN = /^\d+\/$/;
const MIXED = /^\d+ \d+$/;

/**
 * The figure after a key. `decimal` is the locale's sign. A fraction is written `3/32`; the fraction key pressed
 * again after `1/` gives `1 ` for `1 3/32`. A key that would make no figure changes nothing.
 */
export function typed(value: string, key: PadKey, decimal: "." | "," = "."): string {
  const sign = value.startsWith("-") ? "-" : "";
  const figure = value.slice(sign.length);
  switch (key) {
    case "rub-out":
      return value.slice(0, -1);
    case "minus":
      return sign === "" ? `-${figure}` : figure;
    case "decimal":
      if (/[.,/ ]/.test(figure)) return value;
      return figure === "" ? `${sign}0${decimal}` : value + decimal;
    case "fraction":
      if (BEGUN.test(figure)) return `${value.slice(0, -1)} `;
      return WHOLE.test(figure) || MIXED.test(figure) ? `${value}/` : value;
    default:
      if (figure.length >= MOST) return value;
      return figure === "0" ? sign + key : value + key;
  }
}
