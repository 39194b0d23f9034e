/** What the database holds and how an older one becomes this one. Refuses to know the rules of keeping. */
import type { DBSchema, IDBPDatabase, IDBPTransaction } from "idb";
import type { BlobHash, Head, Logged, Snapshot } from "../../core/record/index.js";

/** Raised with every change of layout; `upgrade` brings older ones along. */
export const LAYOUT_VERSION = 1;

export type EntryKey = [stream: string, writer: string, seq: number, nonce: string];

export interface Layout extends DBSchema {
  entries: {
    key: EntryKey;
    value: { readonly logged: Logged; readonly blobs: readonly BlobHash[] };
    indexes: { nonce: [stream: string, nonce: string]; blobs: BlobHash };
  };
  heads: { key: [stream: string, writer: string]; value: Head };
  /** Ids known erased, whether or not their entry ever came. */
  erased: { key: EntryKey; value: 1 };
  /** Bytes and type, not Blob objects: some engines give those back broken. */
  blobs: { key: BlobHash; value: { readonly type: string; readonly bytes: ArrayBuffer } };
  settings: { key: string; value: unknown };
  snapshots: { key: [stream: string, name: string]; value: Snapshot; indexes: { name: string } };
  /** `writer`: this installation's; `made`: tells this database from one made anew under the same name. */
  meta: { key: "writer" | "made"; value: string };
}

export const STORES = ["entries", "heads", "erased", "blobs", "settings", "snapshots", "meta"] as const;
export const RECORD = ["entries", "heads", "erased", "blobs", "meta"] as const;

type Upgrading = IDBPTransaction<Layout, (typeof STORES)[number][], "versionchange">;

/** Runs inside the upgrade's own transaction: nothing here may wait for anything else. */
export function upgrade(
  database: IDBPDatabase<Layout>,
  from: number,
  transaction: Upgrading,
  nonce: () => string,
): void {
  if (from < 1) {
    const entries = database.createObjectStore("entries");
    entries.createIndex("nonce", ["logged.stream", "logged.nonce"]);
    entries.createIndex("blobs", "blobs", { multiEntry: true });
    for (const name of ["heads", "erased", "blobs", "settings", "meta"] as const) database.createObjectStore(name);
    database.createObjectStore("snapshots").createIndex("name", "name");
    // Should this fail, so does the upgrade, and opening says it.
    transaction
      .objectStore("meta")
      .put(nonce(), "made")
      .catch(() => undefined);
  }
}
