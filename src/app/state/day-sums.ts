/** Counting with calendar days: days apart, days on, the quick days an entry offers. Knows no opening times. */
import { DAY_MS, type IsoDate } from "../../core/terms/index.js";
import { t } from "../texts/plan-dates.js";

export const plusDays = (date: IsoDate, days: number): IsoDate =>
  new Date(Date.parse(date) + days * DAY_MS).toISOString().slice(0, 10);

/** Days from one day to another; below nought where the other is earlier. */
export const daysBetween = (from: IsoDate, to: IsoDate): number =>
  Math.round((Date.parse(to) - Date.parse(from)) / DAY_MS);

interface QuickDay {
  readonly id: string;
  readonly words: string;
  readonly day: IsoDate;
}

const quick = (words: string, day: IsoDate): QuickDay => ({ id: day, words, day });

/** For what happened: today and the days just before. */
export const daysGone = (today: IsoDate): readonly QuickDay[] => [
  quick(t("plan-day.today"), today),
  quick(t("plan-day.yesterday"), plusDays(today, -1)),
];

export const weeksToCome = (today: IsoDate): readonly QuickDay[] =>
  [1, 2, 4].map((n) => quick(t("plan-day.weeks", { n }), plusDays(today, 7 * n)));

/** For what is to come. */
export const daysToCome = (today: IsoDate): readonly QuickDay[] => [
  quick(t("plan-day.tomorrow"), plusDays(today, 1)),
  ...weeksToCome(today),
];
