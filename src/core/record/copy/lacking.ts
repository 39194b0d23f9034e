/**
 * What an entry of a copy names and the copy does not hold, told so that a person knows it: of which visit, what it is,
 * when it was taken. Not what was kept back from others, nor what lies in another volume.
 */
import { ok, type Result } from "../../terms/index.js";
import { blobsOf } from "../blobs-of.js";
import type { BlobHash, Logged } from "../contract.js";
import { isEntry, streamKind } from "../identity.js";
import type { Store } from "../store.js";
import type { Summary } from "../summary.js";

export const LACKING_WHAT = ["picture", "small-picture", "sound", "frozen", "other"] as const;
/** `not-here`: its bytes were not on the phone that wrote the copy · `too-large`: larger than a copy may hold. */
export const LACKING_WHY = ["not-here", "too-large"] as const;

export interface LackingBlob {
  readonly hash: BlobHash;
  readonly stream: string;
  /** The car's name; the stream's own where no car is known of it. */
  readonly of: string;
  /** Of a visit: when the car was looked at, as a date. */
  readonly on?: string;
  readonly what: (typeof LACKING_WHAT)[number];
  /** What it shows or the file it came as; empty where nobody said. */
  readonly name: string;
  /** When its entry was made, ISO 8601. */
  readonly at: string;
  readonly why: (typeof LACKING_WHY)[number];
}

const KINDS: Readonly<Record<string, LackingBlob["what"]>> = { picture: "picture", sound: "sound" };
const FROZEN = /^(?:visit\.(?:opened|sheet-added|closed|judged-again)|house\.sheet)$/;

function whatOf(logged: Logged, hash: BlobHash): Pick<LackingBlob, "what" | "name"> {
  if (!isEntry(logged)) return { what: "other", name: "" };
  const body = (typeof logged.body === "object" && logged.body !== null ? logged.body : {}) as {
    readonly thumb?: unknown;
    readonly name?: unknown;
  };
  const what = body.thumb === hash ? "small-picture" : (KINDS[logged.kind] ?? "other");
  return {
    what: FROZEN.test(logged.kind) ? "frozen" : what,
    name: typeof body.name === "string" ? body.name : "",
  };
}

/** A car by its name, a visit by its car and day, a plan by its visit. */
function namesOf(summaries: readonly Summary[]): (stream: string) => Pick<LackingBlob, "of" | "on"> {
  const byStream = new Map(summaries.map((one) => [one.stream, one]));
  const named = (stream: string): Pick<LackingBlob, "of" | "on"> => {
    const one = byStream.get(streamKind(stream) === "plan" ? stream.replace(/^plan:/, "visit:") : stream);
    if (one?.of === "car" && one.names.length > 0) return { of: one.names.join(" / ") };
    return one?.of === "visit" ? { ...named(one.car), on: one.on.slice(0, 10) } : { of: stream };
  };
  return named;
}

const isoOf = (wall: number): string => {
  const date = new Date(wall);
  // A phone whose clock was wild must be able to keep a copy all the same.
  return Number.isNaN(date.getTime()) || date.getTime() < 0 || date.getUTCFullYear() > 9999
    ? new Date(0).toISOString()
    : date.toISOString();
};

/** Describes each by the entry that names it first. Codes: those of the store. */
export async function lackingIn(
  store: Store,
  log: readonly Logged[],
  why: ReadonlyMap<BlobHash, LackingBlob["why"]>,
): Promise<Result<readonly LackingBlob[]>> {
  if (why.size === 0) return ok([]);
  const summaries = await store.summaries();
  if (!summaries.ok) return summaries;
  const named = namesOf(summaries.value);
  const found = new Map<BlobHash, LackingBlob>();
  for (const logged of log)
    for (const hash of blobsOf(logged)) {
      const cause = why.get(hash);
      if (cause === undefined || found.has(hash)) continue;
      const { stream, at } = logged;
      found.set(hash, { hash, stream, ...named(stream), ...whatOf(logged, hash), at: isoOf(at.wall), why: cause });
    }
  return ok([...found.values()]);
}
