/** The two questions put to the search: most worth within a cost, least cost for a worth. Each breaks ties by the other. */
import { fill, reach } from "./fill.js";
import type { Item } from "./item.js";
import type { Aim } from "./search.js";

/** Below this products of whole numbers, and sums of them, are exact and bounds still tell one from the next. */
const EXACT = 4e15;

const total = (items: readonly Item[], of: (item: Item) => number): number =>
  items.reduce((sum, item) => sum + (item.mark === "out" ? 0 : of(item)), 0);
const cost = (item: Item): number => item.cost;
const value = (item: Item): number => item.value;
const held = (items: readonly Item[], of: (item: Item) => number): number =>
  items.reduce((sum, item) => sum + (item.held ? of(item) : 0), 0);

export interface AimWithTie extends Aim {
  /** How much of the first counts more than all of the second; 1 when the second is left out. */
  readonly factor: number;
  /** The tie is broken in the same search. */
  readonly hasTie: boolean;
}

/** Most worth for at most `limit`, of which `must` is spent; among equals the cheapest where numbers stay exact. */
export function mostWorth(items: readonly Item[], limit: number, must: number): AimWithTie {
  const factor = 1 + limit - must;
  const hasTie = total(items, value) * factor + total(items, cost) < EXACT;
  return {
    factor: hasTie ? factor : 1,
    hasTie,
    gain: hasTie ? (item) => item.value * factor - item.cost : value,
    use: cost,
    room: limit,
    leastUse: "none",
    improve: () => fill(items, limit - held(items, cost)),
    costLimit: () => limit,
  };
}

/** Least cost for a worth of at least `wanted`; among equals the worthiest where numbers stay exact. */
export function leastCost(items: readonly Item[], wanted: number): AimWithTie {
  const factor = 1 + total(items, value);
  const hasTie = total(items, cost) * factor + factor < EXACT;
  return {
    factor: hasTie ? factor : 1,
    hasTie,
    gain: hasTie ? (item) => item.value - item.cost * factor : (item) => -item.cost,
    use: (item) => -item.value,
    room: -wanted,
    leastUse: "all",
    improve: () => reach(items, wanted - held(items, value)),
    costLimit: (best) => best?.items.reduce((sum, item) => sum + item.cost, 0) ?? Number.POSITIVE_INFINITY,
  };
}
