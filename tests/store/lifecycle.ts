/**
 * What the IndexedDB store must do around its connection: newer and older tabs, data taken away, storage refused,
 * handles that die or never answer. Plain functions, for a stand-in and for a real browser.
 */
import type { Health, Store } from "../../src/core/record/index.js";
import { openStore } from "../../src/device/store/index.js";
import { fresh, newVisit, replyDraft, words } from "./sample.js";
import { bad, type Check, eventually, good, holds, same, until } from "./subject.js";

type LifecycleCheck = Omit<Check, "run"> & { run(): Promise<void> };
type Opening = (...args: Parameters<IDBFactory["open"]>) => IDBOpenDBRequest;

const draftOf = (visit: string) => replyDraft(visit, "whl.spin", words("rough"));
const count = async (store: Store, visit: string): Promise<number> =>
  good(await store.entries(visit), "entries").length;
const statesOf = (store: Store): Health[] => {
  const states: Health[] = [];
  store.watchHealth((health) => states.push(health));
  return states;
};

/** Replaces how databases are opened while `work` runs. */
async function openingWith(open: (original: Opening) => Opening, work: () => Promise<void>): Promise<void> {
  const prototype = Object.getPrototypeOf(indexedDB) as { open: Opening };
  const original = prototype.open;
  prototype.open = open((...args) => original.apply(indexedDB, args));
  try {
    await work();
  } finally {
    prototype.open = original;
  }
}

interface Seen {
  readonly databases: Set<IDBDatabase>;
  readonly asked: { readonly mode: string; readonly durability: unknown; complete: boolean }[];
}

/** Watches transactions while `work` runs. */
async function watching(work: (seen: Seen) => Promise<void>): Promise<void> {
  const seen: Seen = { databases: new Set(), asked: [] };
  const original = IDBDatabase.prototype.transaction;
  IDBDatabase.prototype.transaction = function (stores, mode, options) {
    const transaction = original.call(this, stores, mode, options);
    const one = { mode: mode ?? "readonly", durability: options?.durability, complete: false };
    transaction.addEventListener("complete", () => {
      one.complete = true;
    });
    seen.databases.add(this);
    seen.asked.push(one);
    return transaction;
  };
  try {
    await work(seen);
  } finally {
    IDBDatabase.prototype.transaction = original;
  }
}

const done = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

const check = (name: string, run: (database: string) => Promise<void>): LifecycleCheck => ({
  name,
  async run() {
    const database = fresh("leadlamp-life-");
    await run(database);
    indexedDB.deleteDatabase(database);
  },
});

