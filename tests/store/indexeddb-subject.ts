/**
 * The store on whatever IndexedDB there is, the browser's or a stand-in, with failures to order: the nth request
 * throws as on a dead handle, or its transaction is aborted as when there is no room.
 */

import type { Store } from "../../src/core/record/index.js";
import { makeNonce, openStore } from "../../src/device/store/index.js";
import { fresh } from "./sample.js";
import type { Bench, Fault, Subject } from "./subject.js";

const REQUESTS = {
  IDBObjectStore: ["get", "getKey", "getAll", "getAllKeys", "put", "add", "delete"],
  IDBIndex: ["get", "getKey", "getAll", "getAllKeys"],
  IDBDatabase: ["transaction"],
} as const;

/** Errors a browser raises at once rather than by ending the transaction. */
const AT_ONCE = new Set(["InvalidStateError", "TransactionInactiveError"]);

let ordered: Fault | undefined;
let operations = 0;
let isPatched = false;

type Method = (this: object, ...args: unknown[]) => unknown;

/** Puts the counting in front of every request. Once: the prototypes stay patched, and without an order nothing fails. */
function patch(): void {
  if (isPatched) return;
  isPatched = true;
  for (const [owner, methods] of Object.entries(REQUESTS)) {
    const prototype: Record<string, Method> = Reflect.get(globalThis, owner).prototype;
    for (const method of methods) {
      const original = prototype[method];
      if (!original) throw new Error(`${owner} has no ${method}`);
      prototype[method] = function (...args) {
        operations += 1;
        const isDue = ordered && (ordered.forEver ? operations >= ordered.at : operations === ordered.at);
        if (!ordered || !isDue) return original.apply(this, args);
        const error = new DOMException(`ordered for ${owner}.${method}`, ordered.error);
        if (AT_ONCE.has(ordered.error) || owner === "IDBDatabase") throw error;
        const request = original.apply(this, args);
        abortWith(transactionOf(this), error);
        return request;
      };
    }
  }
}

function transactionOf(owner: object): IDBTransaction {
  const store: unknown = "objectStore" in owner ? owner.objectStore : owner;
  const transaction: unknown =
    typeof store === "object" && store !== null && "transaction" in store ? store.transaction : undefined;
  // Prototypes are patched for object stores and indexes only: both lead to their transaction.
  return transaction as IDBTransaction;
}

/** As the browser does it: the cause sits on the transaction, requests only say that it ended. */
function abortWith(transaction: IDBTransaction, error: DOMException): void {
  Object.defineProperty(transaction, "error", { value: error, configurable: true });
  transaction.abort();
}

export const indexedDbSubject = (name: string): Subject => ({ name, bench: async () => bench() });

function bench(): Bench {
  patch();
  const database = fresh("leadlamp-test-");
  const stores: Store[] = [];
  const others: Bench[] = [];
  return {
    open() {
      const store = openStore(database, { patience: 60_000 });
      stores.push(store);
      return store;
    },
    nonce: makeNonce,
    order(next) {
      ordered = next;
      operations = 0;
    },
    operations: () => operations,
    async another() {
      const other = bench();
      others.push(other);
      return other;
    },
    async close() {
      ordered = undefined;
      for (const store of stores) store.close();
      for (const other of others) await other.close();
      await new Promise((resolve) => {
        const request = indexedDB.deleteDatabase(database);
        request.onsuccess = resolve;
        request.onerror = resolve;
        request.onblocked = resolve;
      });
    },
  };
}
