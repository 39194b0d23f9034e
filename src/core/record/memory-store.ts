/**
 * A store that forgets when the program ends: for the command line and for tests. Keeps the same contract as the one
 * on a phone. Randomness and hashing come from outside.
 */
import type { BlobHash, IdText, Logged } from "./contract.js";
import type { Engine, WideShelf } from "./engine.js";
import { compareIds, idText } from "./identity.js";
import type { Head } from "./shelf.js";
import type { Change, Health, KeptBytes, Snapshot, Store } from "./store.js";
import { storeOn } from "./store-on.js";
import { withTries } from "./store-trouble.js";
import { Watched } from "./watched.js";

interface KeptEntry {
  readonly logged: Logged;
  readonly blobs: readonly BlobHash[];
}

/** What several stores of one name share, as tabs of one browser do. */
export interface MemoryWorld {
  readonly data: MemoryData;
  readonly tabs: Set<(changes: readonly Change[]) => void>;
  /** Transactions wait for one another here. */
  turn: Promise<unknown>;
}

interface MemoryData {
  writer: string | undefined;
  readonly entries: Map<IdText, KeptEntry>;
  readonly heads: Map<string, Map<string, Head>>;
  readonly erased: Map<string, Set<IdText>>;
  readonly blobs: Map<BlobHash, KeptBytes>;
  readonly settings: Map<string, unknown>;
  readonly snapshots: Map<string, Snapshot>;
}

type Fault = (operation: string) => void;

export interface MemoryOptions {
  readonly nonce: () => string;
  readonly hashOf: (bytes: Uint8Array<ArrayBuffer>) => Promise<BlobHash>;
  /** Called before every operation and before completing: throws what a browser's storage would. For tests. */
  readonly fault?: Fault;
}

export const memoryWorld = (): MemoryWorld => ({
  data: {
    writer: undefined,
    entries: new Map(),
    heads: new Map(),
    erased: new Map(),
    blobs: new Map(),
    settings: new Map(),
    snapshots: new Map(),
  },
  tabs: new Set(),
  turn: Promise.resolve(),
});

/** A store on `world`; two on one world see each other's entries as two tabs do. */
export function openMemoryStore(world: MemoryWorld, options: MemoryOptions): Store {
  return storeOn(memoryEngine(world, options));
}

function memoryEngine(world: MemoryWorld, { nonce, hashOf, fault = () => undefined }: MemoryOptions): Engine {
  const health = new Watched<Health>({ is: "open" });
  const own = new Set<(changes: readonly Change[]) => void>();
  const hearing = (changes: readonly Change[]): void => {
    for (const listen of own) listen(changes);
  };
  world.tabs.add(hearing);
  return {
    run(mode, work) {
      const turn = world.turn.then(() =>
        withTries(() => transact(world.data, fault, work), nothing, health, mode !== "read" && mode !== "spare"),
      );
      world.turn = turn.catch(nothing);
      return turn;
    },
    health: () => health.value,
    watchHealth: (listen) => health.watch(listen),
    ready: () => Promise.resolve(health.value),
    close: () => world.tabs.delete(hearing),
    tell: (changes) => {
      for (const tab of world.tabs) if (tab !== hearing) tab(changes);
    },
    hear: (listen) => {
      own.add(listen);
      return () => own.delete(listen);
    },
    nonce,
    newNonces: () => () => false,
    hashOf,
  };
}

const nothing = (): undefined => undefined;

/** All of it, or none. */
async function transact<T>(data: MemoryData, fault: Fault, work: (shelf: WideShelf) => Promise<T>): Promise<T> {
  const undo: (() => void)[] = [];
  try {
    const value = await work(memoryShelf(data, undo, fault));
    fault("complete");
    return value;
  } catch (error) {
    for (const back of undo.reverse()) back();
    throw error;
  }
}

