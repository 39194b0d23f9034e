/** How much of a thing that can be used up (people, lifts, a tool) is taken when. Knows numbers only. */

/** A step function over time; nothing is taken before nought. */
export class Load {
  readonly #capacity: number;
  /** Where the amount changes, rising; `#taken[i]` holds from `#from[i]` on. */
  readonly #from: number[] = [0];
  readonly #taken: number[] = [0];

  constructor(capacity: number) {
    this.#capacity = capacity;
  }

  /** Takes an amount (or gives back a negative one) from a time to another; `Infinity` is for good. */
  add(from: number, to: number, amount: number): void {
    if (from >= to || amount === 0) return;
    const first = this.#cut(from);
    const last = to === Number.POSITIVE_INFINITY ? this.#from.length : this.#cut(to);
    for (let i = first; i < last; i += 1) this.#taken[i] = (this.#taken[i] ?? 0) + amount;
  }

  /** The first time, `from` or later, at which the amount is free for so long; undefined: never. */
  earliest(from: number, duration: number, amount: number): number | undefined {
    if (duration === 0 || amount === 0) return from;
    let start = from;
    for (let i = this.#at(from); i < this.#from.length; i += 1) {
      if ((this.#from[i] ?? 0) >= start + duration) break;
      if ((this.#taken[i] ?? 0) + amount <= this.#capacity) continue;
      const next = this.#from[i + 1];
      if (next === undefined) return undefined;
      start = next;
    }
    return start;
  }

  /** The last time to start so that it is over by `to`; undefined: never from nought on. */
  latest(to: number, duration: number, amount: number): number | undefined {
    let start = to - duration;
    if (duration > 0 && amount > 0) {
      for (let i = this.#at(Math.max(0, to)); i >= 0; i -= 1) {
        const [from, end] = [this.#from[i] ?? 0, this.#from[i + 1] ?? Number.POSITIVE_INFINITY];
        if (end <= start) break;
        if (from >= start + duration || (this.#taken[i] ?? 0) + amount <= this.#capacity) continue;
        start = from - duration;
      }
    }
    return start < 0 ? undefined : start;
  }

  /** The step that holds at a time. */
  #at(time: number): number {
    let [low, high] = [0, this.#from.length - 1];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((this.#from[middle] ?? 0) <= time) low = middle;
      else high = middle - 1;
    }
    return low;
  }

  /** The step that begins at a time, made where there is none. */
  #cut(time: number): number {
    const i = this.#at(time);
    if (this.#from[i] === time) return i;
    this.#from.splice(i + 1, 0, time);
    this.#taken.splice(i + 1, 0, this.#taken[i] ?? 0);
    return i + 1;
  }
}
