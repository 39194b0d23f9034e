/** Which entries of a slot stand: live, and not replaced by another. Refuses to know what a slot means. */
import type { IdText, Ledger, Stands } from "./contract.js";
import { compareShown, idText } from "./identity.js";
import type { Known } from "./kinds.js";
import { knownIn, replacedBy } from "./ledger.js";

/** Entries of a slot that are neither undone nor replaced, in the order of showing; null values included. */
export function standingIn(ledger: Ledger, slot: string): readonly Known[] {
  const members = ledger.slots.get(slot) ?? [];
  const live = members.filter((id) => !ledger.dead.has(id));
  const [only] = live;
  const alone = members.length === 1 && ledger.erased.size === 0;
  const standing = alone ? live : only === undefined ? [] : unreplaced(ledger, members, live);
  const entries: Known[] = [];
  for (const id of standing) {
    const entry = knownIn(ledger, id);
    if (entry) entries.push(entry);
  }
  return entries.sort(compareShown);
}

/**
 * Live members no other live entry reaches through 'replaces'. A chain runs on through undone and erased entries:
 * whoever replaced an entry replaced what that one had replaced. Entries that reach each other in a ring do not
 * replace one another.
 */
function unreplaced(ledger: Ledger, members: readonly IdText[], live: readonly IdText[]): readonly IdText[] {
  const inSlot = new Set(members);
  const targets = (id: IdText): readonly IdText[] =>
    replacedBy(ledger, id).filter((to) => inSlot.has(to) || ledger.erased.has(to));
  const sources = [...live, ...liveErasedOver(ledger, members)];
  const hit = reached(sources, targets);
  const tops = sources.filter((id) => !hit.has(id));
  const beneath = reached(tops, targets);
  const standing = live.filter((id) => !hit.has(id));
  // Whatever no top reaches sits in a ring or under one.
  const inRing = live.filter((id) => hit.has(id) && !beneath.has(id));
  if (inRing.length === 0) return standing;
  const reach = new Map(sources.map((id) => [id, reached([id], targets)]));
  const holds = (id: IdText): boolean =>
    sources.every((over) => over === id || !reach.get(over)?.has(id) || reach.get(id)?.has(over) === true);
  return [...standing, ...inRing.filter(holds)];
}

/** Everything the sources lead to in one step or more. */
function reached(sources: readonly IdText[], targets: (id: IdText) => readonly IdText[]): ReadonlySet<IdText> {
  const hit = new Set<IdText>();
  const left = [...sources];
  for (let id = left.pop(); id !== undefined; id = left.pop()) {
    for (const to of targets(id)) {
      if (hit.has(to)) continue;
      hit.add(to);
      left.push(to);
    }
  }
  return hit;
}

/** Erased entries that had replaced a member, straight or through others erased, and are not undone. */
function liveErasedOver(ledger: Ledger, members: readonly IdText[]): readonly IdText[] {
  if (ledger.erasedOver.size === 0) return [];
  const over = reached(members, (id) => ledger.erasedOver.get(id) ?? []);
  return [...over].filter((id) => !ledger.dead.has(id));
}

/** What stands in a slot as values of one type; `value` gives null for an entry that only takes something back. */
export function standsIn<T>(ledger: Ledger, slot: string, value: (entry: Known) => T | null): readonly Stands<T>[] {
  return stands(standingIn(ledger, slot), value);
}

export function stands<T>(entries: readonly Known[], value: (entry: Known) => T | null): readonly Stands<T>[] {
  const list: Stands<T>[] = [];
  for (const entry of entries) {
    const held = value(entry);
    if (held !== null) list.push({ id: idText(entry), value: held, at: entry.at, by: entry.by });
  }
  return list;
}