export const lifecycle: readonly LifecycleCheck[] = [
  check("an entry counts as kept only after its strict transaction completed", async (database) => {
    await watching(async (seen) => {
      const store = openStore(database);
      await store.ready();
      seen.asked.length = 0;
      const visit = newVisit();
      const pending = store.append([draftOf(visit)]);
      const result = await pending;
      good(result, "append");
      same(seen.asked, [{ mode: "readwrite", durability: "strict", complete: true }], "transactions of one append");
      store.close();
    });
  }),

  check(
    "a tab with a newer program takes over: the older one closes, says so and keeps nothing quietly",
    async (database) => {
      const visit = newVisit();
      const older = openStore(database);
      good(await older.append([draftOf(visit)]), "append");
      const newer = openStore(database, { version: 2 });
      same((await newer.ready()).is, "open", "the newer tab");
      same(older.health().is, "closed-by-newer", "the older tab");
      same(
        bad(await older.append([draftOf(visit)]), "append in the older tab"),
        "record.store-closed-by-newer",
        "code",
      );
      same((await older.probe()).is, "closed-by-newer", "until the page is loaded anew");
      same(await count(newer, visit), 1, "entries");
      older.close();
      newer.close();
    },
  ),

  check("an older program finds newer data: it says so and leaves it alone", async (database) => {
    const newer = openStore(database, { version: 3 });
    const visit = newVisit();
    good(await newer.append([draftOf(visit)]), "append");
    newer.close();
    const older = openStore(database);
    same((await older.ready()).is, "closed-by-newer", "health");
    same(bad(await older.append([draftOf(visit)]), "append"), "record.store-closed-by-newer", "code");
    older.close();
  }),

  check(
    "an old tab that does not give way blocks: that is told at once, and work goes on when it closes",
    async (database) => {
      const visit = newVisit();
      const first = openStore(database);
      good(await first.append([draftOf(visit)]), "append");
      first.close();
      const stubborn = await done(indexedDB.open(database));
      const store = openStore(database, { version: 2 });
      const states = statesOf(store);
      await until(() => store.health().is === "blocked", "blocked is told");
      const draft = draftOf(visit);
      same(bad(await store.append([draft]), "append"), "record.store-blocked", "code");
      stubborn.close();
      await until(() => store.health().is === "open", "open once the old tab is gone");
      good(await store.append([draft]), "append again");
      same(await count(store, visit), 2, "entries");
      same(
        states.map(({ is }) => is),
        ["blocked", "open"],
        "states told",
      );
      store.close();
    },
  ),

  check(
    "data cleared under an open page is a loss, told, and nothing is kept in its empty successor",
    async (database) => {
      const visit = newVisit();
      const store = openStore(database);
      good(await store.append([draftOf(visit)]), "append");
      await done(indexedDB.deleteDatabase(database));
      await until(() => store.health().is === "lost", "the loss is told");
      same(store.health().why, "removed", "why");
      same(bad(await store.append([draftOf(visit)]), "append"), "record.store-lost", "code");
      same((await store.probe()).is, "lost", "probing does not make it good");
      const next = openStore(database);
      same(await count(next, visit), 0, "a page loaded anew begins empty");
      good(await next.append([draftOf(visit)]), "and keeps");
      store.close();
      next.close();
    },
  ),

  check("a handle that died is replaced within the same call", async (database) => {
    await watching(async (seen) => {
      const visit = newVisit();
      const store = openStore(database);
      good(await store.append([draftOf(visit)]), "append");
      const states = statesOf(store);
      for (const handle of seen.databases) handle.close();
      good(await store.append([draftOf(visit)]), "append on a dead handle");
      same(await count(store, visit), 2, "entries");
      same(states, [], "nobody is troubled");
      store.close();
    });
  }),

  check("coming back to the page asks storage for a sign of life before anything is pressed", async (database) => {
    const page = new EventTarget();
    Object.defineProperty(page, "visibilityState", { value: "visible" });
    const isBrowser = typeof document !== "undefined";
    if (!isBrowser) Object.defineProperty(globalThis, "document", { value: page, configurable: true });
    await watching(async (seen) => {
      const store = openStore(database);
      await store.ready();
      for (const handle of seen.databases) handle.close();
      seen.databases.clear();
      seen.asked.length = 0;
      (isBrowser ? document : page).dispatchEvent(new Event("visibilitychange"));
      await until(() => seen.databases.size === 1 && seen.asked.length >= 2, "a new handle is made and asked");
      await until(() => seen.asked.every(({ complete }) => complete), "and answers");
      store.close();
      seen.databases.clear();
      (isBrowser ? document : page).dispatchEvent(new Event("visibilitychange"));
      await new Promise((resolve) => setTimeout(resolve, 20));
      same(seen.databases.size, 0, "a closed store listens no more");
    });
    if (!isBrowser) Reflect.deleteProperty(globalThis, "document");
  }),

  check("storage refused is told with the browser's word, and works once it is allowed", async (database) => {
    const visit = newVisit();
    let store: Store | undefined;
    const draft = draftOf(visit);
    const refuse = (): Opening => () => {
      throw new DOMException("denied", "SecurityError");
    };
    await openingWith(refuse, async () => {
      store = openStore(database);
      same(await store.ready(), { is: "refused", why: "SecurityError" }, "health");
      same(bad(await store.append([draft]), "append"), "record.store-refused", "code");
      same(bad(await store.entries(visit), "reading"), "record.store-refused", "code of reading");
    });
    if (!store) throw new Error("no store");
    good(await store.append([draft]), "append once allowed");
    same([store.health().is, await count(store, visit)], ["open", 1], "kept");
    store.close();
  }),

  check("no IndexedDB at all is a refusal, not a crash", async (database) => {
    const own = Object.getOwnPropertyDescriptor(globalThis, "indexedDB");
    Object.defineProperty(globalThis, "indexedDB", { value: undefined, configurable: true });
    const store = openStore(database);
    const health = await store.ready();
    const said = bad(await store.append([draftOf(newVisit())]), "append");
    if (own) Object.defineProperty(globalThis, "indexedDB", own);
    else Reflect.deleteProperty(globalThis, "indexedDB");
    same([health.is, said], ["refused", "record.store-refused"], "told");
    store.close();
  }),

  check("opening that never answers is told within the patience, and tried anew", async (database) => {
    const mute =
      (original: Opening): Opening =>
      (name, version) => {
        const request = original(name, version);
        for (const type of ["success", "error", "blocked", "upgradeneeded"]) {
          request.addEventListener(type, (event) => event.stopImmediatePropagation());
        }
        return request;
      };
    const other = fresh("leadlamp-mute-");
    const visit = newVisit();
    let store: Store | undefined;
    await openingWith(
      (original) => (_name, version) => mute(original)(other, version),
      async () => {
        store = openStore(database, { patience: 60 });
        same(await store.ready(), { is: "refused", why: "TimeoutError" }, "health");
      },
    );
    if (!store) throw new Error("no store");
    const well = store;
    const draft = draftOf(visit);
    await eventually(() => well.append([draft]), "append once it answers");
    same(well.health().is, "open", "health");
    well.close();
    indexedDB.deleteDatabase(other);
  }),

  check(
    "a transaction that never gets its turn is told, and the same drafts are kept once afterwards",
    async (database) => {
      const visit = newVisit();
      const draft = draftOf(visit);
      const store = openStore(database, { patience: 80 });
      const first = draftOf(visit);
      await eventually(() => store.append([first]), "append");
      const hog = await done(indexedDB.open(database));
      let isHolding = true;
      const transaction = hog.transaction(["entries", "meta"], "readwrite");
      const hold = (): void => {
        if (isHolding) transaction.objectStore("meta").get("writer").onsuccess = hold;
      };
      hold();
      same(bad(await store.append([draft]), "append"), "record.store-lost", "code");
      same(store.health(), { is: "lost", why: "TimeoutError" }, "health");
      isHolding = false;
      await eventually(() => store.append([draft]), "append once there is a turn");
      same(store.health().is, "open", "health");
      const entries = await eventually(() => store.entries(visit), "entries");
      same(entries.length, 2, "kept once");
      hog.close();
      store.close();
    },
  ),

  check("a closed store answers with a problem", async (database) => {
    const store = openStore(database);
    await store.ready();
    store.close();
    same(bad(await store.append([draftOf(newVisit())]), "append"), "record.store-lost", "code");
    holds(store.health().why === "closed", "why");
  }),
];
