/** The record's store in a browser: IndexedDB, one connection per tab, other tabs told. Refuses to fold or judge. */
import {
  type Engine,
  type Mode,
  NO_ANSWER,
  type Store,
  storageTrouble,
  storeOn,
  type WideShelf,
  withTries,
} from "../../core/record/index.js";
import { hashOf, makeNonce, takeNonces } from "./chance.js";
import { Connection } from "./connection.js";
import { RECORD, STORES } from "./layout.js";
import { openNews } from "./news.js";
import { shelfOn, type Transaction } from "./shelf.js";

export interface StoreOptions {
  /** How long opening or one transaction may take before it counts as dead, ms. Own choice: 8 s. */
  readonly patience?: number;
  readonly version?: number;
}

/** Stores a transaction of each mode reaches, and whether it must be on the disk before it counts. */
const MODES = {
  read: { stores: STORES, mode: "readonly", durability: "default" },
  keep: { stores: RECORD, mode: "readwrite", durability: "strict" },
  remove: { stores: STORES, mode: "readwrite", durability: "strict" },
  setting: { stores: ["settings"], mode: "readwrite", durability: "strict" },
  spare: { stores: ["snapshots"], mode: "readwrite", durability: "relaxed" },
} as const satisfies Record<
  Mode,
  { stores: readonly string[]; mode: IDBTransactionMode; durability: IDBTransactionDurability }
>;

/** Opens the store of this name; opening goes on in the background, `health` and `ready` tell how it went. */
export function openStore(name: string, { patience = 8000, version }: StoreOptions = {}): Store {
  const connection = new Connection(name, {
    patience,
    nonce: makeNonce,
    ...(version === undefined ? {} : { version }),
  });
  const news = openNews(`${name} changes`);
  const run: Engine["run"] = (mode, work) =>
    withTries(
      () => transact(connection, mode, patience, work),
      () => connection.drop(),
      connection.health,
      mode === "keep" || mode === "remove" || mode === "setting",
    );
  const store = storeOn({
    run,
    health: () => connection.health.value,
    watchHealth: (listen) => connection.health.watch(listen),
    ready: () => opened,
    close() {
      stopWatching();
      news.close();
      connection.close();
    },
    tell: news.tell,
    hear: news.hear,
    nonce: makeNonce,
    newNonces: takeNonces,
    hashOf,
  });
  const opened = store.probe();
  const stopWatching = whenSeenAgain(store.probe);
  return store;
}

async function transact<T>(
  connection: Connection,
  mode: Mode,
  patience: number,
  work: (shelf: WideShelf) => Promise<T>,
): Promise<T> {
  const database = await connection.handle();
  const { stores, mode: access, durability } = MODES[mode];
  // Typed as the widest transaction: the engine's modes say which stores each operation may reach.
  const transaction = database.transaction([...stores], access, { durability }) as unknown as Transaction;
  const done = transaction.done;
  done.catch(() => undefined);
  const watch = watchFor(patience);
  try {
    return await Promise.race([finished(work(shelfOn(transaction, watch.answered)), done), watch.silence]);
  } catch (error) {
    abort(transaction);
    // A request that fails because its transaction did only says so; the cause sits on the transaction.
    throw storageTrouble(transaction.error) ? transaction.error : error;
  } finally {
    watch.stop();
  }
}

/** Rejects `silence` when nothing was answered for so long, ms. */
function watchFor(patience: number) {
  let heard = performance.now();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const silence = new Promise<never>((_, reject) => {
    const look = (): void => {
      const left = heard + patience - performance.now();
      if (left <= 0) reject(new DOMException("No answer from storage", NO_ANSWER));
      else timer = setTimeout(look, left);
    };
    timer = setTimeout(look, patience);
  });
  return {
    silence,
    answered: (): void => {
      heard = performance.now();
    },
    stop: (): void => clearTimeout(timer),
  };
}

/** What the work came to, once the transaction completed. */
async function finished<T>(working: Promise<T>, done: Promise<void>): Promise<T> {
  const value = await working;
  await done;
  return value;
}

function abort(transaction: Transaction): void {
  try {
    transaction.abort();
  } catch {
    // It is over already: that is what was wanted.
  }
}

/** Calls back when the page is seen again: after a time in the background a connection may be dead. */
function whenSeenAgain(look: () => unknown): () => void {
  if (typeof document === "undefined") return () => undefined;
  const listen = (): void => {
    if (document.visibilityState === "visible") look();
  };
  document.addEventListener("visibilitychange", listen);
  return () => document.removeEventListener("visibilitychange", listen);
}
