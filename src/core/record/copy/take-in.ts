/** Reading a copy in: what it would do, told first; then doing it. Merging only: nothing that is here is lost by it. */
import { fail, ok, type Problem, problem, type Result } from "../../terms/index.js";
import { ALL_KINDS } from "../all-kinds.js";
import { blobsOf } from "../blobs-of.js";
import type { BlobHash, Entry, Logged } from "../contract.js";
import type { OpenedCopy } from "../files.js";
import { isDemo, isEntry, streamKind } from "../identity.js";
import { whyUnknown } from "../kinds.js";
import { groupBy } from "../shelf.js";
import type { KeptBytes, Received, Store } from "../store.js";
import { type Compared, summed, weighLogs } from "./compare.js";
import { hashIn } from "./layout.js";

interface NewAndKnown {
  readonly fresh: number;
  readonly known: number;
}

/** What reading a copy in would do. */
export interface DryRun extends Compared {
  readonly cars: NewAndKnown;
  readonly visits: NewAndKnown;
  /** Pictures, sounds and what was frozen: whose bytes would be kept, and whose are here already. */
  readonly blobs: NewAndKnown;
  /** Entries of kinds or versions this app does not know: kept as they came. */
  readonly unknown: number;
  /** Names of the cars in the copy, new ones first. */
  readonly names: readonly { readonly name: string; readonly fresh: boolean }[];
  /** Nothing of one's own is on this phone: what was erased after the copy was made is not known here. */
  readonly blank: boolean;
}

const hashesOf = ({ manifest }: OpenedCopy): readonly BlobHash[] =>
  manifest.files.flatMap(({ name }) => hashIn(name) ?? []);

function nameIn(log: readonly Logged[]): string {
  const named = log.filter(
    (one): one is Entry => isEntry(one) && (one.kind === "car.begun" || one.kind === "car.named"),
  );
  const body: unknown = named.at(-1)?.body;
  return typeof body === "object" && body !== null && "name" in body && typeof body.name === "string" ? body.name : "";
}

interface Weighing {
  readonly streams: readonly string[];
  readonly compared: readonly Compared[];
  /** Not here, and named by something that has a body afterwards: bytes nothing refers to are not kept (RC46). */
  readonly wanted: readonly BlobHash[];
  readonly known: number;
}

/** What would come of a copy: told beforehand and done by the same reckoning. */
async function weigh(store: Store, copy: OpenedCopy): Promise<Result<Weighing>> {
  const hashes = hashesOf(copy);
  const [streams, missing] = await Promise.all([store.streams(), store.missingBlobs(hashes)]);
  if (!streams.ok) return streams;
  if (!missing.ok) return missing;
  const named = new Set<BlobHash>();
  const groups = groupBy(copy.log, ({ stream }) => stream);
  const compared: Compared[] = [];
  for (const stream of new Set([...groups.keys(), ...streams.value])) {
    const kept = await store.entries(stream);
    if (!kept.ok) return kept;
    const log = groups.get(stream);
    const { compared: one, bodies } = weighLogs(kept.value, log ?? []);
    if (log) compared.push(one);
    for (const entry of bodies) for (const hash of blobsOf(entry)) named.add(hash);
  }
  const wanted = missing.value.filter((hash) => named.has(hash));
  return ok({ streams: streams.value, compared, wanted, known: hashes.length - missing.value.length });
}

/** Compares a copy with what is here. Codes: those of the store. */
export async function dryRun(store: Store, copy: OpenedCopy): Promise<Result<DryRun>> {
  const weighed = await weigh(store, copy);
  if (!weighed.ok) return weighed;
  const { streams, compared, wanted, known: there } = weighed.value;
  const here = new Set(streams);
  const groups = groupBy(copy.log, ({ stream }) => stream);
  const of = (kind: string): NewAndKnown => {
    const all = [...groups.keys()].filter((stream) => streamKind(stream) === kind);
    const known = all.filter((stream) => here.has(stream)).length;
    return { fresh: all.length - known, known };
  };
  const names = [...groups]
    .filter(([stream]) => streamKind(stream) === "car")
    .map(([stream, log]) => ({ name: nameIn(log), fresh: !here.has(stream) }))
    .filter(({ name }) => name !== "");
  return ok({
    ...summed(compared),
    cars: of("car"),
    visits: of("visit"),
    blobs: { fresh: wanted.length, known: there },
    unknown: copy.log.filter((one) => isEntry(one) && whyUnknown(one, ALL_KINDS) !== undefined).length,
    names: [...names.filter(({ fresh }) => fresh), ...names.filter(({ fresh }) => !fresh)],
    blank: streams.every((stream) => isDemo(stream) || stream === "house"),
  });
}

/** What is in a copy and may never be taken in: entries of the demo. */
export function notForHere(log: readonly Logged[]): Problem | undefined {
  const demo = log.find(({ stream }) => isDemo(stream));
  return demo && problem("files.demo", {}, { stream: demo.stream });
}

export interface TakenIn {
  readonly received: Received;
  readonly blobs: number;
  /** Bytes that did not fit: the lines are all here, and the same file may be read in again. */
  readonly left: number;
  readonly problem?: Problem;
}

/** So much in one transaction beside the lines; own choice: a visit's pictures fit, and a phone's memory is not filled. */
const AT_ONCE = 32_000_000;

/**
 * Takes a copy in. Lines and the first bytes go into one transaction; further bytes follow in turn, because a volume is
 * larger than a phone's memory. Fails with nothing changed when the first transaction does.
 */
export async function takeIn(
  store: Store,
  copy: OpenedCopy,
  tell: (done: number, all: number) => void = () => undefined,
): Promise<Result<TakenIn>> {
  const demo = notForHere(copy.log);
  if (demo) return fail(demo);
  const weighed = await weigh(store, copy);
  if (!weighed.ok) return weighed;
  const all = weighed.value.wanted;
  const wanted = [...all];
  const batch = async (): Promise<KeptBytes[]> => {
    const taken: KeptBytes[] = [];
    for (let bytes = 0; wanted.length > 0 && bytes < AT_ONCE; ) {
      const blob = await copy.blob(wanted.shift() ?? "");
      taken.push(blob);
      bytes += blob.bytes.byteLength;
    }
    return taken;
  };
  const first = await batch();
  const received = await store.receive(copy.log, first);
  if (!received.ok) return received;
  let done = first.length;
  tell(done, all.length);
  while (wanted.length > 0) {
    const more = await batch();
    const kept = await store.receive([], more);
    if (!kept.ok)
      return ok({
        received: received.value,
        blobs: done,
        left: all.length - done,
        ...(kept.problems[0] ? { problem: kept.problems[0] } : {}),
      });
    done += more.length;
    tell(done, all.length);
  }
  return ok({ received: received.value, blobs: done, left: 0 });
}
