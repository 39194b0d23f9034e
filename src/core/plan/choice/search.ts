/**
 * Depth-first branch and bound over in and out. Asks only for gains, uses and a room, so that it serves both
 * questions: most worth within a cost, and least cost for a worth. Exact unless it is stopped; then it says what
 * could still be above the best found.
 */
import { freeOf } from "./closure.js";
import type { GoOn } from "./contract.js";
import { hold } from "./fill.js";
import { Decisions, type Item } from "./item.js";
import { type Picked, type Relaxed, relax } from "./relax.js";

/** What is maximised under which room. Gains and uses are whole. */
export interface Aim {
  readonly gain: (item: Item) => number;
  readonly use: (item: Item) => number;
  readonly room: number;
  readonly leastUse: "none" | "all";
  /** Makes the held items into a good set. */
  readonly improve: (items: readonly Item[]) => void;
  /** What a set may cost at most, to be of use beside the best found. */
  readonly costLimit: (best: Best | undefined) => number;
}

export interface Best {
  readonly gain: number;
  readonly items: readonly Item[];
}

export interface Found {
  readonly best: Best | undefined;
  /** No set brings more than this; equals the best's gain when proven. */
  readonly bound: number;
  readonly proven: boolean;
  readonly nodes: number;
}

export interface Limits {
  readonly nodeCap: number;
  readonly goOn?: GoOn | undefined;
  /** For tests: everything through the flow, also where the quick pass would do. */
  readonly allInKnot?: boolean | undefined;
}

/** How often `goOn` is asked. */
const ASK_EVERY = 200;
/** Rounding of some hundred sums of numbers of one size, as a part of that size. */
const ROUNDING = 2e-14;

/** The set of most gain within the room. `items` stand with needs before what needs them; marks are respected. */
export function search(items: readonly Item[], aim: Aim, limits: Limits, known?: Best): Found {
  const decided = new Decisions();
  let scale = 0;
  for (const item of items) {
    item.gain = aim.gain(item);
    item.use = aim.use(item);
    scale += Math.abs(item.gain);
    if (item.mark === "in") {
      decided.cost += item.cost;
      decided.gain += item.gain;
      decided.use += item.use;
    }
  }
  const slack = scale * ROUNDING;
  let best = known;
  let nodes = 0;
  let isStopped = false;
  let unsearched = Number.NEGATIVE_INFINITY;

  const consider = (): void => {
    let gain = 0;
    let use = 0;
    for (const item of items) {
      if (!item.held) continue;
      gain += item.gain;
      use += item.use;
    }
    if (use <= aim.room && (best === undefined || gain > best.gain))
      best = { gain, items: items.filter((item) => item.held) };
  };
  const room = {
    room: aim.room,
    leastUse: aim.leastUse,
    isTooLittle: (bound: number) => best !== undefined && Math.floor(bound + slack) <= best.gain,
  };

  const step = (price: number, above: number): void => {
    if (!isStopped)
      isStopped = nodes >= limits.nodeCap || (nodes % ASK_EVERY === ASK_EVERY - 1 && limits.goOn?.() === false);
    if (isStopped) {
      unsearched = Math.max(unsearched, above);
      return;
    }
    nodes += 1;
    dropTooDear(items, decided, aim.costLimit(best));
    const free = freeOf(items, limits.allInKnot);
    const relaxed = relax(free, decided, room, price);
    if (relaxed.isDone) return;
    for (const set of [relaxed.fits, relaxed.exceeds]) {
      if (set === undefined) continue;
      hold(items, set.items);
      consider();
      aim.improve(items);
      consider();
    }
    const bound = Math.min(above, relaxed.bound);
    if (room.isTooLittle(bound)) return;
    const item = branchOf(relaxed);
    if (item === undefined) return;
    const depth = decided.depth;
    for (const way of [() => decided.take(item), () => decided.drop(item)]) {
      if (way()) step(relaxed.price, bound);
      decided.backTo(depth);
    }
  };
  step(0, Number.POSITIVE_INFINITY);
  const bound = Math.max(best?.gain ?? Number.NEGATIVE_INFINITY, Math.floor(unsearched + slack));
  return { best, bound, proven: !isStopped, nodes };
}

/** Drops what can't be paid with all its chain. */
function dropTooDear(items: readonly Item[], decided: Decisions, costLimit: number): void {
  for (const item of items) {
    if (item.mark !== "free") continue;
    let cost = decided.cost + item.cost;
    for (const need of item.above) if (need.mark === "free") cost += need.cost;
    if (cost > costLimit) decided.drop(item);
  }
}

/** First a rival picked beside another; then the dearest state, else the dearest job, on which the two sets differ. */
function branchOf({ fits, exceeds }: Relaxed): Item | undefined {
  return rival(fits) ?? rival(exceeds) ?? (exceeds === undefined ? undefined : differing(fits, exceeds));
}

function rival(set: Picked | undefined): Item | undefined {
  const inSet = new Set(set?.items);
  return worthiest(set?.items.filter((item) => item.rivals.some((other) => inSet.has(other))) ?? []);
}

function worthiest(items: readonly Item[]): Item | undefined {
  return items.reduce<Item | undefined>(
    (best, i) => (best !== undefined && best.value >= i.value ? best : i),
    undefined,
  );
}

function differing(fits: Picked | undefined, exceeds: Picked | undefined): Item | undefined {
  const left = new Set(fits?.items);
  const right = new Set(exceeds?.items);
  let best: Item | undefined;
  for (const item of [...left, ...right]) {
    if (left.has(item) && right.has(item)) continue;
    const isBetter = best === undefined || (item.isState === best.isState ? item.cost > best.cost : item.isState);
    if (isBetter) best = item;
  }
  return best;
}
