/** Order by what must come first, and the circles that stand in its way. Knows only links. */

/** Ids with all they wait for before them, and each circle met, as the way round it (first and last alike). */
export interface Sorted {
  readonly order: readonly string[];
  readonly circles: readonly (readonly string[])[];
}

/**
 * Sorts `ids` so that everything in `before` of an id stands ahead of it; equals stay as given. What is not among the
 * ids is not waited for. A circle is told and none of its members waited for by the others of it, so that all come out.
 */
export function sortByBefore(ids: readonly string[], before: ReadonlyMap<string, readonly string[]>): Sorted {
  const waits = new Map(ids.map((id) => [id, new Set<string>()]));
  for (const [id, waiting] of waits) for (const first of before.get(id) ?? []) if (waits.has(first)) waiting.add(first);
  const order: string[] = [];
  const circles: (readonly string[])[] = [];
  while (waits.size > 0) {
    const free = [...waits].find(([, waiting]) => waiting.size === 0)?.[0];
    if (free !== undefined) {
      waits.delete(free);
      for (const waiting of waits.values()) waiting.delete(free);
      order.push(free);
    } else {
      const round = circleIn(waits);
      circles.push(round);
      for (const id of round) for (const other of round) waits.get(id)?.delete(other);
    }
  }
  return { order, circles };
}

/** Every id waits for another one, so walking back from any of them must meet itself. */
function circleIn(waits: ReadonlyMap<string, ReadonlySet<string>>): readonly string[] {
  const way: string[] = [];
  let at = [...waits.keys()][0] ?? "";
  while (!way.includes(at)) {
    way.push(at);
    at = [...(waits.get(at) ?? [])][0] ?? "";
  }
  // walked from what waits to what it waits for: turned round, it reads in the order of doing
  return [...way.slice(way.indexOf(at)), at].reverse();
}
