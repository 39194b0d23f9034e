/**
 * From a heap of entries to what each slot holds: which entries are known, undone, erased, forked or missing.
 * The same whatever the order of arrival. Refuses to know what a slot means.
 */
import type { IdText, Ledger, Logged, Trouble } from "./contract.js";
import { byCode, compareIds, idText, isEntry, isStub, parseId } from "./identity.js";
import { isToldLater, KINDS, type Known, known, replacesOf, slotsOf, whyUnknown } from "./kinds.js";
import { forksIn, gapsIn, kept, merge } from "./merge.js";
import { undone } from "./undone.js";

/** Raised whenever the same log could fold to something else: snapshots of another version are thrown away. */
export const FOLD_VERSION = 4;

interface Building {
  readonly parts: Ledger["parts"];
  readonly log: ReadonlyMap<IdText, Logged>;
  readonly slots: Map<string, IdText[]>;
  readonly undoers: Map<IdText, IdText[]>;
  readonly erased: ReadonlyMap<IdText, readonly IdText[]>;
  readonly unknown: Trouble["unknown"][number][];
  readonly writers: Map<string, { readonly last: number; readonly seen: number }>;
}

/** The ledger of a log; copies, order and duplicates make no difference. `parts` knows the kinds. */
export function ledgerOf(entries: Iterable<Logged>, parts: Ledger["parts"] = { kinds: KINDS }): Ledger {
  const log = new Map(merge(entries).entries.map((logged) => [idText(logged), logged]));
  const building: Building = {
    parts,
    log,
    slots: new Map(),
    undoers: new Map(),
    erased: erasedIn(log),
    unknown: [],
    writers: writersIn(log.values()),
  };
  // In order of ids, so that every list below comes out in that order.
  for (const [id, logged] of log) file(building, id, logged);
  return {
    ...building,
    gaps: gapsOf(log.values(), building.writers),
    unknown: building.unknown.sort(byId),
    dead: undone(building.undoers),
    erasedOver: turnedRound(building.erased),
    forks: forksIn(log.values()),
  };
}

/** Whether merging this in changes the log: no copy of what is there, no body for a stub. */
export function isNews(ledger: Ledger, logged: Logged): boolean {
  const here = ledger.log.get(idText(logged));
  return here === undefined || kept(here, logged).logged !== here;
}

/** Whether this touches more than its own slots: a stub, an erasure, a fork, a filled gap, another text. */
export function changesBelow(ledger: Ledger, logged: Logged): boolean {
  const id = idText(logged);
  const last = ledger.writers.get(`${logged.stream}/${logged.writer}`)?.last ?? 0;
  return isStub(logged) || logged.kind === "erase" || logged.seq <= last || ledger.log.has(id) || ledger.erased.has(id);
}

/** What one more entry changes; `all` when the ledger had to be made anew. */
export interface LedgerStep {
  readonly ledger: Ledger;
  readonly slots: readonly string[] | "all";
}

/**
 * One more entry. Ordinary entries and undo touch only their slots; a stub, an erasure, a fork, or a body for an id
 * already there makes the ledger anew.
 */
export function ledgerStep(before: Ledger, logged: Logged): LedgerStep {
  if (!isNews(before, logged)) return { ledger: before, slots: [] };
  if (changesBelow(before, logged))
    return { ledger: ledgerOf([...before.log.values(), logged], before.parts), slots: "all" };
  const id = idText(logged);
  const writer = `${logged.stream}/${logged.writer}`;
  const head = before.writers.get(writer) ?? { last: 0, seen: 0 };
  const building: Building = {
    parts: before.parts,
    log: new Map(before.log).set(id, logged),
    slots: new Map(),
    undoers: new Map(),
    erased: before.erased,
    unknown: [],
    writers: new Map(before.writers).set(writer, { last: logged.seq, seen: head.seen + 1 }),
  };
  const filed = file(building, id, logged);
  const ledger: Ledger = {
    ...before,
    log: building.log,
    writers: building.writers,
    gaps: logged.seq === head.last + 1 ? before.gaps : [...before.gaps, leap(logged, head.last)].sort(compareGaps),
    slots: joined(before.slots, building.slots, building.log),
    undoers: joined(before.undoers, building.undoers, building.log),
    unknown: building.unknown.length === 0 ? before.unknown : [...before.unknown, ...building.unknown].sort(byId),
  };
  if (logged.kind !== "undo") return { ledger, slots: filed };
  const after = { ...ledger, dead: undone(ledger.undoers) };
  return { ledger: after, slots: slotsTouchedBy(after, before.dead) };
}

/** The numbers an entry leaps over. */
const leap = ({ stream, writer, seq }: Logged, last: number): Gap => ({ stream, writer, from: last + 1, to: seq - 1 });

/** Slots of entries that are undone now and were not, or the other way round. */
function slotsTouchedBy(after: Ledger, deadBefore: ReadonlySet<IdText>): readonly string[] {
  const changed = [...after.dead].filter((id) => !deadBefore.has(id));
  for (const id of deadBefore) if (!after.dead.has(id)) changed.push(id);
  // An erased entry has no slot of its own left: what it had replaced is touched instead, through every slot.
  if (changed.some((id) => after.erased.has(id))) return [...after.slots.keys()];
  const slots = new Set<string>();
  for (const id of changed) {
    const entry = knownIn(after, id);
    if (entry) for (const slot of slotsOf(entry, after.parts.kinds)) slots.add(slot);
  }
  return [...slots];
}

