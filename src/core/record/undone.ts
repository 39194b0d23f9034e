/** Which entries are undone, undo of undo included. Knows ids only. */
import type { IdText } from "./contract.js";

/**
 * An entry is undone when an undo that is not itself undone names it. Undos that name one another in a ring (no
 * honest program writes them) undo nothing.
 */
export function undone(undoers: ReadonlyMap<IdText, readonly IdText[]>): ReadonlySet<IdText> {
  const names = new Map<IdText, IdText[]>();
  /** How many undos over an entry are not yet known to be undone themselves. */
  const open = new Map<IdText, number>();
  for (const [named, over] of undoers) {
    open.set(named, over.length);
    for (const undo of over) names.set(undo, [...(names.get(undo) ?? []), named]);
  }
  const dead = new Set<IdText>();
  // Undos nobody undoes count; from there on downwards.
  const alive = [...names.keys()].filter((undo) => !undoers.has(undo));
  for (let undo = alive.pop(); undo !== undefined; undo = alive.pop()) {
    for (const named of names.get(undo) ?? []) {
      if (dead.has(named)) continue;
      dead.add(named);
      for (const beneath of names.get(named) ?? []) {
        const left = (open.get(beneath) ?? 0) - 1;
        open.set(beneath, left);
        if (left === 0 && !dead.has(beneath)) alive.push(beneath);
      }
    }
  }
  // `alive` above also takes in plain entries whose every undo is undone; they name nothing and fall through.
  return dead;
}
