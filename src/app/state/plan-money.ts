/** The currency of the house's terms. */
import type { HouseTerms } from "../../core/plan/index.js";
import { minorDigitsOf } from "../../core/units/index.js";
import type { Currency } from "./money-words.js";

/** Common currencies bring their digits; of others the house says them. Two where nobody has. */
export function currencyOf(terms: HouseTerms | undefined): Currency | undefined {
  if (!terms) return undefined;
  return { currency: terms.currency, minorDigits: minorDigitsOf(terms.currency) ?? terms.digits ?? 2 };
}
