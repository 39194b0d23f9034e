/** The currency of the house's terms. */
import type { HouseTerms } from "../../core/plan/index.js";
import { minorDigitsOf } from "../../core/units/index.js";
import type { Currency } from "./money-words.js";

/**
 * Common currencies bring their digits; of others the house says them. None where nobody has: no sum is written with
 * digits made up.
 */
export function currencyOf(terms: HouseTerms | undefined): Currency | undefined {
  if (!terms) return undefined;
  const minorDigits = minorDigitsOf(terms.currency) ?? terms.digits;
  return minorDigits === undefined ? undefined : { currency: terms.currency, minorDigits };
}
