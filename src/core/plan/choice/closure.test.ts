// The bound's two ways of weighing: one pass where nothing needs two, the flow elsewhere, and both as by trying every set.
import { expect, test } from "vitest";
import { freeOf, heaviestClosure } from "./closure.js";
import { type Item, newItem } from "./item.js";

/** Items with needs among earlier ones, from a fixed rule; weight is gain less price times use. */
function network(count: number, most: number, seed: number): readonly Item[] {
  const items: Item[] = [];
  for (let i = 0; i < count; i += 1) {
    const item = newItem({ name: `${i}`, isState: false, jobs: [], cost: 0, value: 0 });
    const draw = (n: number, of: number): number => (Math.imul(seed * 31 + i * 7 + of, 2654435761) >>> 8) % n;
    item.gain = draw(41, 1) - 22;
    item.use = draw(5, 2);
    const needs = Array.from({ length: Math.min(i, draw(most + 1, 3)) }, (_, k) => items[draw(i, 4 + k)]);
    item.needs = [...new Set(needs.filter((need) => need !== undefined))];
    items.push(item);
  }
  return items;
}

/** The heaviest set that holds all its members need. */
function byTrying(items: readonly Item[], price: number): number {
  let best = 0;
  for (let set = 0; set < 2 ** items.length; set += 1) {
    const held = new Set(items.filter((_, i) => (set >> i) % 2 === 1));
    if (![...held].every((item) => item.needs.every((need) => held.has(need)))) continue;
    best = Math.max(
      best,
      [...held].reduce((sum, item) => sum + item.gain - price * item.use, 0),
    );
  }
  return best;
}

const picked = (items: readonly Item[], price: number): number =>
  items.filter((item) => item.picked).reduce((sum, item) => sum + item.gain - price * item.use, 0);

test.each([1, 3])("[PC4] pass, flow and trying every set weigh the same, with up to %i needs each", (most) => {
  let weighed = 0;
  let knotted = 0;
  for (let seed = 1; seed <= 40; seed += 1) {
    const items = network(9, most, seed);
    for (const price of [0, 1.5]) {
      const best = byTrying(items, price);
      for (const allInKnot of [false, true]) {
        const free = freeOf(items, allInKnot);
        if (allInKnot) expect(free.knot).toEqual(items);
        else knotted += free.knot.length;
        expect(heaviestClosure(free, price)).toBeCloseTo(best, 9);
        expect(picked(items, price)).toBeCloseTo(best, 9);
        for (const item of items) if (item.picked) expect(item.needs.every((need) => need.picked)).toBe(true);
      }
      weighed += best;
    }
  }
  expect(weighed).toBeGreaterThan(0);
  expect(knotted > 0).toBe(most > 1);
});

test("[PC4] what is decided is left out of the weighing", () => {
  const [a, b] = network(2, 0, 1);
  if (a === undefined || b === undefined) throw new Error("two items");
  [a.gain, b.gain, b.needs, a.mark] = [-5, 9, [a], "in"];
  expect(heaviestClosure(freeOf([a, b]), 0)).toBe(9);
});
