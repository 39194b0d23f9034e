/**
 * When a part comes, and until when it must be ordered: only days the supplier works count, the day of the order does
 * not, then carriage. Knows no job that needs the part.
 */
import { fail, ok, type Problem, problem, type Result } from "../../terms/index.js";
import type { IsoDate } from "../terms.js";
import { PLANNED_DAYS } from "./calendar.js";
import { isWhole } from "./critical-path.js";
import {
  type Closure,
  closureOf,
  type DayNumber,
  dateOf,
  dayNumber,
  isShut,
  type ShutDays,
  weekdayOf,
} from "./days.js";

export interface Supplier {
  readonly id: string;
  /** Days it works: 1 Monday to 7 Sunday. */
  readonly week: readonly number[];
  readonly closed: readonly ShutDays[];
  /** Days it works, from the day after the order. */
  readonly leadDays?: number | undefined;
  /** Calendar days on the road after that. */
  readonly carriageDays?: number | undefined;
}

/** A supplier whose figures hold. */
export interface Lead {
  readonly id: string;
  readonly leadDays: number;
  readonly carriageDays: number;
  readonly closed: readonly Closure[];
  readonly works: (day: DayNumber) => boolean;
}

/** A day a supplier's part comes, and the closures it waited through. */
export interface Arrival {
  readonly sent: DayNumber;
  readonly arrives: DayNumber;
  readonly through: readonly Closure[];
}

/** Whole days, no more than are planned ahead. */
const isDays = (days: number): boolean => isWhole(days) && days <= PLANNED_DAYS;

/** Checks a supplier. Days of lead said for one part go before the supplier's own. */
export function leadOf(supplier: Supplier, leadDays = supplier.leadDays): Result<Lead> {
  const { id, week, carriageDays = 0 } = supplier;
  const closed = supplier.closed.map(closureOf);
  const problems: Problem[] = supplier.closed
    .filter((_, i) => closed[i] === undefined)
    .map(({ from, to }) => problem("schedule.closed-days", {}, { whose: id, from, to }));
  const isWeek = week.every((day) => Number.isInteger(day) && day >= 1 && day <= 7);
  if (!isWeek) problems.push(problem("schedule.supplier-week", {}, { whose: id }));
  if (week.length === 0) problems.push(problem("schedule.never-open", {}, { whose: id, from: "" }));
  if (leadDays === undefined) problems.push(problem("schedule.no-lead", {}, { whose: id }));
  else if (!isDays(leadDays) || !isDays(carriageDays)) problems.push(problem("schedule.lead-days", {}, { whose: id }));
  if (problems.length > 0 || leadDays === undefined) return fail(...problems);
  const closures = closed.flatMap((one) => one ?? []);
  const works = (day: DayNumber): boolean => week.includes(weekdayOf(day)) && !isShut(closures, day);
  return ok({ id, leadDays, carriageDays, closed: closures, works });
}

/** When a part ordered on a day comes; a problem where the supplier does not get to it within two years. */
export function arrivalOf(lead: Lead, ordered: DayNumber): Result<Arrival> {
  let left = lead.leadDays;
  // Sent at once still needs somebody there to send it.
  if (left === 0 && lead.works(ordered)) return ok(arrivalFrom(lead, ordered, ordered));
  left = Math.max(1, left);
  for (let day = ordered + 1; day <= ordered + PLANNED_DAYS; day += 1) {
    if (lead.works(day)) left -= 1;
    if (left === 0) return ok(arrivalFrom(lead, ordered, day));
  }
  return fail(problem("schedule.never-open", {}, { whose: lead.id, from: dateOf(ordered) }));
}

function arrivalFrom(lead: Lead, ordered: DayNumber, sent: DayNumber): Arrival {
  const through = lead.closed.filter(({ from, to }) => ordered < to && from < sent);
  return { sent, arrives: sent + lead.carriageDays, through };
}

/** The last day the supplier works on which an order still comes by `needed`; undefined: no such day in two years. */
export function lastOrder(lead: Lead, needed: DayNumber): DayNumber | undefined {
  return lastSent(lead, needed - lead.carriageDays);
}

function lastSent(lead: Lead, by: DayNumber): DayNumber | undefined {
  let left = lead.leadDays;
  for (let day = by; day > by - PLANNED_DAYS; day -= 1) {
    if (!lead.works(day)) continue;
    if (left === 0) return day;
    left -= 1;
  }
  return undefined;
}

/** When a part ordered on a day comes. */
export function arrivesOn(supplier: Supplier, ordered: IsoDate): Result<IsoDate> {
  return onDay(supplier, ordered, (lead, day) => {
    const arrival = arrivalOf(lead, day);
    return arrival.ok ? ok(dateOf(arrival.value.arrives)) : arrival;
  });
}

/** The last day to order what is needed on a day. */
export const orderBy = (supplier: Supplier, neededOn: IsoDate): Result<IsoDate> =>
  onDay(supplier, neededOn, (lead, day) => said(lead, lastOrder(lead, day), neededOn));

/** The last day to order what is still sent before the supplier shuts on `from`. */
export const orderBefore = (supplier: Supplier, closure: Pick<ShutDays, "from">): Result<IsoDate> =>
  onDay(supplier, closure.from, (lead, day) => said(lead, lastSent(lead, day - 1), closure.from));

const said = (lead: Lead, day: DayNumber | undefined, by: IsoDate): Result<IsoDate> =>
  day === undefined ? fail(problem("schedule.never-open", {}, { whose: lead.id, from: by })) : ok(dateOf(day));

function onDay<T>(supplier: Supplier, date: IsoDate, work: (lead: Lead, day: DayNumber) => Result<T>): Result<T> {
  const lead = leadOf(supplier);
  if (!lead.ok) return lead;
  const day = dayNumber(date);
  return day === undefined ? fail(problem("schedule.no-day", {}, { named: date })) : work(lead.value, day);
}
