/** What must come before what: an order that keeps it, or the circle that forbids one. Knows ids only. */

/** One thing and what must be finished before it. */
export interface Follows {
  readonly id: string;
  readonly preds: readonly string[];
}

/** All in an order that keeps every `preds`, earlier ones of the list first; or one circle, thing by thing. */
export type Sorted = { readonly order: readonly string[] } | { readonly cycle: readonly string[] };

/** Sorts so that everything stands after what it follows. A `preds` that is no thing of the list is passed over. */
export function sortByFollows(things: readonly Follows[]): Sorted {
  const byId = new Map(things.map((thing) => [thing.id, thing]));
  const order: string[] = [];
  const done = new Set<string>();
  const path: string[] = [];
  const onPath = new Set<string>();
  const visit = (id: string): readonly string[] | undefined => {
    if (done.has(id)) return undefined;
    if (onPath.has(id)) return path.slice(path.indexOf(id));
    path.push(id);
    onPath.add(id);
    for (const pred of byId.get(id)?.preds ?? []) {
      const cycle = byId.has(pred) ? visit(pred) : undefined;
      if (cycle !== undefined) return cycle;
    }
    path.pop();
    onPath.delete(id);
    done.add(id);
    order.push(id);
    return undefined;
  };
  for (const { id } of things) {
    const cycle = visit(id);
    // The path runs from a thing to what it follows; told the other way round it reads as work is done.
    if (cycle !== undefined) return { cycle: [...cycle.slice(0, 1), ...cycle.slice(1).reverse()] };
  }
  return { order };
}

/** Everything that follows one of these, at whatever distance; the ones asked about are not in it. */
export function followersOf(things: readonly Follows[], ids: Iterable<string>): ReadonlySet<string> {
  return reach(
    ids,
    [...things].reduce((next, { id, preds }) => {
      for (const pred of preds) next.set(pred, [...(next.get(pred) ?? []), id]);
      return next;
    }, new Map<string, readonly string[]>()),
  );
}

/** Everything one of these follows, at whatever distance. */
export const followedBy = (things: readonly Follows[], ids: Iterable<string>): ReadonlySet<string> =>
  reach(ids, new Map(things.map(({ id, preds }) => [id, preds])));

function reach(ids: Iterable<string>, next: ReadonlyMap<string, readonly string[]>): ReadonlySet<string> {
  const from = [...ids];
  const found = new Set<string>();
  const open = [...from];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    for (const other of next.get(id) ?? []) {
      if (found.has(other)) continue;
      found.add(other);
      open.push(other);
    }
  }
  return found;
}
