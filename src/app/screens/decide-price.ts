/** A price as the owner reads it before deciding: a range with tax, or that it is not known. */
import type { Priced } from "../state/decision-prices.js";
import { type Currency, roundMoneyText } from "../state/money-words.js";
import { t } from "../texts/decisions.js";

/** What must be opened first, on a line of its own; nothing where nothing must be, or no rate is said. */
export function openingText(
  opening: Priced | undefined,
  currency: Currency | undefined,
  words: "decisions.price.opening" | "decisions.price.opening.all",
): string | undefined {
  if (!opening || !currency || opening.high === 0) return undefined;
  return t(words, { price: rangeText(opening, currency) });
}

export function rangeText(priced: Priced | undefined, currency: Currency | undefined): string {
  if (!priced || !currency || priced.high === 0) return t("decisions.price.none");
  const write = (minor: number): string => roundMoneyText(minor, currency);
  if (priced.isTooLow) return t("decisions.price.too-low", { likely: write(priced.likely) });
  return t("decisions.price", { likely: write(priced.likely), low: write(priced.low), p80: write(priced.p80) });
}