/** Sets (or, with undefined, drops) a value and remembers how it was. */
function setIn<K, V>(map: Map<K, V>, key: K, value: V | undefined, undo: (() => void)[]): void {
  const before = map.get(key);
  undo.push(() => (before === undefined ? map.delete(key) : map.set(key, before)));
  if (value === undefined) map.delete(key);
  else map.set(key, value);
}

function memoryShelf(data: MemoryData, undo: (() => void)[], fault: Fault): WideShelf {
  const kept = (isWanted: (logged: Logged) => boolean): readonly Logged[] =>
    [...data.entries.values()]
      .map(({ logged }) => logged)
      .filter(isWanted)
      .sort(compareIds);
  const read = async <T>(operation: string, value: () => T): Promise<T> => {
    fault(operation);
    return value();
  };
  const write = (operation: string, put: () => void): void => {
    fault(operation);
    put();
  };
  return {
    writer: () => read("writer", () => data.writer),
    setWriter: (writer) =>
      write("setWriter", () => {
        const before = data.writer;
        undo.push(() => {
          data.writer = before;
        });
        data.writer = writer;
      }),
    head: (stream, writer) => read("head", () => data.heads.get(stream)?.get(writer)),
    setHead: (stream, writer, head) =>
      write("setHead", () => setIn(data.heads, stream, new Map(data.heads.get(stream)).set(writer, head), undo)),
    byNonce: (stream, nonce) => read("byNonce", () => kept((one) => one.stream === stream && one.nonce === nonce)[0]),
    between: (stream, writer, from, to) =>
      read("between", () =>
        kept((one) => one.stream === stream && one.writer === writer && one.seq >= from && one.seq <= to),
      ),
    ofStream: (stream) => read("ofStream", () => kept((one) => one.stream === stream)),
    put: (logged, blobs) => write("put", () => setIn(data.entries, idText(logged), frozen({ logged, blobs }), undo)),
    erasedIn: (stream) => read("erasedIn", () => [...(data.erased.get(stream) ?? [])]),
    markErased: (id) =>
      write("markErased", () =>
        setIn(data.erased, id.stream, new Set(data.erased.get(id.stream)).add(idText(id)), undo),
      ),
    hasBlob: (hash) => read("hasBlob", () => data.blobs.has(hash)),
    putBlob: (blob) => write("putBlob", () => setIn(data.blobs, blob.hash, blob, undo)),
    dropBlob: (hash) => write("dropBlob", () => setIn(data.blobs, hash, undefined, undo)),
    isUsed: (hash) => read("isUsed", () => [...data.entries.values()].some(({ blobs }) => blobs.includes(hash))),
    dropStream: (stream) =>
      write("dropStream", () => {
        for (const [id, { logged }] of [...data.entries]) {
          if (logged.stream === stream) setIn(data.entries, id, undefined, undo);
        }
        for (const [key, one] of [...data.snapshots]) {
          if (one.stream === stream) setIn(data.snapshots, key, undefined, undo);
        }
        setIn(data.heads, stream, undefined, undo);
        setIn(data.erased, stream, undefined, undo);
      }),
    headsOf: (stream) => read("headsOf", () => data.heads.get(stream) ?? new Map()),
    allHeads: () => read("allHeads", () => data.heads),
    blob: (hash) => read("blob", () => data.blobs.get(hash)),
    setting: (name) => read("setting", () => data.settings.get(name)),
    putSetting: (name, value) => write("putSetting", () => setIn(data.settings, name, value, undo)),
    snapshot: (stream, name) => read("snapshot", () => data.snapshots.get(`${name}|${stream}`)),
    snapshots: (name) => read("snapshots", () => [...data.snapshots.values()].filter((one) => one.name === name)),
    putSnapshot: (one) => write("putSnapshot", () => setIn(data.snapshots, `${one.name}|${one.stream}`, one, undo)),
  };
}

/** What is kept is not changed through a reference left outside. */
function frozen<T>(value: T): T {
  if (typeof value === "object" && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const inner of Object.values(value)) frozen(inner);
  }
  return value;
}
