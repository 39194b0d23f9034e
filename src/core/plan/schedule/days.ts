/**
 * Calendar days as whole numbers, so that they can be counted. Local days only: a zone and a change of clocks never
 * enter here, which is why they can move nothing.
 */
import { DAY_MS } from "../../terms/index.js";
import type { IsoDate } from "../terms.js";

/** Days since 1970-01-01. */
export type DayNumber = number;

export const DAY_MINUTES = 1440;
const ISO_DATE = /^\d{4}-\d{2}-\d{2}$/;
/** 1970-01-01 was a Thursday, the fourth day of a week that begins on Monday. */
const FIRST_WEEKDAY = 3;
const WEEK = 7;

/** The number of a day; undefined for what is no day of the calendar, as 2025-02-30. */
export function dayNumber(date: IsoDate): DayNumber | undefined {
  if (!ISO_DATE.test(date)) return undefined;
  const ms = Date.parse(date);
  return Number.isFinite(ms) && new Date(ms).toISOString().startsWith(date) ? ms / DAY_MS : undefined;
}

/** The day of a number, `YYYY-MM-DD`. */
export const dateOf = (day: DayNumber): IsoDate => new Date(day * DAY_MS).toISOString().slice(0, 10);

/** 1 Monday to 7 Sunday, as ISO 8601 counts. */
export const weekdayOf = (day: DayNumber): number => ((((day + FIRST_WEEKDAY) % WEEK) + WEEK) % WEEK) + 1;

/** Days from the first to the last, both shut. */
export interface ShutDays {
  readonly from: IsoDate;
  readonly to: IsoDate;
  readonly why?: string;
}

/** Shut days as numbers. */
export interface Closure {
  readonly from: DayNumber;
  readonly to: DayNumber;
  readonly why?: string;
}

/** Shut days as numbers; undefined where one is no day, or they end before they begin. */
export function closureOf(shut: ShutDays): Closure | undefined {
  const [from, to] = [dayNumber(shut.from), dayNumber(shut.to)];
  if (from === undefined || to === undefined || from > to) return undefined;
  return { from, to, ...(shut.why === undefined ? {} : { why: shut.why }) };
}

/** Whether a day lies in any of the closures. */
export const isShut = (closures: readonly Closure[], day: DayNumber): boolean =>
  closures.some(({ from, to }) => from <= day && day <= to);
