/** The time for looking as the top line and its sheet show it. Pure: what stands and the moment in, figures out. */
import { lookingTimeOf, type TimeLeft, timeLeft, type VisitState } from "../../core/record/index.js";
import type { TickLook } from "../../core/report/index.js";

/** Strokes of the ruler for the whole time; more would not be told apart in the top line. */
const STROKES = 8;
/** Minutes left at which it is said aloud, politely. */
const SAID_AT = [10, 5] as const;

export interface ViewingClock extends TimeLeft {
  /** Minutes begun that are left: none is promised that is not there. */
  readonly left: number;
  readonly minutes: number;
  /** When it ends, or ended; milliseconds of the epoch. */
  readonly until: number;
  readonly ticks: readonly TickLook[];
  /** The moment said aloud: minutes left, 0 when it is up; undefined between. */
  readonly said: number | undefined;
}

/** The clock at `now`; undefined where there is none. */
export function viewingClock(
  visit: Pick<VisitState, "clock" | "opened" | "ledger">,
  now: number,
): ViewingClock | undefined {
  const stands = lookingTimeOf(visit);
  if (!stands) return undefined;
  const time = timeLeft(stands, now);
  if (time.is === "ended") return undefined;
  const { minutes } = stands;
  const rest = time.is === "over" ? 0 : time.seconds;
  const here = Math.min(STROKES, Math.floor(((minutes * 60 - rest) / Math.max(1, minutes * 60)) * STROKES));
  const left = Math.ceil(rest / 60);
  return {
    ...time,
    left,
    minutes,
    until: time.is === "over" ? now - time.seconds * 1000 : now + rest * 1000,
    ticks: Array.from({ length: STROKES }, (_, at) => (at < here ? "done" : at === here ? "here" : "open")),
    said: time.is === "over" ? 0 : time.is === "running" ? SAID_AT.filter((at) => left <= at).at(-1) : undefined,
  };
}
