/** Taking in entries from elsewhere: union, forks, stubs, a writer met by its double. Refuses to know where from. */
import type { Problem } from "../terms/index.js";
import { ALL_KINDS } from "./all-kinds.js";
import { blobsOf } from "./blobs-of.js";
import { faultsOf } from "./check-logged.js";
import type { BlobHash, Entry, IdText, Logged } from "./contract.js";
import { dropUnused, eraseNamed } from "./erase-on.js";
import { idText, isEntry, isStub, stubOf } from "./identity.js";
import { known } from "./kinds.js";
import { canBeErased } from "./ledger.js";
import { canonicalText, merge } from "./merge.js";
import { groupBy, type Shelf, type Touched, touch } from "./shelf.js";
import type { KeptBytes, Received } from "./store.js";

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

/** What is wrong with entries from elsewhere, of whatever kind. */
export const faultsIn = (entries: readonly Logged[]): readonly Problem[] =>
  entries.flatMap((logged) => faultsOf(logged, {}, ALL_KINDS));

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
