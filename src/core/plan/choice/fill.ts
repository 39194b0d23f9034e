/** Good sets at once, by hand rules: fill up what room is left, or reach a worth and let go what is not needed for it. */
import type { Item } from "./item.js";

/** Holds what is decided and, of what is picked, all that stands beside no rival. Needs come before what needs them. */
export function hold(items: readonly Item[], picked: Iterable<Item>): void {
  for (const item of items) item.held = item.mark === "in";
  for (const item of picked) item.held = item.needs.every((n) => n.held) && !item.rivals.some((rival) => rival.held);
}

/** Adds jobs by worth for money while they fit into `left`. */
export function fill(items: readonly Item[], left: number): void {
  for (let room = left; ; ) {
    const found = dearestForMoney(items, room, Number.POSITIVE_INFINITY);
    if (found === undefined) return;
    room -= found.cost;
  }
}

/** Adds jobs by worth for money until `missing` is reached, then lets go what is not needed for it. */
export function reach(items: readonly Item[], missing: number): void {
  let still = missing;
  while (still > 0) {
    const found = dearestForMoney(items, Number.POSITIVE_INFINITY, still);
    if (found === undefined) return;
    still -= found.value;
  }
  // What needs others comes last: from there down nothing is let go that is still needed.
  for (const item of items.toReversed()) {
    if (!item.held || item.mark === "in" || item.cost === 0 || item.value > -still) continue;
    if (item.below.some((one) => one.held)) continue;
    item.held = false;
    still += item.value;
  }
}

/** Holds the job, with its chain, that brings most for its money; worth above `enough` counts no more. */
function dearestForMoney(
  items: readonly Item[],
  room: number,
  enough: number,
): { readonly cost: number; readonly value: number } | undefined {
  let best: Item | undefined;
  let bestCost = 0;
  let bestValue = 0;
  for (const item of items) {
    if (item.held || item.mark !== "free" || item.value === 0) continue;
    let { cost, value } = item;
    for (const need of item.above) {
      if (need.held) continue;
      cost += need.cost;
      value += need.value;
    }
    if (cost > room) continue;
    // cross-multiplied: a job that costs nothing comes first
    if (best !== undefined && Math.min(value, enough) * bestCost <= Math.min(bestValue, enough) * cost) continue;
    if (stands(item)) [best, bestCost, bestValue] = [item, cost, value];
  }
  if (best === undefined) return undefined;
  best.held = true;
  for (const need of best.above) need.held = true;
  return { cost: bestCost, value: bestValue };
}

/** Neither it nor anything it would bring stands beside a rival. */
function stands(item: Item): boolean {
  return [item, ...item.above].every((one) => one.held || !one.rivals.some((rival) => rival.held));
}
