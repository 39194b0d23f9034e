/** What changed between two inputs, and which conclusions rest on it. Works nothing out. */
import { kilometres, type LastReply } from "./earlier.js";
import type { Given } from "./given.js";
import type { Records } from "./ledger.js";
import type { BookFigure } from "./model.js";
import type { Site } from "./site.js";

/** Nodes whose given value differs. */
export function changedNodes(site: Site, before: Given, after: Given): ReadonlySet<number> {
  const changed = new Set<number>();
  for (const node of site.nodes) {
    if (node.kind === "slot") {
      if (!alike(before.replies[node.id], after.replies[node.id], (a, b) => a === b || sameReply(a.from, b.from)))
        changed.add(node.id);
    } else if (node.kind === "fact") {
      if (!alike(before.facts[node.id], after.facts[node.id], (a, b) => a.value === b.value)) changed.add(node.id);
    } else if (node.kind === "book") {
      if (!alike(before.book.get(node.name), after.book.get(node.name), sameFigure)) changed.add(node.id);
    } else if (node.kind === "last") {
      if (!sameLast(before.earlier(node), after.earlier(node))) changed.add(node.id);
    } else if (node.kind === "odometer" && before.odometer !== after.odometer) changed.add(node.id);
  }
  return changed;
}

function alike<T>(a: readonly T[] | undefined, b: readonly T[] | undefined, same: (a: T, b: T) => boolean): boolean {
  if (a === b) return true;
  if (a === undefined || b === undefined || a.length !== b.length) return false;
  return a.every((x, i) => {
    const y = b[i];
    return y !== undefined && same(x, y);
  });
}

const sameLast = (a: LastReply | undefined, b: LastReply | undefined): boolean =>
  a === b ||
  (a?.at === b?.at &&
    kilometres(a?.odometer) === kilometres(b?.odometer) &&
    alike(a?.standing, b?.standing, (x, y) => sameReply(x.from, y.from)));
const sameReply = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);
const sameFigure = (a: BookFigure, b: BookFigure): boolean =>
  a.figure === b.figure || JSON.stringify(a.figure) === JSON.stringify(b.figure);

/**
 * Drops every record that rests on a changed node, directly or through another record. A value may have been kept
 * before or after discards: both go.
 */
export function forget(changed: ReadonlySet<number>, records: Records, rawRecords: Records): void {
  if (changed.size === 0) return;
  // a flag per node: every list of reads there is gets looked through
  const stale = new Uint8Array(Math.max(records.length, rawRecords.length));
  for (const id of changed) stale[id] = 1;
  const restsOnStale = (reads: readonly number[]): boolean => {
    for (let i = 0; i < reads.length; i += 1) if (stale[reads[i] as number] === 1) return true;
    return false;
  };
  for (let grew = true; grew; ) {
    grew = false;
    for (const all of [records, rawRecords])
      for (let id = 0; id < all.length; id += 1) {
        const kept = all[id];
        if (kept === undefined || !restsOnStale(kept.reads)) continue;
        all[id] = undefined;
        grew ||= stale[id] === 0;
        stale[id] = 1;
      }
  }
}
