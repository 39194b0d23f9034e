/** Removing whole streams. Fetched when it is asked for, as few sessions do. */
import { blobsOf } from "./blobs-of.js";
import type { BlobHash } from "./contract.js";
import { dropUnused } from "./erase-on.js";
import { type Shelf, type Touched, touch } from "./shelf.js";

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
