/**
 * What taking in a stream from elsewhere would do to what is here, told beforehand. The same rules as taking it in
 * (receive-on.ts), which a test holds the two to. Changes nothing.
 */
import type { Entry, IdText, Logged } from "../contract.js";
import { identityText, idText, isEntry, isStub } from "../identity.js";
import { known } from "../kinds.js";
import { canBeErased } from "../ledger.js";
import { canonicalText, merge } from "../merge.js";

export interface Compared {
  readonly added: number;
  readonly known: number;
  /** Come as a stub, or become one: here or on the way in. */
  readonly erased: number;
  /** Of these: bodies that are here now. */
  readonly erasedHere: number;
  /** Same id, other text: what is here is kept. */
  readonly altered: number;
  /** Entries that share a number with another, as they would stand afterwards. */
  readonly forks: number;
}

const NOTHING: Compared = { added: 0, known: 0, erased: 0, erasedHere: 0, altered: 0, forks: 0 };

export const summed = (all: readonly Compared[]): Compared =>
  all.reduce(
    (sum, one) => ({
      added: sum.added + one.added,
      known: sum.known + one.known,
      erased: sum.erased + one.erased,
      erasedHere: sum.erasedHere + one.erasedHere,
      altered: sum.altered + one.altered,
      forks: sum.forks + one.forks,
    }),
    NOTHING,
  );

/** Ids the erase entries of a log name, each with who names it. */
function namedIn(log: Iterable<Logged>, byId: ReadonlyMap<IdText, Logged>): ReadonlyMap<IdText, readonly Entry[]> {
  const named = new Map<IdText, Entry[]>();
  for (const logged of log) {
    const entry = isEntry(logged) ? known(logged) : undefined;
    if (entry?.kind !== "erase") continue;
    for (const { id } of entry.body.of)
      if (canBeErased(entry.stream, id, byId.get(id))) named.set(id, [...(named.get(id) ?? []), entry]);
  }
  return named;
}

interface Weighed {
  readonly compared: Compared;
  /** Entries that have a body afterwards. */
  readonly bodies: readonly Entry[];
}

/** Compares the logs of one stream. */
export const compareLogs = (here: readonly Logged[], from: readonly Logged[]): Compared =>
  weighLogs(here, from).compared;

/** The same, with what is left to read of both. */
export function weighLogs(here: readonly Logged[], from: readonly Logged[]): Weighed {
  const { entries: incoming, altered } = merge(from);
  const byId = new Map(here.map((logged) => [idText(logged), logged]));
  const incomingById = new Map(incoming.map((logged) => [idText(logged), logged]));
  const namedHere = namedIn(here, byId);
  const named = namedIn(incoming, incomingById);
  const identities = new Map<string, IdText[]>();
  for (const logged of here) {
    const identity = identityText(logged);
    identities.set(identity, [...(identities.get(identity) ?? []), idText(logged)]);
  }
  const forks = new Set<IdText>();
  const turned = new Set<IdText>();
  let [added, alreadyHere, erased, otherText] = [0, 0, 0, altered.length];
  const newErasures = new Set<Entry>();
  const arrived: Entry[] = [];
  for (const logged of incoming) {
    const id = idText(logged);
    const kept = byId.get(id);
    if (kept) {
      if (isEntry(kept) && isStub(logged)) turned.add(id);
      else {
        alreadyHere++;
        if (isEntry(kept) && isEntry(logged) && canonicalText(kept) !== canonicalText(logged)) otherText++;
      }
      continue;
    }
    const identity = identityText(logged);
    const twins = identities.get(identity) ?? [];
    if (twins.length > 0) for (const twin of [...twins, id]) forks.add(twin);
    identities.set(identity, [...twins, id]);
    if (isStub(logged) || (logged.kind !== "erase" && (named.has(id) || namedHere.has(id)))) erased++;
    else {
      added++;
      arrived.push(logged);
      if (logged.kind === "erase") newErasures.add(logged);
    }
  }
  for (const [id, erasures] of named) {
    const kept = byId.get(id);
    if (kept && canBeErased(kept.stream, id, kept) && isEntry(kept) && erasures.some((one) => newErasures.has(one)))
      turned.add(id);
  }
  const compared = {
    added,
    known: alreadyHere,
    erased: erased + turned.size,
    erasedHere: turned.size,
    altered: otherText,
    forks: forks.size,
  };
  const staying = here.filter((logged) => !turned.has(idText(logged)));
  return { compared, bodies: [...staying.filter(isEntry), ...arrived] };
}
