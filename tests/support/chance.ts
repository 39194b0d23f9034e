/** Chance that can be repeated: the same seed gives the same run. A test prints its seed so that a failure can be met again. */

export interface Chance {
  /** From `from` up to but not including `to`. */
  whole(from: number, to: number): number;
  of<Item>(items: readonly Item[]): Item | undefined;
}

/** The generator known as mulberry32, public domain: small, and good enough to pick moments. */
export function chance(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (from: number, to: number): number => from + Math.floor(next() * (to - from));
  return { whole, of: (items) => items[whole(0, items.length)] };
}
