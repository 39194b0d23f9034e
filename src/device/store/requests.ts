/**
 * IndexedDB's requests and transactions as promises, and its stores with the types of the layout. Refuses to know what
 * a failure means.
 */
import type { Indexes, Layout, StoreName } from "./layout.js";

interface Lookup<Query, Key, Value> {
  get(query: Query | IDBKeyRange): IDBRequest<Value | undefined>;
  getKey(query: Query | IDBKeyRange): IDBRequest<Key | undefined>;
  getAll(query?: Query | IDBKeyRange): IDBRequest<Value[]>;
  getAllKeys(query?: Query | IDBKeyRange): IDBRequest<Key[]>;
}

interface StoreOf<Key, Value, Indexed> extends Lookup<Key, Key, Value> {
  put(value: Value, key: Key): IDBRequest<unknown>;
  delete(query: Key | IDBKeyRange): IDBRequest<unknown>;
  index<Name extends keyof Indexed & string>(name: Name): Lookup<Indexed[Name], Key, Value>;
}

/** A store of a transaction, typed as the layout says. Only what a transaction of its mode may do will succeed. */
export function storeIn<Name extends StoreName>(
  transaction: IDBTransaction,
  name: Name,
): StoreOf<Layout[Name]["key"], Layout[Name]["value"], Indexes<Name>> {
  // The browser knows no layout: it types every key and value as anything.
  return transaction.objectStore(name) as StoreOf<Layout[Name]["key"], Layout[Name]["value"], Indexes<Name>>;
}

/** What a request answers. The transaction stays open for what is asked in the same turn. */
export function answerOf<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.addEventListener("success", () => resolve(request.result));
    request.addEventListener("error", () => reject(request.error));
  });
}

/** Resolves once the transaction completed. To be asked as soon as it is made: an ending gone by is not told again. */
export function endOf(transaction: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    const failed = (): void => reject(transaction.error ?? new DOMException("The transaction ended", "AbortError"));
    transaction.addEventListener("complete", () => resolve());
    transaction.addEventListener("error", failed);
    transaction.addEventListener("abort", failed);
  });
}

export interface OpeningHandlers {
  /** Runs inside the upgrade's own transaction. */
  readonly upgrade: (database: IDBDatabase, from: number, transaction: IDBTransaction) => void;
  /** An older connection is in the way. */
  readonly blocked: () => void;
  /** This connection is in the way of a newer layout, or of clearing (`null`). */
  readonly blocking: (asked: number | null) => void;
  /** The browser ended the connection. */
  readonly terminated: () => void;
}

/** Opens a database in the given layout. */
export async function openDatabase(
  name: string,
  version: number,
  { upgrade, blocked, blocking, terminated }: OpeningHandlers,
): Promise<IDBDatabase> {
  const request = indexedDB.open(name, version);
  request.addEventListener("upgradeneeded", ({ oldVersion }) => {
    if (request.transaction) upgrade(request.result, oldVersion, request.transaction);
  });
  request.addEventListener("blocked", blocked);
  const database = await answerOf(request);
  database.addEventListener("close", terminated);
  database.addEventListener("versionchange", ({ newVersion }) => blocking(newVersion));
  return database;
}
