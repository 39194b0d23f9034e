/** Money in words and figures: the currency's sign, the person's decimal sign. Sums are never made here. */
import { figure } from "../texts/figures.js";

export interface Currency {
  /** ISO 4217. */
  readonly currency: string;
  readonly minorDigits: number;
}

/** The sign people write (`€`), else the letters; thin signs and letters alike stand before the figure. */
function signOf(currency: string): string {
  try {
    const parts = new Intl.NumberFormat("en", {
      style: "currency",
      currency,
      currencyDisplay: "narrowSymbol",
    }).formatToParts(0);
    return parts.find(({ type }) => type === "currency")?.value ?? currency;
  } catch {
    // Letters no engine knows are still what the house wrote.
    return currency;
  }
}

const NARROW_SPACE = "\u202f";

/** `€1 234.50` from whole minor units; a debt with a true minus. */
export function moneyText(minor: number, { currency, minorDigits }: Currency): string {
  const digits = String(Math.abs(minor)).padStart(minorDigits + 1, "0");
  const whole = digits.slice(0, digits.length - minorDigits);
  const rest = digits.slice(digits.length - minorDigits);
  const sign = signOf(currency);
  const gap = sign.length > 1 ? NARROW_SPACE : "";
  return `${minor < 0 ? "\u2212" : ""}${sign}${gap}${figure(minorDigits === 0 ? whole : `${whole}.${rest}`)}`;
}

/** The same to the nearest whole unit, for lists: `€1 235`. */
export function roundMoneyText(minor: number, { currency, minorDigits }: Currency): string {
  return moneyText(Math.round(minor / 10 ** minorDigits), { currency, minorDigits: 0 });
}

/** Thousands marked off with the one sign and decimals with the other, so that neither can be mistaken. */
const GROUPED = /^\d{1,3}(?:(?:\.\d{3})+,|(?:,\d{3})+\.)\d*$/;

/**
 * What a person typed as money: whole minor units; undefined when it is no figure with at most so many decimals, or one
 * that two people could read differently (`1.234`).
 */
export function typedMoney(typed: string, minorDigits: number): number | undefined {
  const tight = typed.replace(/[\s\u202f\u00a0'’]/g, "");
  const plain = GROUPED.test(tight) ? tight.replace(/[.,](?=.*[.,])/g, "") : tight;
  const found = /^(\d{1,9})(?:[.,](\d*))?$/.exec(plain);
  if (!found) return undefined;
  const [, whole = "", rest = ""] = found;
  if (rest.length > minorDigits) return undefined;
  return Number(whole + rest.padEnd(minorDigits, "0"));
}
