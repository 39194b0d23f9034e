/**
 * How much a step of the search can still bring, and where to divide it: the room is given a price, and the price at
 * which the bound is least is found by intersecting the two sets that hold it (one that fits, one that does not).
 */
import { type Free, heaviestClosure } from "./closure.js";
import type { Decisions, Item } from "./item.js";

/** A set of free items with the totals of everything that would be in. */
export interface Picked {
  readonly gain: number;
  readonly use: number;
  readonly items: readonly Item[];
}

export interface Room {
  readonly room: number;
  /** Which free items together take the least room. */
  readonly leastUse: "none" | "all";
  /** True when nothing of this worth is wanted any more. */
  readonly isTooLittle: (bound: number) => boolean;
}

export interface Relaxed {
  readonly bound: number;
  readonly price: number;
  /** Nothing better lies below this step. */
  readonly isDone: boolean;
  /** The sets left and right of the best price; `fits` alone when the best set fits without a price. */
  readonly fits?: Picked;
  readonly exceeds?: Picked;
}

/** More prices than this bring little. */
const MOST_PRICES = 12;

/** The least bound over all prices, begun at `price`; stops as soon as it is too little. */
export function relax(free: Free, decided: Decisions, room: Room, price: number): Relaxed {
  let bound = Number.POSITIVE_INFINITY;
  let fits: Picked | undefined;
  let exceeds: Picked | undefined;
  let best = price;
  /** Tries a price; true when there is nothing more to learn. */
  const tryAt = (at: number): boolean => {
    const lifted = decided.gain + at * (room.room - decided.use) + heaviestClosure(free, at);
    if (lifted < bound) {
      bound = lifted;
      best = at;
    }
    if (room.isTooLittle(bound)) return true;
    const set = pickedOf(free, decided);
    if (set.use <= room.room) fits = set;
    else exceeds = set;
    return set.use === room.room || (at === 0 && set.use <= room.room);
  };
  const done = (): Relaxed => ({
    bound,
    price: best,
    isDone: room.isTooLittle(bound),
    ...(fits === undefined ? {} : { fits }),
    ...(exceeds === undefined ? {} : { exceeds }),
  });
  if (tryAt(price)) return done();
  if (exceeds === undefined && tryAt(0)) return done();
  if (exceeds === undefined) return done();
  if (fits === undefined) fits = least(free, decided, room);
  if (fits.use > room.room) return { bound: Number.NEGATIVE_INFINITY, price: best, isDone: true };
  for (let tried = 0; tried < MOST_PRICES; tried += 1) {
    const at: number = Math.max(0, (exceeds.gain - fits.gain) / (exceeds.use - fits.use));
    const line = fits.gain + at * (room.room - fits.use);
    if (tryAt(at)) break;
    if (bound <= line + Math.abs(line) * TOUCHES) break;
  }
  return done();
}

/** Closer than this the bound touches the two sets and can't fall any further. */
const TOUCHES = 1e-13;

function pickedOf(free: Free, decided: Decisions): Picked {
  return totals(
    free.down.filter((item) => item.picked),
    decided,
  );
}

function least(free: Free, decided: Decisions, room: Room): Picked {
  return totals(room.leastUse === "all" ? free.down : [], decided);
}

function totals(items: readonly Item[], decided: Decisions): Picked {
  let { gain, use } = decided;
  for (const item of items) {
    gain += item.gain;
    use += item.use;
  }
  return { gain, use, items };
}
