/**
 * The rules of keeping, over one transaction: numbering, retries, forks, stubs, blobs. The same for every store.
 * Refuses to know what holds the transaction.
 */
import { blobsOf } from "./blobs-of.js";
import type { BlobHash, Draft, Entry, EntryId, IdText, Logged } from "./contract.js";
import { idText, isEntry, isStub, parseId, stubOf } from "./identity.js";
import { known } from "./kinds.js";
import { canBeErased } from "./ledger.js";
import { canonicalText, merge } from "./merge.js";
import type { KeptBytes, Received } from "./store.js";

/**
 * How far one writer has come in a stream. `moved` counts what happened below `last`: forks, stubs, gaps filled.
 * `left`: this installation wrote as this writer and does so no more.
 */
export interface Head {
  readonly last: number;
  readonly moved: number;
  readonly left?: true;
}

/** One transaction over what is kept. Reads see its own writes; writes take effect together or not at all. */
export interface Shelf {
  writer(): Promise<string | undefined>;
  setWriter(writer: string): void;
  head(stream: string, writer: string): Promise<Head | undefined>;
  /** Stream → writer → head. */
  allHeads(): Promise<ReadonlyMap<string, ReadonlyMap<string, Head>>>;
  setHead(stream: string, writer: string, head: Head): void;
  byNonce(stream: string, nonce: string): Promise<Logged | undefined>;
  /** Entries of one writer, seq from–to, both included. */
  between(stream: string, writer: string, from: number, to: number): Promise<readonly Logged[]>;
  ofStream(stream: string): Promise<readonly Logged[]>;
  /** Puts an entry, or a stub over it; `blobs` is what it refers to. */
  put(logged: Logged, blobs: readonly BlobHash[]): void;
  erasedIn(stream: string): Promise<readonly IdText[]>;
  markErased(id: EntryId): void;
  hasBlob(hash: BlobHash): Promise<boolean>;
  putBlob(blob: KeptBytes): void;
  dropBlob(hash: BlobHash): void;
  /** Whether any entry kept refers to it. */
  isUsed(hash: BlobHash): Promise<boolean>;
  /** Takes out everything of a stream, blobs apart. */
  dropStream(stream: string): void;
}

/** Streams touched; `true`: something below the heads changed. */
export type Touched = Map<string, boolean>;

/** What a tab believes: its writer, and how far that has come in the streams it wrote to. */
export interface Belief {
  readonly writer: string;
  readonly heads: ReadonlyMap<string, Head>;
}

/** Thrown when a belief proved wrong: the transaction must not happen, and be tried again without it. */
export class Mistaken extends Error {}

/**
 * Appends drafts with the next numbers of this installation's writer. `spare`: writer to become if there is none.
 */
export async function appendOn(
  shelf: Shelf,
  drafts: readonly Draft[],
  blobs: readonly KeptBytes[],
  spare: string,
  touched: Touched,
): Promise<Appended> {
  const [known, before] = await Promise.all([
    shelf.writer(),
    Promise.all(drafts.map(({ stream, nonce }) => shelf.byNonce(stream, nonce))),
  ]);
  const writer = known ?? spare;
  if (known === undefined) shelf.setWriter(writer);
  const fresh = drafts.filter((_, i) => !before[i]);
  const streams = [...new Set(fresh.map(({ stream }) => stream))];
  const found = await Promise.all(streams.map((stream) => shelf.head(stream, writer)));
  const heads = new Map(streams.map((stream, i) => [stream, found[i] ?? { last: 0, moved: 0 }]));
  const appended = write(shelf, fresh, { writer, heads }, touched);
  await putBlobs(shelf, blobs);
  for (const entry of appended.entries) if (entry.kind === "erase") await eraseNamed(shelf, entry, touched);
  const made = new Map(appended.entries.map((entry) => [entry.nonce, entry]));
  const entries = drafts.map(({ nonce }, i) => before[i] ?? made.get(nonce)).filter((one) => one !== undefined);
  return { entries: entries.filter(isEntry), belief: appended.belief };
}

/**
 * The same in one go, in view of a belief: entries are written without waiting for an answer, and the belief is
 * checked before the transaction ends. `isNew` says of which nonces it is known that they were never kept; the others
 * are looked for. Throws `Mistaken` when anything is not as believed.
 */
export async function appendBelieving(
  shelf: Shelf,
  drafts: readonly Draft[],
  belief: Belief,
  isNew: (nonce: string) => boolean,
  touched: Touched,
): Promise<Appended> {
  const believed = [...belief.heads];
  const old = drafts.filter(({ nonce }) => !isNew(nonce));
  const answers = Promise.all([
    Promise.all(believed.map(([stream]) => shelf.head(stream, belief.writer))),
    Promise.all(old.map(({ stream, nonce }) => shelf.byNonce(stream, nonce))),
  ]);
  // Should writing fail at once, nobody is left to hear that reading failed too.
  answers.catch(() => undefined);
  const appended = write(shelf, drafts, belief, touched);
  const [found, kept] = await answers;
  const isRight = believed.every(([, { last, moved }], i) => {
    const head = found[i];
    return head?.last === last && head.moved === moved && head.left === undefined;
  });
  if (!isRight || kept.some((one) => one !== undefined)) throw new Mistaken("another tab was quicker");
  return appended;
}

