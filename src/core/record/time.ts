/** Hybrid logical time: what stamp comes next. Refuses to read a clock and to alter a stamp once made. */
import type { Stamp } from "./contract.js";

/** How far ahead of one's own clock a stamp may be and still be followed: one day, in ms. Own choice. */
export const FOLLOW_AT_MOST_MS = 86_400_000;

export const FIRST_STAMP: Stamp = { wall: 0, count: 0 };

/** Negative when `a` comes first. */
export function compareStamps(a: Stamp, b: Stamp): number {
  return a.wall - b.wall || a.count - b.count;
}

/** Whether a clock that reads `wallNow` follows this stamp: it is at most a day ahead. */
export function follows(stamp: Stamp, wallNow: number): boolean {
  return stamp.wall - wallNow <= FOLLOW_AT_MOST_MS;
}

/**
 * The stamp after `previous` on a clock that reads `wallNow` (ms): later than `previous`, unless that one is more
 * than a day ahead, when it is left alone and the own clock counts.
 */
export function stampNext(previous: Stamp, wallNow: number): Stamp {
  const wall = Math.max(0, Math.trunc(wallNow));
  if (!follows(previous, wall) || previous.wall < wall) return { wall, count: 0 };
  return { wall: previous.wall, count: previous.count + 1 };
}

/** The highest stamp seen that this clock follows: what the next own stamp has to come after. */
export function latestFollowed(stamps: Iterable<Stamp>, wallNow: number): Stamp {
  let latest = FIRST_STAMP;
  for (const stamp of stamps) if (follows(stamp, wallNow) && compareStamps(stamp, latest) > 0) latest = stamp;
  return latest;
}
