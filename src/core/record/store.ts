/**
 * What the record asks of whoever keeps it: entries, blobs, local settings. Every answer about storage is a
 * Result; a rejected promise is our own mistake. Refuses to know IndexedDB.
 */
import type { Result } from "../terms/index.js";
import type { Act, BlobHash, Draft, Entry, IdText, Logged } from "./contract.js";
import type { Summary } from "./summary.js";

/**
 * How storage is doing, shown on screen.
 * `opening` · `open` · `full` no room for the last write · `refused` the browser gives none (private mode, blocked) ·
 * `lost` the connection died and did not come back, or the data was cleared under us · `closed-by-newer` another tab
 * runs a newer version: reload · `blocked` an older tab holds the data: close it.
 */
export interface Health {
  readonly is: "opening" | "open" | "full" | "refused" | "lost" | "closed-by-newer" | "blocked";
  /** The browser's own word, for a report of trouble; never the only text on screen. */
  readonly why?: string;
}

/** Bytes under their own hash. `device/photo` hands over the same shape. */
export interface KeptBytes {
  readonly hash: BlobHash;
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** How far a stream has come. */
export interface Heads {
  /** Last seq per writer. */
  readonly last: Readonly<Record<string, number>>;
  /** One text that changes whenever anything in the stream does, erasing and forks included. */
  readonly mark: string;
}

/** A stream changed. `whole`: read it all again (fork, stub, filled gap, removal); else `after` is enough. */
export interface Change {
  readonly stream: string;
  readonly whole: boolean;
  readonly from: "here" | "elsewhere";
}

/** What came of taking in entries from another tab, phone or file. */
export interface Received {
  readonly added: number;
  /** Already here. */
  readonly known: number;
  /** Came as, or had to become, a stub. */
  readonly erased: number;
  /** Same identity and nonce as here, other text: ours is kept. */
  readonly altered: readonly IdText[];
  /** Identities now claimed by more than one entry. */
  readonly forks: readonly IdText[];
  /** Set when our own writer met its fork: entries from now on carry this one. */
  readonly newWriter?: string;
}

/** Erase a whole stream, or single entries. */
export type EraseWhat = { readonly stream: string } | { readonly ids: readonly IdText[] };

/** A disposable result of folding; `mark` from the heads read before the entries it was made from. */
export interface Snapshot {
  readonly stream: string;
  readonly name: string;
  readonly foldVersion: number;
  readonly mark: string;
  readonly data: unknown;
}

/**
 * Problem codes: record.store-full, record.store-refused, record.store-lost, record.store-closed-by-newer,
 * record.store-blocked (all: nothing was kept, the same call may be tried again), record.blob-hash {hash} (bytes do
 * not match their name), record.not-demo {stream}, and those of `faultsOf`.
 */
export interface Store {
  health(): Health;
  /** Told at every change; returns how to stop listening. */
  watchHealth(listen: (health: Health) => void): () => void;
  /** Told of changed streams, from this tab and others; returns how to stop listening. */
  watch(listen: (changes: readonly Change[]) => void): () => void;
  /** When opening has come to an end, well or not. Operations may be called before. */
  ready(): Promise<Health>;
  /** The writer new entries carry. */
  writer(): Promise<Result<string>>;
  /**
   * Keeps entries and blobs in one strict transaction; resolves after it completed. A nonce kept before gives the
   * entry kept before, so the same drafts may be handed over again. `erase` drafts also erase.
   */
  append(drafts: readonly Draft[], blobs?: readonly KeptBytes[]): Promise<Result<readonly Entry[]>>;
  /** Union with what is here. Checks everything first and refuses whole. */
  receive(entries: readonly Logged[], blobs?: readonly KeptBytes[]): Promise<Result<Received>>;
  /** Entries of a stream, or only those after `after`, in order of writer and seq. */
  entries(stream: string, after?: Heads): Promise<Result<readonly Logged[]>>;
  heads(stream: string): Promise<Result<Heads>>;
  streams(): Promise<Result<readonly string[]>>;
  /** One line per stream for the list of cars and visits. */
  summaries(): Promise<Result<readonly Summary[]>>;
  blob(hash: BlobHash): Promise<Result<KeptBytes | undefined>>;
  /** Those of `hashes` that are not kept here. */
  missingBlobs(hashes: readonly BlobHash[]): Promise<Result<readonly BlobHash[]>>;
  /** Leaves stubs; blobs go when nothing else refers to them. Resolves to the erase entries. */
  eraseForGood(act: Act, what: EraseWhat): Promise<Result<readonly Entry[]>>;
  /** Removes demo streams without a trace; refuses any other. */
  removeStreams(streams: readonly string[]): Promise<Result<number>>;
  /** What this phone remembers for itself: person, theme, where one was. Never part of the record. */
  setting(name: string): Promise<Result<unknown>>;
  keepSetting(name: string, value: unknown): Promise<Result<true>>;
  /** Undefined when none was kept, or the stream moved on, or the fold did. */
  snapshot(stream: string, name: string, foldVersion: number): Promise<Result<unknown>>;
  keepSnapshot(snapshot: Snapshot): Promise<Result<true>>;
  /** Asks storage for a sign of life and reopens it if there is none. */
  probe(): Promise<Health>;
  close(): void;
}