interface Appended {
  readonly entries: readonly Entry[];
  /** What holds afterwards. */
  readonly belief: Belief;
}

function write(shelf: Shelf, drafts: readonly Draft[], { writer, heads }: Belief, touched: Touched): Appended {
  const after = new Map(heads);
  const entries = drafts.map((draft): Entry => {
    const { last, moved } = after.get(draft.stream) ?? { last: 0, moved: 0 };
    const entry = { ...draft, writer, seq: last + 1 };
    after.set(draft.stream, { last: entry.seq, moved });
    shelf.put(entry, blobsOf(entry));
    touch(touched, entry.stream, false);
    return entry;
  });
  for (const [stream, head] of after) shelf.setHead(stream, writer, head);
  return { entries, belief: { writer, heads: after } };
}

/** Bytes under a hash that is kept already are the same bytes: nothing is ever overwritten. */
async function putBlobs(shelf: Shelf, blobs: readonly KeptBytes[]): Promise<void> {
  const have = await Promise.all(blobs.map(({ hash }) => shelf.hasBlob(hash)));
  for (const [i, blob] of blobs.entries()) if (!have[i]) shelf.putBlob(blob);
}

/** Does what an erase entry says: stubs for what it names, marks for what is still to come. */
async function eraseNamed(shelf: Shelf, erasure: Entry, touched: Touched): Promise<number> {
  const entry = known(erasure);
  if (entry?.kind !== "erase") return 0;
  const ids = entry.body.of.map(({ id }) => parseId(id)).filter((id) => id !== undefined && id.stream === entry.stream);
  const orphans = new Set<BlobHash>();
  let erased = 0;
  for (const [writer, named] of byWriter(ids.filter((id) => id !== undefined))) {
    const seqs = named.map(({ seq }) => seq);
    const kept = await shelf.between(entry.stream, writer, Math.min(...seqs), Math.max(...seqs));
    const here = new Map(kept.map((logged) => [idText(logged), logged]));
    let turned = 0;
    for (const id of named) {
      const logged = here.get(idText(id));
      if (!canBeErased(entry.stream, idText(id), logged)) continue;
      shelf.markErased(id);
      if (!logged || isStub(logged)) continue;
      for (const hash of blobsOf(logged)) orphans.add(hash);
      shelf.put(stubOf(logged), []);
      turned++;
    }
    if (turned > 0) await moveHead(shelf, entry.stream, writer, turned, touched);
    erased += turned;
  }
  await dropUnused(shelf, orphans);
  return erased;
}

async function dropUnused(shelf: Shelf, hashes: Iterable<BlobHash>): Promise<void> {
  for (const hash of hashes) if (!(await shelf.isUsed(hash))) shelf.dropBlob(hash);
}

async function moveHead(shelf: Shelf, stream: string, writer: string, by: number, touched: Touched): Promise<void> {
  const head = (await shelf.head(stream, writer)) ?? { last: 0, moved: 0 };
  shelf.setHead(stream, writer, { ...head, moved: head.moved + by });
  touch(touched, stream, true);
}

interface Taking {
  added: number;
  known: number;
  erased: number;
  readonly altered: IdText[];
  readonly forks: Set<IdText>;
  readonly orphans: Set<BlobHash>;
  readonly erasures: Entry[];
  metSelf: boolean;
}

/** Takes in entries from elsewhere: union, stubs over bodies, what is here over altered copies. */
export async function receiveOn(
  shelf: Shelf,
  incoming: readonly Logged[],
  blobs: readonly KeptBytes[],
  spare: string,
  touched: Touched,
): Promise<Received> {
  const { entries, altered } = merge(incoming);
  const own = await shelf.writer();
  const taking: Taking = {
    added: 0,
    known: 0,
    erased: 0,
    altered: [...altered],
    forks: new Set(),
    orphans: new Set(),
    erasures: [],
    metSelf: false,
  };
  for (const [stream, ofStream] of groupBy(entries, ({ stream }) => stream)) {
    const erased = new Set(await shelf.erasedIn(stream));
    for (const id of namedErased(ofStream)) erased.add(id);
    for (const [writer, group] of groupBy(ofStream, (logged) => logged.writer)) {
      await takeGroup(shelf, stream, writer, group, { erased, isOwn: writer === own }, taking, touched);
    }
  }
  for (const erasure of taking.erasures) taking.erased += await eraseNamed(shelf, erasure, touched);
  await dropUnused(shelf, taking.orphans);
  const have = await Promise.all(
    blobs.map(async ({ hash }) => (await shelf.hasBlob(hash)) || !(await shelf.isUsed(hash))),
  );
  for (const [i, blob] of blobs.entries()) if (!have[i]) shelf.putBlob(blob);
  const { added, known, erased, metSelf } = taking;
  const forks = [...taking.forks];
  if (!metSelf || own === undefined) return { added, known, erased, altered: taking.altered, forks };
  await leave(shelf, own, spare);
  return { added, known, erased, altered: taking.altered, forks, newWriter: spare };
}

