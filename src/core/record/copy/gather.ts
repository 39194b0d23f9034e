/**
 * Gathers from a store what goes into a copy: which lines, which blobs, how they are shared out. Reads only. The demo
 * is never part of it.
 */
import { fail, ok, type Problem, problem, type Result } from "../../terms/index.js";
import { blobsOf } from "../blobs-of.js";
import type { BlobHash, Logged } from "../contract.js";
import { isDemo, isEntry, planStream } from "../identity.js";
import { journalSize, writeJournal } from "../journal.js";
import type { Store } from "../store.js";
import { compareStamps, FIRST_STAMP } from "../time.js";
import { holdsCameraTags } from "./camera-tags.js";
import { countsOf } from "./claim.js";
import { type CopyMade, movedBelow } from "./copy-made.js";
import { type LackingBlob, lackingIn } from "./lacking.js";
import { COPY_LIMITS, type CopyLimits, isFrozen } from "./layout.js";
import type { CopyCounts, Holds } from "./manifest.js";
import { inEveryVolume, type SizedBlob, shareOut, tooMuchInEvery } from "./volumes.js";

export type CopyWhat =
  | { readonly holds: "everything" }
  | { readonly holds: "new"; readonly since: CopyMade }
  | { readonly holds: "car"; readonly car: string; readonly visits: readonly string[] }
  | { readonly holds: "visit"; readonly car: string; readonly visit: string };

export interface CopyPlan {
  readonly holds: Holds;
  /** Of `new`: when the copy before was made. */
  readonly since?: number;
  readonly journal: string;
  readonly counts: CopyCounts;
  readonly frozen: readonly SizedBlob[];
  /** Pictures and sounds, volume by volume; one volume at least. */
  readonly volumes: readonly (readonly SizedBlob[])[];
  /** Kept as they came, and not handed to others: they may say where they were taken. */
  readonly keptBack: readonly BlobHash[];
  /** Kept as they came, and in this copy. */
  readonly asTheyCame: number;
  /** In the copy before. */
  readonly before: number;
  /** Named by its entries, and in none of its volumes nor the copy before. */
  readonly lacking: readonly LackingBlob[];
  /** To be remembered once the copy was handed on. */
  readonly streams: CopyMade["streams"];
}

/** Streams of what is wanted; those that hold nothing are passed over. */
async function streamsOf(store: Store, what: CopyWhat): Promise<Result<readonly string[]>> {
  if (what.holds === "visit") return ok([what.car, what.visit, planStream(what.visit)]);
  if (what.holds === "car") return ok([what.car, ...what.visits.flatMap((visit) => [visit, planStream(visit)])]);
  const streams = await store.streams();
  return streams.ok ? ok(streams.value.filter((stream) => !isDemo(stream))) : streams;
}

interface Gathering {
  readonly log: Logged[];
  /** Wanted, in the order they are named. */
  readonly wanted: Set<BlobHash>;
  /** Named by entries of the copy before. */
  readonly earlier: Set<BlobHash>;
  readonly streams: Record<string, CopyMade["streams"][string]>;
}

async function gatherStream(store: Store, stream: string, what: CopyWhat, into: Gathering): Promise<Problem[]> {
  // Heads first: what is kept between the two readings is then in the copy and counts as new all the same.
  const heads = await store.heads(stream);
  const entries = heads.ok ? await store.entries(stream) : heads;
  if (!heads.ok || !entries.ok) return [...(entries.ok ? [] : entries.problems)];
  let latest = FIRST_STAMP;
  for (const { at } of entries.value) if (compareStamps(at, latest) > 0) latest = at;
  const sum = `${entries.value.length} ${latest.wall} ${latest.count}`;
  if (entries.value.length > 0) into.streams[stream] = { ...heads.value, sum };
  const before = what.holds === "new" ? what.since.streams[stream] : undefined;
  const lacked = before?.lacking ?? [];
  const gone = await store.missingBlobs(lacked);
  if (!gone.ok) return [...gone.problems];
  const came = new Set(lacked.filter((hash) => !gone.value.includes(hash)));
  if (before?.mark === heads.value.mark && before.lacking !== undefined && came.size === 0) {
    into.streams[stream] = { ...before, lacking: lacked };
    return [];
  }
  const isOld = ({ writer, seq }: Logged): boolean =>
    before?.lacking !== undefined && !movedBelow(before.mark, heads.value.mark) && seq <= (before.last[writer] ?? 0);
  for (const logged of entries.value) {
    into.log.push(logged);
    for (const hash of blobsOf(logged)) (isOld(logged) && !came.has(hash) ? into.earlier : into.wanted).add(hash);
  }
  return [];
}

