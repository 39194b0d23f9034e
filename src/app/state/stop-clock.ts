/**
 * How long ago the car stopped, for what must be felt and measured while it is hot. Remembered on this phone per visit;
 * a help for the hand, never part of the record. Pure but for the shelf.
 */
import type { TextShelf } from "./settings.js";

const keyOf = (visit: string): string => `leadlamp.stopped.${visit}`;

export const markStopped = (shelf: TextShelf, visit: string, now: number): void => shelf.put(keyOf(visit), String(now));

export const stoppedAt = (shelf: TextShelf, visit: string): number | undefined => {
  const kept = Number(shelf.get(keyOf(visit)) ?? Number.NaN);
  return Number.isFinite(kept) ? kept : undefined;
};

export interface StopClock {
  readonly is: "not started" | "running" | "over";
  /** `2:05`: what is left, or how long it is over. */
  readonly figure: string;
}

/** A stop longer ago than this was another drive; own choice. */
const ANOTHER_DRIVE_S = 3600;

/** How the clock stands; a stamp from the future or of another drive counts as not started. */
export function stopClock(stopped: number | undefined, now: number, within: number): StopClock {
  const gone = stopped === undefined ? Number.NaN : Math.floor((now - stopped) / 1000);
  if (!(gone >= 0 && gone < ANOTHER_DRIVE_S)) return { is: "not started", figure: minutes(within) };
  return gone < within
    ? { is: "running", figure: minutes(within - gone) }
    : { is: "over", figure: minutes(gone - within) };
}

const minutes = (seconds: number): string => `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