/** Gives one writer up for another; its heads say so, for tabs that still believe in it. */
async function leave(shelf: Shelf, writer: string, next: string): Promise<void> {
  shelf.setWriter(next);
  for (const [stream, writers] of await shelf.allHeads()) {
    const head = writers.get(writer);
    if (head) shelf.setHead(stream, writer, { ...head, left: true });
  }
}

/** What the erasures among these entries name. */
function namedErased(entries: readonly Logged[]): ReadonlySet<IdText> {
  const named = new Set<IdText>();
  const byId = new Map(entries.map((logged) => [idText(logged), logged]));
  for (const logged of entries) {
    const entry = isEntry(logged) ? known(logged) : undefined;
    if (entry?.kind !== "erase") continue;
    for (const { id } of entry.body.of) if (canBeErased(entry.stream, id, byId.get(id))) named.add(id);
  }
  return named;
}

/** Entries of one writer in one stream, in order of seq. */
async function takeGroup(
  shelf: Shelf,
  stream: string,
  writer: string,
  group: readonly Logged[],
  knowing: { readonly erased: ReadonlySet<IdText>; readonly isOwn: boolean },
  taking: Taking,
  touched: Touched,
): Promise<void> {
  const seqs = group.map(({ seq }) => seq);
  const here = await shelf.between(stream, writer, Math.min(...seqs), Math.max(...seqs));
  const byId = new Map(here.map((logged) => [idText(logged), logged]));
  const bySeq = groupBy(here, ({ seq }) => seq);
  const before = (await shelf.head(stream, writer)) ?? { last: 0, moved: 0 };
  let { last, moved } = before;
  for (const logged of group) {
    const id = idText(logged);
    const kept = byId.get(id);
    const isGone = isStub(logged) || (knowing.erased.has(id) && logged.kind !== "erase");
    if (kept) {
      if (!isStub(kept) && isStub(logged)) {
        for (const hash of blobsOf(kept)) taking.orphans.add(hash);
        putStub(shelf, logged);
        taking.erased++;
        moved++;
      } else {
        taking.known++;
        if (isEntry(kept) && isEntry(logged) && canonicalText(kept) !== canonicalText(logged)) taking.altered.push(id);
      }
      continue;
    }
    const twins = bySeq.get(logged.seq) ?? [];
    for (const twin of twins) taking.forks.add(idText(twin));
    if (twins.length > 0) taking.forks.add(id);
    bySeq.set(logged.seq, [...twins, logged]);
    if (isGone) {
      putStub(shelf, logged);
      taking.erased++;
    } else {
      shelf.put(logged, blobsOf(logged));
      taking.added++;
      if (logged.kind === "erase") taking.erasures.push(logged);
    }
    if (knowing.isOwn) taking.metSelf = true;
    if (logged.seq > last) last = logged.seq;
    else moved++;
    touch(touched, stream, false);
  }
  if (moved > before.moved) touch(touched, stream, true);
  if (last > before.last || moved > before.moved) shelf.setHead(stream, writer, { ...before, last, moved });
}

function putStub(shelf: Shelf, logged: Logged): void {
  shelf.put(stubOf(logged), []);
  shelf.markErased(logged);
}

/** Removes streams without a trace, and the blobs nothing else refers to. */
export async function removeOn(shelf: Shelf, streams: readonly string[], touched: Touched): Promise<number> {
  const orphans = new Set<BlobHash>();
  let removed = 0;
  for (const stream of streams) {
    const entries = await shelf.ofStream(stream);
    for (const logged of entries) for (const hash of blobsOf(logged)) orphans.add(hash);
    removed += entries.length;
    shelf.dropStream(stream);
    touch(touched, stream, true);
  }
  await dropUnused(shelf, orphans);
  return removed;
}

function touch(touched: Touched, stream: string, whole: boolean): void {
  touched.set(stream, whole || touched.get(stream) === true);
}

function byWriter(ids: readonly EntryId[]): ReadonlyMap<string, readonly EntryId[]> {
  return groupBy(ids, ({ writer }) => writer);
}

function groupBy<T, K>(list: readonly T[], key: (one: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const one of list) {
    const group = groups.get(key(one));
    if (group) group.push(one);
    else groups.set(key(one), [one]);
  }
  return groups;
}
