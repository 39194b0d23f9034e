/**
 * A store over any engine that runs transactions: checks before, the rules of keeping inside, news after.
 * Refuses to know what the engine keeps things in.
 */
import { fail, ok, type Problem, problem, type Result } from "../terms/index.js";
import { appendBelieving, appendOn, Mistaken } from "./append-on.js";
import { Beliefs } from "./beliefs.js";
import { faultsOfDraft } from "./check-draft.js";
import type { Act, Draft, Entry, Logged } from "./contract.js";
import type { Engine, Mode, WideShelf } from "./engine.js";
import { byCode, idText, isDemo, isEntry } from "./identity.js";
import { ledgerOf } from "./ledger.js";
import type { Head, Touched } from "./shelf.js";
import type { Change, EraseWhat, Heads, KeptBytes, Received, Store } from "./store.js";
import { markOf, summaries } from "./summaries-on.js";

/** Fetched before a transaction begins. */
const rarely = () => import("./rarely-on.js");
const erases = ({ kind }: Draft): boolean => kind === "erase";

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
    const erase = drafts.some(erases) ? (await rarely()).eraseNamed : undefined;
    const keep = () => changing("keep", (shelf, touched) => appendOn(shelf, drafts, blobs, spare, touched, erase));
    const belief = blobs.length === 0 ? beliefs.about(drafts) : undefined;
    const isNew = engine.newNonces(drafts.map(({ nonce }) => nonce));
    const result = belief
      ? await changing("keep", (shelf, touched) => appendBelieving(shelf, drafts, belief, isNew, touched)).catch(
          again(keep),
        )
      : await keep();
    if (!result.ok) return result;
    if (!erase) beliefs.learn(result.value.belief);
    return ok(result.value.entries);
  }

  async function receive(entries: readonly Logged[], blobs: readonly KeptBytes[] = []): Promise<Result<Received>> {
    const { faultsIn, receiveOn } = await rarely();
    const problems = [...faultsIn(entries), ...(await wrongHashes(engine, blobs))];
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
    if (ids.length === 0) return ok([]);
    // What an entry had replaced is read off its body, of whatever kind.
    const { ALL_KINDS, draftErase } = await rarely();
    return append(draftErase(act, { ledger: ledgerOf(entries, { kinds: ALL_KINDS }) }, ids));
  }

  async function removeStreams(streams: readonly string[]): Promise<Result<number>> {
    const own = streams.filter((stream) => !isDemo(stream));
    if (own.length > 0) return fail(...own.map((stream) => problem("record.not-demo", {}, { stream })));
    const { removeOn } = await rarely();
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
