/**
 * A store over any engine that runs transactions: checks before, the rules of keeping inside, news after.
 * Refuses to know what the engine keeps things in.
 */
import { fail, ok, type Problem, problem, type Result } from "../terms/index.js";
import { Beliefs } from "./beliefs.js";
import { faultsOf, faultsOfDraft } from "./check-logged.js";
import type { Act, BlobHash, Draft, Entry, Logged } from "./contract.js";
import { byCode, idText, isDemo, isEntry } from "./identity.js";
import {
  appendBelieving,
  appendOn,
  type Head,
  Mistaken,
  receiveOn,
  removeOn,
  type Shelf,
  type Touched,
} from "./keeping.js";
import { FOLD_VERSION, ledgerOf } from "./ledger.js";
import type { Change, EraseWhat, Heads, Health, KeptBytes, Received, Snapshot, Store } from "./store.js";
import { type Summary, summarise } from "./summary.js";
import { draftErase } from "./undo.js";

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

const SUMMARY = "summary";

export function storeOn(engine: Engine): Store {
  const listeners = new Set<(changes: readonly Change[]) => void>();
  const told = (changes: readonly Change[]): void => {
    for (const listen of listeners) listen(changes);
  };
  const beliefs = new Beliefs();
  engine.hear((changes) => {
    beliefs.forget(changes.map(({ stream }) => stream));
    told(changes);
  });

  /** Runs work that may change streams, then tells of it. */
  async function changing<T>(mode: Mode, work: (shelf: WideShelf, touched: Touched) => Promise<T>): Promise<Result<T>> {
    let touched: Touched = new Map();
    const result = await engine.run(mode, (shelf) => {
      // A transaction tried again starts from nothing.
      touched = new Map();
      return work(shelf, touched);
    });
    beliefs.forget(touched.keys());
    if (result.ok && touched.size > 0) {
      const changes = [...touched].map(([stream, whole]) => ({ stream, whole, from: "here" as const }));
      engine.tell(changes.map((change) => ({ ...change, from: "elsewhere" as const })));
      told(changes);
    }
    return result;
  }

  async function append(drafts: readonly Draft[], blobs: readonly KeptBytes[] = []): Promise<Result<readonly Entry[]>> {
    const faults = drafts.flatMap(faultsOfDraft);
    if (faults.length > 0) throw new Error(`A draft that is none: ${JSON.stringify(faults)}`);
    const wrong = await wrongHashes(engine, blobs);
    if (wrong.length > 0) return fail(...wrong);
    const spare = engine.nonce();
    const keep = () => changing("keep", (shelf, touched) => appendOn(shelf, drafts, blobs, spare, touched));
    const belief = blobs.length === 0 ? beliefs.about(drafts) : undefined;
    const isNew = engine.newNonces(drafts.map(({ nonce }) => nonce));
    const result = belief
      ? await changing("keep", (shelf, touched) => appendBelieving(shelf, drafts, belief, isNew, touched)).catch(
          again(keep),
        )
      : await keep();
    if (!result.ok) return result;
    if (drafts.every(({ kind }) => kind !== "erase")) beliefs.learn(result.value.belief);
    return ok(result.value.entries);
  }

  async function receive(entries: readonly Logged[], blobs: readonly KeptBytes[] = []): Promise<Result<Received>> {
    const problems = [...entries.flatMap((logged) => faultsOf(logged)), ...(await wrongHashes(engine, blobs))];
    if (problems.length > 0) return fail(...problems);
    const spare = engine.nonce();
    const result = await changing("keep", (shelf, touched) => receiveOn(shelf, entries, blobs, spare, touched));
    if (result.ok && result.value.newWriter !== undefined) beliefs.forgetAll();
    return result;
  }

  async function eraseForGood(act: Act, what: EraseWhat): Promise<Result<readonly Entry[]>> {
    const streams = "stream" in what ? [what.stream] : [...new Set(what.ids.map((id) => id.slice(0, id.indexOf("/"))))];
    const read = await engine.run("read", (shelf) => Promise.all(streams.map((stream) => shelf.ofStream(stream))));
    if (!read.ok) return read;
    const entries = read.value.flat();
    const ids = "stream" in what ? entries.filter((one) => isEntry(one) && one.kind !== "erase").map(idText) : what.ids;
    return ids.length === 0 ? ok([]) : append(draftErase(act, { ledger: ledgerOf(entries) }, ids));
  }

  async function removeStreams(streams: readonly string[]): Promise<Result<number>> {
    const own = streams.filter((stream) => !isDemo(stream));
    if (own.length > 0) return fail(...own.map((stream) => problem("record.not-demo", {}, { stream })));
    return changing("remove", (shelf, touched) => removeOn(shelf, streams, touched));
  }

  async function snapshot(stream: string, name: string, foldVersion: number): Promise<Result<unknown>> {
    return engine.run("read", async (shelf) => {
      const [found, heads] = await Promise.all([shelf.snapshot(stream, name), shelf.headsOf(stream)]);
      return found && found.foldVersion === foldVersion && found.mark === markOf(heads) ? found.data : undefined;
    });
  }

  return {
    health: engine.health,
    watchHealth: engine.watchHealth,
    ready: engine.ready,
    async probe() {
      await engine.run("read", (shelf) => shelf.writer());
      return engine.health();
    },
    close: engine.close,
    watch(listen) {
      listeners.add(listen);
      return () => listeners.delete(listen);
    },
    async writer() {
      const spare = engine.nonce();
      return engine.run("keep", async (shelf) => {
        const writer = await shelf.writer();
        if (writer === undefined) shelf.setWriter(spare);
        return writer ?? spare;
      });
    },
    append,
    receive,
    eraseForGood,
    removeStreams,
    entries: (stream, after) =>
      engine.run("read", (shelf) => (after ? entriesAfter(shelf, stream, after) : shelf.ofStream(stream))),
    heads: (stream) => engine.run("read", async (shelf) => headsFrom(await shelf.headsOf(stream))),
    streams: () => engine.run("read", async (shelf) => [...(await shelf.allHeads()).keys()].sort(byCode)),
    summaries: () => summaries(engine),
    blob: (hash) => engine.run("read", (shelf) => shelf.blob(hash)),
    missingBlobs: (hashes) =>
      engine.run("read", async (shelf) => {
        const have = await Promise.all(hashes.map((hash) => shelf.hasBlob(hash)));
        return hashes.filter((_, i) => !have[i]);
      }),
    setting: (name) => engine.run("read", (shelf) => shelf.setting(name)),
    keepSetting: (name, value) => putting(engine, "setting", (shelf) => shelf.putSetting(name, value)),
    snapshot,
    keepSnapshot: (one) => putting(engine, "spare", (shelf) => shelf.putSnapshot(one)),
  };
}

