/**
 * The workshop's opening times as one line of working minutes, and back to local day and time. Local days and minutes
 * of the day only: a change of clocks cannot move an opening time. Knows no jobs.
 */
import { fail, ok, type Problem, problem, type Result } from "../../terms/index.js";
import type { IsoDate } from "../terms.js";
import { isWhole } from "./critical-path.js";
import { type Closure, closureOf, DAY_MINUTES, dateOf, dayNumber, isShut, type ShutDays, weekdayOf } from "./days.js";

/** Minutes of the day, from midnight: `[480, 720]` is 8:00 to 12:00. */
export type OpenSpan = readonly [open: number, close: number];

export interface WorkCalendar {
  /** IANA name. Whoever shows or sends a time needs it; planning does not. */
  readonly zone: string;
  /** Seven days from Monday, each with its spans in order; none is a day shut. */
  readonly week: readonly (readonly OpenSpan[])[];
  readonly closed: readonly ShutDays[];
  readonly people: number;
  readonly lifts: number;
}

/** A local day and the minute of it. */
export interface LocalTime {
  readonly date: IsoDate;
  readonly minute: number;
}

/** The same as one whole number: day number × 1440 + minute. */
export type LocalMinute = number;

/** Working minutes from a first day on. Past its end it runs on as if never shut; `length` says where that is. */
export interface WorkAxis {
  /** Working minutes in all. */
  readonly length: number;
  /** When work that begins at this working minute begins: at an opening, never at a closing. */
  readonly startsAt: (minute: number) => LocalMinute;
  /** When work that ends at this working minute ends: at a closing, never at the next opening. */
  readonly endsAt: (minute: number) => LocalMinute;
  /** Working minutes gone by until then. */
  readonly worked: (at: LocalMinute) => number;
  readonly closed: readonly Closure[];
}

/** How far ahead is planned: two years. */
export const PLANNED_DAYS = 731;

export const localTime = (at: LocalMinute): LocalTime => {
  const day = Math.floor(at / DAY_MINUTES);
  return { date: dateOf(day), minute: at - day * DAY_MINUTES };
};

/** The working minutes of two years from a day and time on; its faults, and no open day at all, are problems. */
export function workAxis(calendar: WorkCalendar, from: LocalTime): Result<WorkAxis> {
  const first = dayNumber(from.date);
  const isMinute = isWhole(from.minute) && from.minute < DAY_MINUTES;
  const closed = calendar.closed.map(closureOf);
  const problems = [
    ...(first === undefined || !isMinute ? [problem("schedule.no-day", {}, { named: from.date })] : []),
    ...hourFaults(calendar),
    ...calendar.closed
      .filter((_, i) => closed[i] === undefined)
      .map(({ from: a, to: b }) => problem("schedule.closed-days", {}, { whose: "workshop", from: a, to: b })),
    ...(isWhole(calendar.people) && calendar.people > 0 ? [] : [problem("schedule.no-people")]),
    ...(isWhole(calendar.lifts) ? [] : [problem("schedule.lifts")]),
  ];
  if (problems.length > 0 || first === undefined) return fail(...problems);
  const closures = closed.flatMap((one) => one ?? []);
  const spans = openSpans(calendar, closures, first * DAY_MINUTES + from.minute);
  if (spans.length === 0) return fail(problem("schedule.never-open", {}, { whose: "workshop", from: from.date }));
  return ok(axisOf(spans, closures));
}

function hourFaults({ week }: WorkCalendar): readonly Problem[] {
  if (week.length !== 7) return [problem("schedule.week", {}, { found: week.length })];
  return week.flatMap((spans, i) => {
    let last = -1;
    const isGood = spans.every(([open, close]) => {
      const good = isWhole(open) && isWhole(close) && last < open && open < close && close <= DAY_MINUTES;
      last = close;
      return good;
    });
    return isGood ? [] : [problem("schedule.opening-times", {}, { weekday: i + 1 })];
  });
}

interface Span {
  readonly open: LocalMinute;
  readonly close: LocalMinute;
  /** Working minutes before it. */
  readonly before: number;
}

function openSpans({ week }: WorkCalendar, closed: readonly Closure[], from: LocalMinute): readonly Span[] {
  const first = Math.floor(from / DAY_MINUTES);
  const spans: Span[] = [];
  let before = 0;
  for (let day = first; day < first + PLANNED_DAYS; day += 1) {
    if (isShut(closed, day)) continue;
    for (const [opens, closes] of week[weekdayOf(day) - 1] ?? []) {
      const [open, close] = [Math.max(from, day * DAY_MINUTES + opens), day * DAY_MINUTES + closes];
      if (open >= close) continue;
      spans.push({ open, close, before });
      before += close - open;
    }
  }
  return spans;
}

function axisOf(spans: readonly Span[], closed: readonly Closure[]): WorkAxis {
  /** The last span of which this holds; the first where it holds of none. */
  const lastOf = (holds: (span: Span) => boolean): Span => {
    let [low, high] = [0, spans.length - 1];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if (holds(spans[middle] as Span)) low = middle;
      else high = middle - 1;
    }
    return spans[low] as Span;
  };
  const within = (span: Span, minute: number): LocalMinute => span.open + (minute - span.before);
  const last = spans.at(-1) as Span;
  return {
    length: last.before + last.close - last.open,
    startsAt: (minute) =>
      within(
        lastOf(({ before }) => before <= minute),
        minute,
      ),
    endsAt: (minute) =>
      within(
        lastOf(({ before }) => before < minute),
        minute,
      ),
    worked: (at) => {
      const span = lastOf(({ open }) => open <= at);
      const into = Math.max(0, at - span.open);
      return span.before + (span === last ? into : Math.min(into, span.close - span.open));
    },
    closed,
  };
}
