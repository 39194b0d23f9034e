/** Finds what goes in a circle: jobs that follow each other, access, places, derived values. Knows only links. */

/** The first circle found, as the way round it (first and last alike); undefined without one. */
export function circle(links: ReadonlyMap<string, readonly string[]>): readonly string[] | undefined {
  const done = new Set<string>();
  for (const start of links.keys()) {
    const found = walk(start, links, done);
    if (found) return found;
  }
  return undefined;
}

/** Depth first with a stack of its own, so that a chain as long as a sheet may be needs no deep calls. */
function walk(start: string, links: ReadonlyMap<string, readonly string[]>, done: Set<string>) {
  const way: { readonly id: string; next: number }[] = [{ id: start, next: 0 }];
  while (way.length > 0) {
    const top = way[way.length - 1];
    if (!top) break;
    const to = links.get(top.id)?.[top.next++];
    if (to === undefined || done.has(top.id)) {
      done.add(top.id);
      way.pop();
      continue;
    }
    const from = way.findIndex((step) => step.id === to);
    if (from >= 0) return [...way.slice(from).map((step) => step.id), to];
    if (!done.has(to)) way.push({ id: to, next: 0 });
  }
  return undefined;
}
