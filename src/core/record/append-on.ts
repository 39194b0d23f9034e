/** Keeping: numbers, retries, and the quick way in view of a belief. Refuses to know what holds the transaction. */
import { blobsOf } from "./blobs-of.js";
import type { Draft, Entry } from "./contract.js";
import { isEntry } from "./identity.js";
import { type Head, type Shelf, type Touched, touch } from "./shelf.js";
import type { KeptBytes } from "./store.js";

/** What a tab believes: its writer, and how far that has come in the streams it wrote to. */
export interface Belief {
  readonly writer: string;
  readonly heads: ReadonlyMap<string, Head>;
}

/** Thrown when a belief proved wrong: the transaction must not happen, and be tried again without it. */
export class Mistaken extends Error {}

/** Does what an erase entry says; `eraseNamed`, once it is fetched. */
export type Erase = (shelf: Shelf, erasure: Entry, touched: Touched) => Promise<unknown>;

/**
 * Appends drafts with the next numbers of this installation's writer. `spare`: writer to become if there is none;
 * `erase` must be there when a draft erases.
 */
export async function appendOn(
  shelf: Shelf,
  drafts: readonly Draft[],
  blobs: readonly KeptBytes[],
  spare: string,
  touched: Touched,
  erase: Erase | undefined,
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
  for (const entry of appended.entries) {
    if (entry.kind !== "erase") continue;
    if (!erase) throw new Error("Nothing was fetched to erase with");
    await erase(shelf, entry, touched);
  }
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
