/** One IndexedDB transaction as the rules of keeping see it. Only ever waits for requests of its own transaction. */
import type { IDBPObjectStore, IDBPTransaction } from "idb";
import { compareIds, type EntryId, type Head, idText, type Logged, type WideShelf } from "../../core/record/index.js";
import type { EntryKey, Layout, STORES } from "./layout.js";

type StoreName = (typeof STORES)[number];
export type Transaction = IDBPTransaction<Layout, StoreName[], "readwrite">;

const keyOf = ({ stream, writer, seq, nonce }: EntryId): EntryKey => [stream, writer, seq, nonce];
/** Every key that begins with these parts: lists sort behind numbers and texts. */
const from = (...parts: (string | number)[]): IDBKeyRange => IDBKeyRange.bound(parts, [...parts, []]);

/**
 * Writes are issued and not waited for: should one fail, the transaction is aborted and says so when it ends.
 * `answered` is told of every answer, as a sign of life.
 */
export function shelfOn(transaction: Transaction, answered: () => void): WideShelf {
  const store = <Name extends StoreName>(name: Name): IDBPObjectStore<Layout, StoreName[], Name, "readwrite"> =>
    transaction.objectStore(name);
  const issue = (request: Promise<unknown> | undefined): void => {
    request?.then(answered, () => undefined);
  };
  const read = async <T>(request: Promise<T>): Promise<T> => {
    const answer = await request;
    answered();
    return answer;
  };
  const headsIn = async (range?: IDBKeyRange): Promise<ReadonlyMap<string, ReadonlyMap<string, Head>>> => {
    const [keys, values] = await read(Promise.all([store("heads").getAllKeys(range), store("heads").getAll(range)]));
    const streams = new Map<string, Map<string, Head>>();
    for (const [i, [stream, writer]] of keys.entries()) {
      const head = values[i];
      if (head) streams.set(stream, (streams.get(stream) ?? new Map<string, Head>()).set(writer, head));
    }
    return streams;
  };
  const entriesIn = async (range: IDBKeyRange): Promise<readonly Logged[]> =>
    (await read(store("entries").getAll(range))).map(({ logged }) => logged).sort(compareIds);
  return {
    writer: () => read(store("meta").get("writer")),
    setWriter: (writer) => issue(store("meta").put(writer, "writer")),
    head: (stream, writer) => read(store("heads").get([stream, writer])),
    setHead: (stream, writer, head) => issue(store("heads").put(head, [stream, writer])),
    async byNonce(stream, nonce) {
      return (await read(store("entries").index("nonce").get([stream, nonce])))?.logged;
    },
    between: (stream, writer, first, last) =>
      entriesIn(IDBKeyRange.bound([stream, writer, first], [stream, writer, last, []])),
    ofStream: (stream) => entriesIn(from(stream)),
    put: (logged, blobs) => issue(store("entries").put({ logged, blobs }, keyOf(logged))),
    async erasedIn(stream) {
      const keys = await read(store("erased").getAllKeys(from(stream)));
      return keys.map(([of, writer, seq, nonce]) => idText({ stream: of, writer, seq, nonce }));
    },
    markErased: (id) => issue(store("erased").put(1, keyOf(id))),
    hasBlob: async (hash) => (await read(store("blobs").getKey(hash))) !== undefined,
    putBlob: ({ hash, type, bytes }) => issue(store("blobs").put({ type, bytes: bufferOf(bytes) }, hash)),
    dropBlob: (hash) => issue(store("blobs").delete(hash)),
    isUsed: async (hash) => (await read(store("entries").index("blobs").getKey(hash))) !== undefined,
    dropStream(stream) {
      for (const name of ["entries", "heads", "erased", "snapshots"] as const) issue(store(name).delete(from(stream)));
    },
    headsOf: async (stream) => (await headsIn(from(stream))).get(stream) ?? new Map(),
    allHeads: () => headsIn(),
    async blob(hash) {
      const found = await read(store("blobs").get(hash));
      return found && { hash, type: found.type, bytes: new Uint8Array(found.bytes) };
    },
    setting: (name) => read(store("settings").get(name)),
    putSetting: (name, value) => issue(store("settings").put(value, name)),
    snapshot: (stream, name) => read(store("snapshots").get([stream, name])),
    snapshots: (name) => read(store("snapshots").index("name").getAll(name)),
    putSnapshot: (snapshot) => issue(store("snapshots").put(snapshot, [snapshot.stream, snapshot.name])),
  };
}

/** The bytes alone: a view on a larger buffer would take all of that along. */
function bufferOf(bytes: Uint8Array<ArrayBuffer>): ArrayBuffer {
  return bytes.byteLength === bytes.buffer.byteLength ? bytes.buffer : bytes.slice().buffer;
}
