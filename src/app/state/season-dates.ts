/** Days of a car at rest, for a calendar: a look every month, the workshop asked in time, the evening it is woken. Pure. */
import type { DueDate } from "../../core/report/index.js";
import type { IsoDate } from "../../core/terms/index.js";
import { plainDay } from "../texts/days.js";
import { t } from "../texts/season.js";
import { plusDays } from "./day-sums.js";

/** A month without the day would be passed over by a rule that says every month. */
const LAST_DAY_OF_ALL = 28;
/** Before spring every workshop is full. Common practice, no source. */
const ASK_WEEKS_BEFORE = 6;

/** The same day of a later month, no later than the 28th. */
export function monthsOn(day: IsoDate, months: number): IsoDate {
  const [year = 0, month = 1, date = 1] = day.slice(0, 10).split("-").map(Number);
  const at = new Date(Date.UTC(year, month - 1 + months, Math.min(date, LAST_DAY_OF_ALL)));
  return at.toISOString().slice(0, 10);
}

/** Days a spring may be set to by one press: the first of the next months it usually is. */
export function springDays(
  today: IsoDate,
): readonly { readonly id: string; readonly words: string; readonly day: IsoDate }[] {
  const year = Number(today.slice(0, 4));
  return ["03", "04", "05"].map((month) => {
    const thisYear = `${year}-${month}-01`;
    const day = thisYear > today ? thisYear : `${year + 1}-${month}-01`;
    return { id: day, words: plainDay(day), day };
  });
}

export interface LaidUp {
  /** Day it was put away. */
  readonly on: IsoDate;
  /** Day it is to be woken. */
  readonly spring: IsoDate;
  readonly today: IsoDate;
  /** Work waits that a workshop has to be asked for. */
  readonly isWorkOpen: boolean;
}

export function laidUpDates({ on, spring, today, isWorkOpen }: LaidUp): readonly DueDate[] {
  const first = monthsOn(on, 1);
  const ask = plusDays(spring, -7 * ASK_WEEKS_BEFORE);
  const day = (id: string, words: string, when: IsoDate): DueDate => ({
    id: `season:${id}`,
    is: "other",
    words,
    where: "",
    on: when,
  });
  return [
    ...(first < spring
      ? [{ ...day("monthly", t("season-dates.monthly"), first), monthlyUntil: plusDays(spring, -1) }]
      : []),
    ...(isWorkOpen && ask > today ? [day("ask", t("season-dates.ask"), ask)] : []),
    day("wake", t("season-dates.wake"), spring),
  ];
}
