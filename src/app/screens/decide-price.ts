/** A price as the owner reads it before deciding: a range with tax, or that it is not known. */
import type { Priced } from "../state/decision-prices.js";
import { type Currency, roundMoneyText } from "../state/money-words.js";
import { t } from "../texts/decisions.js";

export function rangeText(priced: Priced | undefined, currency: Currency | undefined): string {
  if (!priced || !currency || priced.high === 0) return t("decisions.price.none");
  const write = (minor: number): string => roundMoneyText(minor, currency);
  if (priced.isTooLow) return t("decisions.price.too-low", { likely: write(priced.likely) });
  return t("decisions.price", { likely: write(priced.likely), low: write(priced.low), high: write(priced.high) });
}