/** Puts one entry where it belongs and says which slots got it. */
function file(building: Building, id: IdText, logged: Logged): readonly string[] {
  if (isStub(logged) || building.erased.has(id)) return [];
  const { kinds } = building.parts;
  const why = whyUnknown(logged, kinds);
  if (why) {
    if (!isToldLater(logged, why, kinds)) building.unknown.push({ id, kind: logged.kind, v: logged.v, why });
    return [];
  }
  // `whyUnknown` has just found it known.
  const entry = logged as Known;
  if (entry.kind === "undo") {
    for (const named of new Set(entry.body.of)) {
      if (parseId(named)?.stream === entry.stream) add(building.undoers, named, id);
    }
    return [];
  }
  const slots = slotsOf(entry, kinds);
  for (const slot of slots) add(building.slots, slot, id);
  return slots;
}

/** The entry behind an id, where it is known here and not erased. */
export function knownIn(ledger: Ledger, id: IdText): Known | undefined {
  const logged = ledger.log.get(id);
  if (!logged || !isEntry(logged) || ledger.erased.has(id)) return undefined;
  return known(logged, ledger.parts.kinds);
}

/** What an id replaced: as its entry says, or, where that is erased, as the erasure remembers. */
export function replacedBy(ledger: Ledger, id: IdText): readonly IdText[] {
  const remembered = ledger.erased.get(id);
  if (remembered) return remembered;
  const entry = knownIn(ledger, id);
  return entry ? replacesOf(entry) : [];
}

function erasedIn(log: ReadonlyMap<IdText, Logged>): ReadonlyMap<IdText, readonly IdText[]> {
  const erased = new Map<IdText, Set<IdText>>();
  for (const [id, logged] of log) {
    if (isStub(logged)) {
      if (!erased.has(id)) erased.set(id, new Set());
      continue;
    }
    const entry = known(logged);
    if (entry?.kind !== "erase") continue;
    for (const { id: named, replaced = [] } of entry.body.of) {
      if (!canBeErased(entry.stream, named, log.get(named))) continue;
      const over = erased.get(named) ?? new Set();
      for (const one of replaced) over.add(one);
      erased.set(named, over);
    }
  }
  return new Map([...erased].map(([id, over]) => [id, [...over].sort(byCode)]));
}

/** An erasure reaches entries of its own stream, and never another erasure. */
export function canBeErased(stream: string, named: IdText, logged: Logged | undefined): boolean {
  return parseId(named)?.stream === stream && !(logged && isEntry(logged) && logged.kind === "erase");
}

function turnedRound(erased: ReadonlyMap<IdText, readonly IdText[]>): ReadonlyMap<IdText, readonly IdText[]> {
  const over = new Map<IdText, IdText[]>();
  for (const [id, replaced] of erased) for (const one of replaced) add(over, one, id);
  return over;
}

function writersIn(entries: Iterable<Logged>): Map<string, { readonly last: number; readonly seen: number }> {
  const writers = new Map<string, { readonly last: number; readonly seen: number }>();
  let before: Logged | undefined;
  for (const logged of entries) {
    const { stream, writer, seq } = logged;
    // Entries come in order of ids: a fork stands right behind its twin.
    const isTwin = before?.seq === seq && before.writer === writer && before.stream === stream;
    before = logged;
    if (isTwin) continue;
    const key = `${stream}/${writer}`;
    writers.set(key, { last: seq, seen: (writers.get(key)?.seen ?? 0) + 1 });
  }
  return writers;
}

/** Numbers not seen, per stream and writer, in that order. */
function gapsOf(log: Iterable<Logged>, writers: Ledger["writers"]): Trouble["gaps"] {
  const lacking = new Map<string, { readonly stream: string; readonly writer: string; readonly seqs: number[] }>();
  for (const { stream, writer, seq } of log) {
    const key = `${stream}/${writer}`;
    const head = writers.get(key);
    if (!head || head.last === head.seen) continue;
    const own = lacking.get(key) ?? { stream, writer, seqs: [] };
    own.seqs.push(seq);
    lacking.set(key, own);
  }
  const gaps: Gap[] = [];
  for (const { stream, writer, seqs } of lacking.values()) {
    for (const gap of gapsIn(seqs)) gaps.push({ stream, writer, ...gap });
  }
  return gaps.sort(compareGaps);
}

type Gap = Trouble["gaps"][number];
const compareGaps = (a: Gap, b: Gap): number =>
  byCode(a.stream, b.stream) || byCode(a.writer, b.writer) || a.from - b.from;

export function troubleOf(ledger: Ledger): Trouble {
  return {
    forks: [...ledger.forks].sort(([a], [b]) => byCode(a, b)).map(([, ids]) => ids),
    unknown: ledger.unknown,
    erased: ledger.erased.size,
    gaps: ledger.gaps,
  };
}

function add(map: Map<string, IdText[]>, key: string, id: IdText): void {
  const list = map.get(key);
  if (list) list.push(id);
  else map.set(key, [id]);
}

type Lists = ReadonlyMap<string, readonly IdText[]>;

/** Lists by key with a few ids more, in order of ids, leaving the lists given as they are. */
function joined(before: Lists, more: Lists, log: ReadonlyMap<IdText, Logged>): Lists {
  if (more.size === 0) return before;
  const after = new Map(before);
  for (const [key, ids] of more) {
    const entries = [...(before.get(key) ?? []), ...ids].map((id) => log.get(id)).filter((one) => one !== undefined);
    after.set(key, entries.sort(compareIds).map(idText));
  }
  return after;
}

const byId = (a: { readonly id: IdText }, b: { readonly id: IdText }): number => byCode(a.id, b.id);
