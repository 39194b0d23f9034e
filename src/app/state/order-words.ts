/** Until when a part must be ordered, in words: for the dates, and for its shut weeks. Pure. */
import type { IsoDate, PartOrder } from "../../core/plan/index.js";
import { daysWords, dayWords } from "../texts/days.js";
import { t } from "../texts/plan-dates.js";
import { beforeShut, type PlannedPart } from "./plan-part-view.js";

/** Until when an order must go out, as it stands in the dates. */
export const byWhen = ({ late, orderBy, neededOn }: PartOrder): string =>
  late
    ? t("all-parts.was-by", { date: dayWords(orderBy) })
    : t("all-parts.order-by", { date: dayWords(orderBy), needed: dayWords(neededOn) });

export function beatsWords(part: PlannedPart, today: IsoDate): readonly string[] {
  const beats = beforeShut(part, today);
  return beats
    ? [t("all-parts.beats", { date: dayWords(beats.orderBy), days: daysWords(beats.closed.from, beats.closed.to) })]
    : [];
}
