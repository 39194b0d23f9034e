/**
 * Time on the real clock between local times, over changes of the clocks that are handed in. Never says that a process
 * is ready too early: in the hour that comes twice, the second one counts.
 */
import { type Problem, problem } from "../../terms/index.js";
import type { IsoDate } from "../terms.js";
import type { LocalMinute } from "./calendar.js";
import { isWhole } from "./critical-path.js";
import { DAY_MINUTES, dayNumber } from "./days.js";

/** At this local time, as the clock showed until then, it was put on (+60) or back (−60). */
export interface ClockChange {
  readonly date: IsoDate;
  readonly minute: number;
  readonly by: number;
}

/** The local time some minutes later. Never falls when its start rises. */
export type Later = (from: LocalMinute, minutes: number) => LocalMinute;

/** Elapsed time over the changes; those that are no change are told. */
export function elapsed(changes: readonly ClockChange[]): { readonly later: Later; readonly problems: Problem[] } {
  const known: { readonly at: LocalMinute; readonly by: number }[] = [];
  const problems: Problem[] = [];
  for (const { date, minute, by } of changes) {
    const day = dayNumber(date);
    if (day !== undefined && isWhole(minute) && Number.isSafeInteger(by))
      known.push({ at: day * DAY_MINUTES + minute, by });
    else problems.push(problem("schedule.clock-change", {}, { named: date }));
  }
  known.sort((a, b) => a.at - b.at);
  const later: Later = (from, minutes) =>
    known.reduce((to, { at, by }) => (from < at && at <= to ? Math.max(at, to + by) : to), from + minutes);
  return { later, problems };
}
