/** Until when: the nearest figure that is known, never later than it. Knows no trend arithmetic. */
import type { ByWhen, Fault } from "../assess/contract.js";
import { DAY_MS, type Grade } from "../terms/index.js";

/** When to look or mend next, as a sheet states it. */
export interface NextLookRow {
  readonly fault?: string | undefined;
  readonly grade?: Grade | undefined;
  readonly job?: string | undefined;
  readonly km?: number | undefined;
  readonly months?: number | undefined;
}

export interface Figures {
  /** ISO date of this visit. */
  readonly at?: string;
  /** ISO date of the next planned visit. */
  readonly nextVisit?: string;
  /** Months the country's law gives a grade before it must be put right, from the country profile. */
  readonly legalMonths?: Readonly<Partial<Record<Grade, number>>>;
}

/** Only half of what is left is promised: the half-life rule of plant inspection codes, carried over by choice. */
const SHARE = 0.5;

/**
 * Class with figures. 'Within a stated distance or time': the legal period, half of what the trend leaves, and what the
 * sheet states for this very fault, whichever is nearer. 'Next visit' and 'watch' add what it states for the grade (when
 * to look again at what is left alone, which a fault to be put right is not) and the planned visit.
 */
export function byWhen(
  due: ByWhen["class"],
  fault: Pick<Fault, "fault" | "grade">,
  left: { readonly km?: number; readonly days?: number } | undefined,
  looks: readonly NextLookRow[],
  figures: Figures,
): ByWhen {
  if (due < 2) return { class: due };
  const km: number[] = [];
  const dates: string[] = [];
  const addDate = (date: string | undefined) => date !== undefined && dates.push(date);
  if (left?.km !== undefined) km.push(Math.max(0, Math.floor(left.km * SHARE)));
  if (left?.days !== undefined) addDate(addDays(figures.at, Math.max(0, Math.floor(left.days * SHARE))));
  const legal = figures.legalMonths?.[fault.grade];
  if (legal !== undefined) addDate(addMonths(figures.at, legal));
  for (const look of looks) {
    if (!concerns(look, fault) || (due === 2 && look.fault === undefined)) continue;
    if (look.km !== undefined) km.push(look.km);
    if (look.months !== undefined) addDate(addMonths(figures.at, look.months));
  }
  if (due === 3) addDate(figures.nextVisit?.slice(0, 10));
  const date = dates.sort()[0];
  return {
    class: due,
    ...(km.length === 0 ? {} : { distance: { value: Math.min(...km), unit: "km" } }),
    ...(date === undefined ? {} : { date }),
  };
}

/** A row that names this fault; or its grade and no fault. A row for a job counts from the job being done. */
export function concerns(look: NextLookRow, fault: Pick<Fault, "fault" | "grade">): boolean {
  if (look.job !== undefined) return false;
  if (look.fault !== undefined)
    return look.fault === fault.fault && (look.grade === undefined || look.grade === fault.grade);
  return look.grade === fault.grade;
}

/** An ordinary year, only to tell which of two stated figures is nearer where no next visit is planned. */
export const YEAR = { km: 10_000, days: 365 };

/**
 * What is stated, as way left ÷ way to the next visit, so that the order agrees with what is shown; the nearer of
 * distance and time. Only half of a way left is ever stated, so what is stated counts twice.
 */
export function statedLeft(
  { distance, date }: ByWhen,
  figures: Figures,
  nextVisitKm: number | undefined,
): number | null {
  const days = daysBetween(figures.at, date);
  const toNext = daysBetween(figures.at, figures.nextVisit);
  const shares = [
    ...(distance === undefined ? [] : [distance.value / (isWay(nextVisitKm) ? nextVisitKm : YEAR.km)]),
    ...(days === undefined ? [] : [days / (isWay(toNext) ? toNext : YEAR.days)]),
  ];
  return shares.length === 0 ? null : Math.min(...shares) / SHARE;
}

const isWay = (way: number | undefined): way is number => way !== undefined && way > 0;

/** Whole days from one to the other; undefined where one of them is not known. */
export function daysBetween(from: string | undefined, to: string | undefined): number | undefined {
  if (from === undefined || to === undefined) return undefined;
  const days = (Date.parse(to.slice(0, 10)) - Date.parse(from.slice(0, 10))) / DAY_MS;
  return Number.isFinite(days) ? days : undefined;
}

function addDays(at: string | undefined, days: number): string | undefined {
  const from = at === undefined ? Number.NaN : Date.parse(at.slice(0, 10));
  return Number.isFinite(from) ? new Date(from + days * DAY_MS).toISOString().slice(0, 10) : undefined;
}

/** The same day some months on; the last day of a shorter month. */
export function addMonths(at: string | undefined, months: number): string | undefined {
  const from = at === undefined ? Number.NaN : Date.parse(at.slice(0, 10));
  if (!Number.isFinite(from)) return undefined;
  const day = new Date(from).getUTCDate();
  const then = new Date(from);
  then.setUTCDate(1);
  then.setUTCMonth(then.getUTCMonth() + months);
  const last = new Date(Date.UTC(then.getUTCFullYear(), then.getUTCMonth() + 1, 0)).getUTCDate();
  then.setUTCDate(Math.min(day, last));
  return then.toISOString().slice(0, 10);
}
