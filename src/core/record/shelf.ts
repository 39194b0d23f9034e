/**
 * One transaction over what is kept, as the rules of keeping see it. The same for every store; refuses to know what
 * holds the transaction.
 */
import type { BlobHash, EntryId, IdText, Logged } from "./contract.js";
import type { KeptBytes } from "./store.js";

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

export function touch(touched: Touched, stream: string, whole: boolean): void {
  touched.set(stream, whole || touched.get(stream) === true);
}

export function groupBy<T, K>(list: readonly T[], key: (one: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const one of list) {
    const group = groups.get(key(one));
    if (group) group.push(one);
    else groups.set(key(one), [one]);
  }
  return groups;
}
