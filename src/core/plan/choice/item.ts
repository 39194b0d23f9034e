/** What the search moves about: states and jobs as linked items with in, out and free. Knows no bound. */

/** A state, or one job, or the jobs of a set that go together. */
export interface Item {
  readonly name: string;
  readonly isState: boolean;
  /** Ids of the jobs it stands for; none for a state. */
  readonly jobs: readonly string[];
  readonly cost: number;
  readonly value: number;
  /** What it needs directly, without what follows from the others. */
  needs: readonly Item[];
  /** All it needs, near and far. */
  above: readonly Item[];
  /** All that needs it, near and far. */
  below: readonly Item[];
  /** Items it may not stand beside. */
  rivals: readonly Item[];

  /** Decided to be in, decided to be out, or still free. */
  mark: "in" | "out" | "free";
  /** Member of the set now looked at. */
  held: boolean;
  /** What it adds to what is maximised, and what it takes of the room. */
  gain: number;
  use: number;
  /** Scratch of the bound: see closure.ts. */
  sum: number;
  picked: boolean;
  supply: number;
  demand: number;
  level: number;
  parent: Item | undefined;
  isKnotted: boolean;
  arcs: Arc[];
}

/** A need as a pipe for the flow bound. */
export interface Arc {
  readonly from: Item;
  readonly to: Item;
  flow: number;
}

export interface ItemFacts {
  readonly name: string;
  readonly isState: boolean;
  readonly jobs: readonly string[];
  readonly cost: number;
  readonly value: number;
}

/** An item that stands alone until it is linked. */
export function newItem(facts: ItemFacts): Item {
  return {
    ...facts,
    needs: [],
    above: [],
    below: [],
    rivals: [],
    mark: "free",
    held: false,
    gain: 0,
    use: 0,
    sum: 0,
    picked: false,
    supply: 0,
    demand: 0,
    level: 0,
    parent: undefined,
    isKnotted: false,
    arcs: [],
  };
}

/** Items decided so far, in order, so that decisions can be taken back. */
export class Decisions {
  cost = 0;
  gain = 0;
  use = 0;
  readonly #made: Item[] = [];

  /** How many decisions stand; hand it to `backTo`. */
  get depth(): number {
    return this.#made.length;
  }

  /** Decides that `item` is in, with all it needs, and its rivals out. False: it can't be. */
  take(item: Item): boolean {
    for (const one of [item, ...item.above]) {
      if (one.mark === "in") continue;
      if (one.mark === "out") return false;
      one.mark = "in";
      this.#made.push(one);
      this.cost += one.cost;
      this.gain += one.gain;
      this.use += one.use;
    }
    return [item, ...item.above].every((one) => one.rivals.every((rival) => this.drop(rival)));
  }

  /** Decides that `item` is out, with all that needs it. False: it can't be. */
  drop(item: Item): boolean {
    if (item.mark === "out") return true;
    for (const one of [item, ...item.below]) {
      if (one.mark === "out") continue;
      if (one.mark === "in") return false;
      one.mark = "out";
      this.#made.push(one);
    }
    return true;
  }

  /** Takes back every decision made since. */
  backTo(depth: number): void {
    while (this.#made.length > depth) {
      const item = this.#made.pop();
      if (item === undefined) return;
      if (item.mark === "in") {
        this.cost -= item.cost;
        this.gain -= item.gain;
        this.use -= item.use;
      }
      item.mark = "free";
    }
  }
}
