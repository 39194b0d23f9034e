/**
 * The time there is for looking at a car that is someone else's: what stands, and how much of it is left at a moment.
 * Worked out from the kept start alone, so a killed app, a reload and another time zone change nothing. No clock inside.
 */
import type { LookingTime, VisitState } from "./contract.js";

/** Minutes a viewing usually leaves for looking; own choice, changed in one press. */
export const USUAL_MINUTES = 40;
/** Looked at again this long after the end, it is another occasion; own choice. */
const ANOTHER_OCCASION_S = 6 * 3600;
/** Two clocks of one phone, before and after it asked the network, may differ by this much. */
const CLOCKS_DIFFER_S = 60;

/**
 * What stands: of two that differ the one that ends first, so that nobody is promised more than anyone said. A viewing
 * of which nothing was ever said has the usual time from when the visit was opened.
 */
export function lookingTimeOf(visit: Pick<VisitState, "clock" | "opened" | "ledger">): LookingTime | undefined {
  const ends = ({ from, minutes }: LookingTime): number => Date.parse(from) + minutes * 60_000;
  const first = visit.clock.map(({ value }) => value).sort((a, b) => ends(a) - ends(b))[0];
  if (first) return first;
  const { slots, dead } = visit.ledger;
  const isSaid = (slots.get("clock|") ?? []).some((id) => !dead.has(id));
  const opened = visit.opened?.value;
  return isSaid || opened?.purpose !== "viewing" ? undefined : { from: opened.on, minutes: USUAL_MINUTES };
}

export interface TimeLeft {
  /** `unsure`: by this phone's clock it has not begun yet, so the clock was put back. `ended`: another occasion. */
  readonly is: "running" | "stopped" | "over" | "unsure" | "ended";
  /** Left; of one that is over, since when. Never below nought. */
  readonly seconds: number;
}

/** How much is left at `now`, in milliseconds of the epoch. */
export function timeLeft({ from, minutes, stopped }: LookingTime, now: number): TimeLeft {
  const gone = Math.floor(((stopped === undefined ? now : Date.parse(stopped)) - Date.parse(from)) / 1000);
  const all = minutes * 60;
  if (stopped !== undefined) return { is: "stopped", seconds: Math.min(all, Math.max(0, all - gone)) };
  if (!(gone >= -CLOCKS_DIFFER_S)) return { is: "unsure", seconds: all };
  if (gone < all) return { is: "running", seconds: Math.min(all, all - gone) };
  return { is: gone - all > ANOTHER_OCCASION_S ? "ended" : "over", seconds: gone - all };
}

/** Going on after a stop: begun as much later as it stood still. `iso` writes a moment with this phone's offset. */
export function goneOn(clock: LookingTime, now: number, iso: (wall: number) => string): LookingTime {
  const { from, minutes, stopped } = clock;
  if (stopped === undefined) return clock;
  return { from: iso(Date.parse(from) + Math.max(0, now - Date.parse(stopped))), minutes };
}
