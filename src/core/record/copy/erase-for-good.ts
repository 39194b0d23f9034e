/** Erases whole streams or single entries for good, then looks whether anything is left. Refuses to take that on trust. */
import { ok, type Problem, type Result } from "../../terms/index.js";
import { blobsOf } from "../blobs-of.js";
import type { Act, BlobHash, IdText, Logged } from "../contract.js";
import { idText, isEntry, parseId } from "../identity.js";
import type { Store } from "../store.js";

/** What was found afterwards, read back from the store. */
export interface Erased {
  /** Entries of which only number and time are left. */
  readonly entries: number;
  /** Entries that were to go and still have a body: none, or something is wrong. */
  readonly bodiesLeft: number;
  /** Pictures, sounds and frozen files whose bytes are gone. */
  readonly blobs: number;
  /** Kept, because something else that stays refers to them: sheets of other visits. */
  readonly shared: number;
  /** Bytes nothing refers to that are still here: none, or something is wrong. */
  readonly blobsLeft: number;
  /** It is deleted, and could not be looked at afterwards: the counts are what was asked for. */
  readonly unlooked?: Problem;
}

async function everyLog(store: Store): Promise<Result<readonly Logged[]>> {
  const streams = await store.streams();
  if (!streams.ok) return streams;
  const all: Logged[] = [];
  for (const stream of streams.value) {
    const entries = await store.entries(stream);
    if (!entries.ok) return entries;
    for (const logged of entries.value) all.push(logged);
  }
  return ok(all);
}

/** Everything that is left to read, and what of these bytes is not. */
async function lookAfter(
  store: Store,
  hashes: readonly BlobHash[],
): Promise<Result<{ readonly after: readonly Logged[]; readonly missing: readonly BlobHash[] }>> {
  // What was summed up of it before is made anew: the old lines held names.
  const summed = await store.summaries();
  if (!summed.ok) return summed;
  const after = await everyLog(store);
  if (!after.ok) return after;
  const missing = await store.missingBlobs(hashes);
  return missing.ok ? ok({ after: after.value, missing: missing.value }) : missing;
}

/**
 * Erases and looks again. `streams`: everything in them; `ids`: these entries. Fails with nothing deleted; codes: those
 * of the store.
 */
export async function eraseAndLook(
  store: Store,
  act: Act,
  { streams = [], ids = [] }: { readonly streams?: readonly string[]; readonly ids?: readonly IdText[] },
): Promise<Result<Erased>> {
  const going = new Map<IdText, Logged>();
  for (const stream of new Set([...streams, ...ids.map((id) => parseId(id)?.stream ?? "")])) {
    const entries = await store.entries(stream);
    if (!entries.ok) return entries;
    for (const logged of entries.value)
      if (isEntry(logged) && logged.kind !== "erase" && (streams.includes(stream) || ids.includes(idText(logged))))
        going.set(idText(logged), logged);
  }
  const hashes = new Set<BlobHash>([...going.values()].flatMap(blobsOf));
  // In one go over all streams: a car without its visits, or a visit without its plan, would be half deleted.
  if (going.size > 0) {
    const erased = await store.eraseForGood(act, { ids: [...going.keys()] });
    if (!erased.ok) return erased;
  }
  const looked = await lookAfter(store, [...hashes]);
  if (!looked.ok) {
    const [unlooked] = looked.problems;
    const asked = { entries: going.size, bodiesLeft: 0, blobs: hashes.size, shared: 0, blobsLeft: 0 };
    return ok({ ...asked, ...(unlooked ? { unlooked } : {}) });
  }
  const { after, missing } = looked.value;
  const bodiesLeft = after.filter((logged) => going.has(idText(logged)) && isEntry(logged)).length;
  const used = new Set(after.flatMap(blobsOf));
  const gone = new Set(missing);
  const here = [...hashes].filter((hash) => !gone.has(hash));
  const shared = here.filter((hash) => used.has(hash)).length;
  return ok({
    entries: going.size - bodiesLeft,
    bodiesLeft,
    blobs: gone.size,
    shared,
    blobsLeft: here.length - shared,
  });
}
