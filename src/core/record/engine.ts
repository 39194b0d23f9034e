/** What a store's rules ask of whatever runs their transactions. Refuses to know IndexedDB. */
import type { Result } from "../terms/index.js";
import type { BlobHash } from "./contract.js";
import type { Head, Shelf } from "./shelf.js";
import type { Change, Health, KeptBytes, Snapshot } from "./store.js";

/** A transaction that also reaches lists, settings and snapshots. */
export interface WideShelf extends Shelf {
  headsOf(stream: string): Promise<ReadonlyMap<string, Head>>;
  blob(hash: BlobHash): Promise<KeptBytes | undefined>;
  setting(name: string): Promise<unknown>;
  putSetting(name: string, value: unknown): void;
  snapshot(stream: string, name: string): Promise<Snapshot | undefined>;
  /** Every snapshot of this name. */
  snapshots(name: string): Promise<readonly Snapshot[]>;
  putSnapshot(snapshot: Snapshot): void;
}

/**
 * `read` reads all · `keep` reads and writes the record · `remove` that and snapshots · `setting` settings only ·
 * `spare` snapshots only, and need not be durable.
 */
export type Mode = "read" | "keep" | "remove" | "setting" | "spare";

export interface Engine {
  /** Runs `work` in one transaction and resolves after it completed. Fails with a store problem; rejects on our own mistakes. */
  run<T>(mode: Mode, work: (shelf: WideShelf) => Promise<T>): Promise<Result<T>>;
  health(): Health;
  watchHealth(listen: (health: Health) => void): () => void;
  ready(): Promise<Health>;
  close(): void;
  /** Tells other tabs. */
  tell(changes: readonly Change[]): void;
  /** Hears from other tabs. */
  hear(listen: (changes: readonly Change[]) => void): () => void;
  nonce(): string;
  /**
   * Takes nonces into use and says of each whether it was certainly never handed over before: made in this page's
   * life, and not in use yet.
   */
  newNonces(nonces: readonly string[]): (nonce: string) => boolean;
  hashOf(bytes: Uint8Array<ArrayBuffer>): Promise<BlobHash>;
}
