/** Until when: the nearest figure that is known, never later than it. Knows no trend arithmetic. */
import type { ByWhen, Fault } from "../assess/contract.js";
import type { Grade } from "../terms/index.js";

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
 * Class with figures. 'Within a stated distance or time': the legal period and half of what the trend leaves,
 * whichever is nearer. 'Next visit' and 'watch' add the sheet's own next look and the planned visit.
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
    if (!concerns(look, fault)) continue;
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
function concerns(look: NextLookRow, fault: Pick<Fault, "fault" | "grade">): boolean {
  if (look.job !== undefined) return false;
  if (look.fault !== undefined)
    return look.fault === fault.fault && (look.grade === undefined || look.grade === fault.grade);
  return look.grade === fault.grade;
}

function addDays(at: string | undefined, days: number): string | undefined {
  const from = at === undefined ? Number.NaN : Date.parse(at.slice(0, 10));
  return Number.isFinite(from) ? new Date(from + days * 86_400_000).toISOString().slice(0, 10) : undefined;
}

/** The same day some months on; the last day of a shorter month. */
function addMonths(at: string | undefined, months: number): string | undefined {
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
