/** Erasing and removing: stubs, marks, and the bytes nothing refers to any more. Refuses to know who asked. */
import { blobsOf } from "./blobs-of.js";
import type { BlobHash, Entry } from "./contract.js";
import { idText, isStub, parseId, stubOf } from "./identity.js";
import { known } from "./kinds.js";
import { canBeErased } from "./ledger.js";
import { groupBy, type Shelf, type Touched, touch } from "./shelf.js";

/** Does what an erase entry says: stubs for what it names, marks for what is still to come. */
export async function eraseNamed(shelf: Shelf, erasure: Entry, touched: Touched): Promise<number> {
  const entry = known(erasure);
  if (entry?.kind !== "erase") return 0;
  const ids = entry.body.of.map(({ id }) => parseId(id)).filter((id) => id !== undefined);
  const orphans = new Set<BlobHash>();
  let erased = 0;
  for (const [writer, named] of groupBy(
    ids.filter(({ stream }) => stream === entry.stream),
    ({ writer }) => writer,
  )) {
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

export async function dropUnused(shelf: Shelf, hashes: Iterable<BlobHash>): Promise<void> {
  for (const hash of hashes) if (!(await shelf.isUsed(hash))) shelf.dropBlob(hash);
}

async function moveHead(shelf: Shelf, stream: string, writer: string, by: number, touched: Touched): Promise<void> {
  const head = (await shelf.head(stream, writer)) ?? { last: 0, moved: 0 };
  shelf.setHead(stream, writer, { ...head, moved: head.moved + by });
  touch(touched, stream, true);
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
