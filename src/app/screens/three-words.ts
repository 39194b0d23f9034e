/** The words of three figures entered, but for what can't be read: that depends on what they are. */
import { t } from "../texts/plan-parts.js";

export const threeWords = () => ({
  low: t("one-part.low"),
  likely: t("one-part.likely"),
  high: t("one-part.high"),
  lowOverLikely: t("one-part.low-likely"),
  likelyOverHigh: t("one-part.likely-high"),
  lowOverHigh: t("one-part.low-high"),
  keep: ([low, likely, high]: readonly [string, string, string]): string => t("one-part.keep", { low, likely, high }),
  next: t("one-part.next"),
  keys: t("one-part.keys"),
  rubOut: t("one-part.rub-out"),
  decimal: t("one-part.decimal"),
});
