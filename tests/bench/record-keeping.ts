/** Keeping one reply beside a bare strict put of the same entry, on whatever IndexedDB there is. Refuses to judge. */
import { draftReply } from "../../src/core/record/index.js";
import { makeAct, openStore } from "../../src/device/store/index.js";
import { emptyVisit, fresh, key, newVisit, replyDraft, words } from "../store/sample.js";
import { percentile } from "./row.js";

const done = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

async function bareDatabase(): Promise<IDBDatabase> {
  const request = indexedDB.open(fresh("leadlamp-bare-"));
  request.onupgradeneeded = () => request.result.createObjectStore("entries");
  return done(request);
}

function barePut(database: IDBDatabase, key: number, value: unknown): Promise<void> {
  return new Promise((resolve, reject) => {
    const transaction = database.transaction("entries", "readwrite", { durability: "strict" });
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(transaction.error);
    transaction.objectStore("entries").put(value, key);
  });
}

async function timed(work: () => Promise<unknown>): Promise<number> {
  const began = performance.now();
  await work();
  return performance.now() - began;
}

/** Median and 95th percentile in milliseconds, taken in turns, after a visit of some entries was made. */
export async function timeKeeping(rounds: number): Promise<Readonly<Record<string, number>>> {
  const store = openStore(fresh("leadlamp-speed-"));
  const bare = await bareDatabase();
  const visit = newVisit();
  await store.append(Array.from({ length: 500 }, (_, i) => replyDraft(visit, `whl.p${i}`, words("rough"))));
  const kept: number[] = [];
  const put: number[] = [];
  for (let round = 0; round < rounds; round++) {
    const act = makeAct("anna", { wall: 1_770_000_000_000, count: round });
    const draft = draftReply(act, emptyVisit(visit), key(`whl.q${round}`), words("rough"));
    kept.push(await timed(() => store.append([draft])));
    put.push(await timed(() => barePut(bare, round, { ...draft, writer: "w", seq: round })));
  }
  store.close();
  bare.close();
  return {
    "one reply kept, median": percentile(kept, 0.5),
    "bare strict put, median": percentile(put, 0.5),
    "one reply kept, p95": percentile(kept, 0.95),
    "bare strict put, p95": percentile(put, 0.95),
  };
}
