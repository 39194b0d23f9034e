/**
 * The heaviest set of free items that holds all its members need: an upper bound with the budget priced instead of kept.
 * One pass from the leaves up weighs what hangs on one free item at most; what is left goes through a maximum flow (a
 * closure of greatest weight is a minimum cut). Rivals are not looked at: that only lifts the bound.
 */
import type { Arc, Item } from "./item.js";

/** The free items of one step of the search. */
export interface Free {
  /** What is needed before what needs it. */
  readonly down: readonly Item[];
  /** The same the other way round. */
  readonly up: readonly Item[];
  /** What needs several free items, with all that is above: the part one pass can't weigh. */
  readonly knot: readonly Item[];
  readonly arcs: readonly Arc[];
}

/** Collects the free items and who hangs on whom among them. `allInKnot` sends everything through the flow. */
export function freeOf(items: readonly Item[], allInKnot = false): Free {
  const down = items.filter((item) => item.mark === "free");
  const up = down.toReversed();
  for (const item of down) {
    item.isKnotted = allInKnot;
    item.parent = undefined;
  }
  for (const item of up) {
    for (const need of item.needs) {
      if (need.mark !== "free") continue;
      if (item.parent !== undefined) item.isKnotted = true;
      item.parent = need;
    }
    if (item.isKnotted) for (const need of item.needs) need.isKnotted = true;
  }
  const knot = down.filter((item) => item.isKnotted);
  return { down, up, knot, arcs: arcsOf(knot) };
}

function arcsOf(knot: readonly Item[]): readonly Arc[] {
  const arcs: Arc[] = [];
  for (const item of knot) item.arcs = [];
  for (const item of knot)
    for (const need of item.needs) {
      if (need.mark !== "free") continue;
      const arc: Arc = { from: item, to: need, flow: 0 };
      item.arcs.push(arc);
      need.arcs.push(arc);
      arcs.push(arc);
    }
  return arcs;
}

/** Marks the heaviest closure as `picked`; returns its weight, or a little more. */
export function heaviestClosure(free: Free, price: number): number {
  for (const item of free.down) item.sum = item.gain - price * item.use;
  for (const { isKnotted, sum, parent } of free.up)
    if (!isKnotted && sum > 0 && parent !== undefined) parent.sum += sum;
  let weight = free.knot.length > 0 ? byFlow(free) : 0;
  for (const item of free.down) {
    if (item.isKnotted) continue;
    item.picked = item.sum > 0 && (item.parent === undefined || item.parent.picked);
    if (item.picked && item.parent === undefined) weight += item.sum;
  }
  return weight;
}

/** Of all weight together: what is left below this is dust of the arithmetic, not flow. */
const TRICKLE = 1e-15;

/** Gains flow down to what they must pay for; what can't be drained away is the weight of the closure. */
function byFlow({ knot, arcs }: Free): number {
  let trickle = 0;
  for (const item of knot) {
    item.supply = Math.max(0, item.sum);
    item.demand = Math.max(0, -item.sum);
    trickle += item.supply * TRICKLE;
  }
  for (const arc of arcs) arc.flow = 0;
  while (levels(knot, trickle))
    for (const item of knot) if (item.supply > trickle) item.supply -= push(item, item.supply, trickle);
  let weight = 0;
  for (const item of knot) {
    weight += item.supply;
    item.picked = item.level >= 0;
  }
  return weight;
}

/** Steps from what still has supply; true when some demand is reached. */
function levels(knot: readonly Item[], trickle: number): boolean {
  const queue: Item[] = [];
  for (const item of knot) {
    item.level = item.supply > trickle ? 0 : -1;
    if (item.level === 0) queue.push(item);
  }
  let isReached = false;
  for (const item of queue) {
    if (item.demand > trickle) isReached = true;
    for (const arc of item.arcs) {
      const next = arc.from === item ? arc.to : arc.flow > trickle ? arc.from : undefined;
      if (next === undefined || next.level >= 0) continue;
      next.level = item.level + 1;
      queue.push(next);
    }
  }
  return isReached;
}

/** Sends up to `amount` onward by rising levels; returns what went. */
function push(item: Item, amount: number, trickle: number): number {
  const kept = Math.min(amount, item.demand);
  item.demand -= kept;
  let left = amount - kept;
  for (const arc of item.arcs) {
    if (left <= trickle) break;
    const isForward = arc.from === item;
    const next = isForward ? arc.to : arc.from;
    if (next.level !== item.level + 1 || (!isForward && arc.flow <= trickle)) continue;
    const went = push(next, isForward ? left : Math.min(left, arc.flow), trickle);
    arc.flow += isForward ? went : -went;
    left -= went;
  }
  if (left > trickle) item.level = -2;
  return amount - left;
}