/** What of each stream a copy does not hold, for the next one to look for. */
function withLacking({ log, streams }: Gathering, lacks: ReadonlySet<BlobHash>): CopyMade["streams"] {
  const lacking = new Map<string, Set<BlobHash>>();
  for (const logged of log)
    for (const hash of blobsOf(logged))
      if (lacks.has(hash)) lacking.set(logged.stream, (lacking.get(logged.stream) ?? new Set()).add(hash));
  return Object.fromEntries(
    Object.entries(streams).map(([stream, one]) => [
      stream,
      { ...one, lacking: one.lacking ?? [...(lacking.get(stream) ?? [])] },
    ]),
  );
}

/** Pictures whose entries say that they were kept as they came. */
function keptAsTheyCame(log: readonly Logged[]): ReadonlySet<BlobHash> {
  const found = new Set<BlobHash>();
  for (const logged of log) {
    if (!isEntry(logged) || logged.kind !== "picture") continue;
    const body = logged.body as { readonly blob?: unknown; readonly thumb?: unknown };
    if (typeof body.blob === "string" && body.thumb === undefined) found.add(body.blob);
  }
  return found;
}

/**
 * Codes: those of the store, files.nothing-new, and files.too-much {what, atMost} for what `openCopy` would refuse to
 * read. `tell` hears how many blobs were read.
 */
export async function gatherCopy(
  store: Store,
  what: CopyWhat,
  tell: (done: number, all: number) => void = () => undefined,
  limits: CopyLimits = COPY_LIMITS,
): Promise<Result<CopyPlan>> {
  const streams = await streamsOf(store, what);
  if (!streams.ok) return streams;
  const gathering: Gathering = { log: [], wanted: new Set(), earlier: new Set(), streams: {} };
  for (const stream of streams.value) {
    const problems = await gatherStream(store, stream, what, gathering);
    if (problems.length > 0) return fail(...problems);
  }
  const { log, wanted, earlier } = gathering;
  if (log.length === 0) return fail(problem("files.nothing-new"));
  const journalBytes = journalSize(log, limits.journalBytes);
  if (journalBytes === undefined)
    return fail(problem("files.too-much", {}, { what: "journal", atMost: limits.journalBytes }));
  const asTheyCame = keptAsTheyCame(log);
  const isForOthers = what.holds === "car" || what.holds === "visit";
  const frozen: SizedBlob[] = [];
  const media: SizedBlob[] = [];
  const keptBack: BlobHash[] = [];
  const lacks = new Map<BlobHash, LackingBlob["why"]>();
  let [tagged, read, before] = [0, 0, 0];
  const all = [...new Set([...wanted, ...earlier])];
  for (const hash of all) {
    const blob = await store.blob(hash);
    if (!blob.ok) return blob;
    tell(++read, all.length);
    if (!blob.value) {
      lacks.set(hash, "not-here");
      continue;
    }
    const { type, bytes } = blob.value;
    if (bytes.byteLength > limits.fileBytes) {
      lacks.set(hash, "too-large");
      continue;
    }
    const sized = { hash, type, bytes: bytes.byteLength };
    if (isFrozen(type)) frozen.push(sized);
    else if (!wanted.has(hash)) before++;
    else if (!type.startsWith("image/") && !asTheyCame.has(hash)) media.push(sized);
    else if (!asTheyCame.has(hash) && !holdsCameraTags(bytes)) media.push(sized);
    else if (isForOthers) keptBack.push(hash);
    else {
      tagged++;
      media.push(sized);
    }
  }
  const inAll = inEveryVolume(journalBytes, frozen);
  const much = tooMuchInEvery(inAll, frozen, media, limits);
  if (much) return fail(much);
  const lacking = await lackingIn(store, log, lacks);
  if (!lacking.ok) return lacking;
  return ok({
    holds: what.holds,
    ...(what.holds === "new" ? { since: what.since.at } : {}),
    journal: writeJournal(log),
    counts: countsOf(log),
    frozen,
    volumes: shareOut(media, inAll, limits),
    keptBack,
    asTheyCame: tagged,
    before,
    lacking: lacking.value,
    streams: withLacking(gathering, new Set(lacks.keys())),
  });
}
