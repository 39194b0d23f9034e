/** Union of logs: what is one entry, what is a copy, what is a fork. Refuses to know what an entry means. */
import type { IdText, Logged } from "./contract.js";
import { byCode, compareIds, identityText, idText, isStub } from "./identity.js";

export interface Merged {
  /** In order of stream, writer, seq, nonce. */
  readonly entries: readonly Logged[];
  /** Same identity and nonce, other text: no honest copy. One was chosen, the same everywhere. */
  readonly altered: readonly IdText[];
}

/** One text per value whatever the order of its keys: for telling copies from altered copies. */
export function canonicalText(value: unknown): string {
  return JSON.stringify(value, (_key, inner: unknown) =>
    typeof inner === "object" && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => byCode(a, b)))
      : inner,
  );
}

/**
 * Which of two entries with one identity and nonce is kept: a stub over any body; else, should the texts differ, the
 * one whose text comes first, so that every order of merging agrees.
 */
export function kept(a: Logged, b: Logged): { readonly logged: Logged; readonly altered: boolean } {
  if (a === b) return { logged: a, altered: false };
  const [textA, textB] = [canonicalText(a), canonicalText(b)];
  if (isStub(a) !== isStub(b)) return { logged: isStub(a) ? a : b, altered: false };
  return { logged: textA <= textB ? a : b, altered: textA !== textB };
}

/** Union by (identity, nonce). Commutative, associative, idempotent. */
export function merge(...logs: readonly Iterable<Logged>[]): Merged {
  const byId = new Map<IdText, Logged>();
  const altered = new Set<IdText>();
  for (const log of logs) {
    for (const logged of log) {
      const id = idText(logged);
      const here = byId.get(id);
      const winner = here ? kept(here, logged) : { logged, altered: false };
      byId.set(id, winner.logged);
      if (winner.altered) altered.add(id);
    }
  }
  return { entries: [...byId.values()].sort(compareIds), altered: [...altered].sort(byCode) };
}

/** Entries that claim one identity with different nonces, by identity text. */
export function forksIn(entries: Iterable<Logged>): ReadonlyMap<string, readonly IdText[]> {
  const byIdentity = new Map<string, Set<IdText>>();
  for (const logged of entries) {
    const identity = identityText(logged);
    const ids = byIdentity.get(identity);
    if (ids) ids.add(idText(logged));
    else byIdentity.set(identity, new Set([idText(logged)]));
  }
  return new Map(
    [...byIdentity].filter(([, ids]) => ids.size > 1).map(([identity, ids]) => [identity, [...ids].sort(byCode)]),
  );
}

/** Numbers missing below the highest of a set, as from–to, both included. */
export function gapsIn(seqs: Iterable<number>): readonly { readonly from: number; readonly to: number }[] {
  const gaps: { from: number; to: number }[] = [];
  let next = 1;
  for (const seq of [...new Set(seqs)].sort((a, b) => a - b)) {
    if (seq > next) gaps.push({ from: next, to: seq - 1 });
    next = seq + 1;
  }
  return gaps;
}
