/** Finds what goes in a circle: jobs that follow each other, access, places, derived values. Knows only links. */

/** The first circle found, as the way round it (first and last alike); undefined without one. */
export function circle(links: ReadonlyMap<string, readonly string[]>): readonly string[] | undefined {
  const done = new Set<string>();
  for (const start of links.keys()) {
    if (done.has(start)) continue;
    const found = walk(start, links, done);
    if (found) return found;
  }
  return undefined;
}

/** Depth first with a stack of its own, so that a chain as long as a sheet may be needs no deep calls. */
function walk(start: string, links: ReadonlyMap<string, readonly string[]>, done: Set<string>) {
  const way: { readonly id: string; next: number }[] = [{ id: start, next: 0 }];
  const onWay = new Set([start]);
  for (let top = way.at(-1); top; top = way.at(-1)) {
    const to = links.get(top.id)?.[top.next++];
    if (to === undefined) {
      done.add(top.id);
      onWay.delete(top.id);
      way.pop();
    } else if (onWay.has(to)) {
      const ids = way.map((step) => step.id);
      return [...ids.slice(ids.indexOf(to)), to];
    } else if (!done.has(to)) {
      onWay.add(to);
      way.push({ id: to, next: 0 });
    }
  }
  return undefined;
}