/** After a mistaken belief the careful way; anything else is thrown on. */
function again<T>(keep: () => Promise<T>): (error: unknown) => Promise<T> {
  return (error) => {
    if (error instanceof Mistaken) return keep();
    throw error;
  };
}

function putting(engine: Engine, mode: Mode, put: (shelf: WideShelf) => void): Promise<Result<true>> {
  return engine.run(mode, async (shelf): Promise<true> => {
    put(shelf);
    return true;
  });
}

async function wrongHashes(engine: Engine, blobs: readonly KeptBytes[]): Promise<readonly Problem[]> {
  const hashes = await Promise.all(blobs.map(({ bytes }) => engine.hashOf(bytes)));
  const wrong = blobs.filter(({ hash }, i) => hash !== hashes[i]);
  return wrong.map(({ hash }) => problem("record.blob-hash", {}, { hash }));
}

async function entriesAfter(shelf: WideShelf, stream: string, after: Heads): Promise<readonly Logged[]> {
  const heads = [...(await shelf.headsOf(stream))].sort(([a], [b]) => byCode(a, b));
  const newer = await Promise.all(
    heads.map(([writer, { last }]) => {
      const from = (after.last[writer] ?? 0) + 1;
      return from > last ? [] : shelf.between(stream, writer, from, last);
    }),
  );
  return newer.flat();
}

function headsFrom(heads: ReadonlyMap<string, Head>): Heads {
  return { last: Object.fromEntries([...heads].map(([writer, { last }]) => [writer, last])), mark: markOf(heads) };
}

/** One text for how far every writer has come, and for what happened below. */
function markOf(heads: ReadonlyMap<string, Head>): string {
  const parts = [...heads].map(([writer, { last, moved }]) => `${writer} ${last} ${moved}`);
  return parts.sort(byCode).join("\n");
}

/** Streams whose entries are read and summed up in one go: short transactions, and work done is work kept. */
const AT_A_TIME = 5;

/** Summaries as kept where still true; the others made anew and kept for next time. */
async function summaries(engine: Engine): Promise<Result<readonly Summary[]>> {
  const read = await engine.run("read", async (shelf) => {
    const [heads, kept] = await Promise.all([shelf.allHeads(), shelf.snapshots(SUMMARY)]);
    const byStream = new Map(kept.map((one) => [one.stream, one]));
    return [...heads].map(([stream, of]) => ({ stream, kept: byStream.get(stream), mark: markOf(of) }));
  });
  if (!read.ok) return read;
  const list: Summary[] = [];
  const stale: string[] = [];
  for (const { stream, kept, mark } of read.value) {
    // Only this function keeps snapshots under this name.
    if (kept?.mark === mark && kept.foldVersion === FOLD_VERSION) list.push(kept.data as Summary);
    else stale.push(stream);
  }
  for (let at = 0; at < stale.length; at += AT_A_TIME) {
    const made = await summedUp(engine, stale.slice(at, at + AT_A_TIME));
    if (!made.ok) return made;
    list.push(...made.value);
  }
  return ok(list.sort((a, b) => byCode(a.stream, b.stream)));
}

async function summedUp(engine: Engine, streams: readonly string[]): Promise<Result<readonly Summary[]>> {
  const read = await engine.run("read", (shelf) =>
    Promise.all(
      streams.map(async (stream) => {
        const [heads, entries] = await Promise.all([shelf.headsOf(stream), shelf.ofStream(stream)]);
        return { stream, mark: markOf(heads), entries };
      }),
    ),
  );
  if (!read.ok) return read;
  // A stream removed since has nothing left to sum up.
  const present = read.value.filter(({ entries }) => entries.length > 0);
  const made = present.map(({ stream, mark, entries }) => ({ stream, mark, data: summarise(stream, entries) }));
  // Losing this costs time at the next launch, nothing else.
  await engine.run("spare", async (shelf) => {
    for (const one of made) shelf.putSnapshot({ ...one, name: SUMMARY, foldVersion: FOLD_VERSION });
  });
  return ok(made.map(({ data }) => data));
}
