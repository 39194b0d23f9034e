/** What a copy says it holds: made while writing, checked while reading. Refuses to believe it: the bytes are counted. */
import { fail, ok, problem, type Result } from "../../terms/index.js";
import { count, dateTime, fields, hash, isPlainObject, listOf, matches, name, oneOf, plain, text } from "../shape.js";
import { LACKING_WHAT, LACKING_WHY, type LackingBlob } from "./lacking.js";
import { COPY_FORMAT, fileName, hashIn, LACKING_FORMAT, MANIFEST } from "./layout.js";

export const HOLDS = ["everything", "new", "car", "visit"] as const;
export type Holds = (typeof HOLDS)[number];

/** How much of the record the journal of a copy holds. */
export interface CopyCounts {
  readonly cars: number;
  readonly visits: number;
  readonly entries: number;
  /** What is left of erased entries. */
  readonly stubs: number;
}

export interface CopyFile {
  readonly name: string;
  readonly type: string;
  readonly bytes: number;
}

export interface CopyManifest {
  readonly format: typeof COPY_FORMAT | typeof LACKING_FORMAT;
  readonly made: string;
  /** Version of the app that wrote it. */
  readonly app: string;
  readonly holds: Holds;
  /** Of `new`: when the copy before was made. */
  readonly since?: string;
  /** Volumes of one copy share it. */
  readonly set: string;
  readonly volume: number;
  readonly of: number;
  readonly counts: CopyCounts;
  readonly journal: { readonly bytes: number; readonly sha256: string };
  readonly files: readonly CopyFile[];
  /** Named by the journal and in another volume, or in the copy before. */
  readonly elsewhere: number;
  /** Pictures left out because the camera's own data could not be taken out of them. */
  readonly keptBack: number;
  /** Named by the journal and in no part of the copy; always there in format 2, and only there. */
  readonly lacking?: readonly LackingBlob[];
}

const FORMAT = /^leadlamp-copy\/(\d{1,6})$/;
const VERSION = 2;
/** The first that tells what is lacking. */
const LACKING_FROM = 2;

const day = matches("a date", /^\d{4}-\d{2}-\d{2}$/);

const check = fields(
  {
    format: matches(COPY_FORMAT, FORMAT),
    made: dateTime,
    app: text,
    holds: oneOf(HOLDS),
    set: name,
    volume: count,
    of: count,
    counts: fields({ cars: count, visits: count, entries: count, stubs: count }),
    journal: fields({ bytes: count, sha256: hash }),
    files: listOf(
      fields({
        name: matches("a file named by its hash", /^[a-z]+\/[0-9a-f]{64}\.[a-z0-9]+$/),
        type: name,
        bytes: count,
      }),
    ),
    elsewhere: count,
    keptBack: count,
  },
  {
    since: dateTime,
    lacking: listOf(
      fields(
        {
          hash,
          stream: name,
          of: text,
          what: oneOf(LACKING_WHAT),
          name: text,
          at: dateTime,
          why: oneOf(LACKING_WHY),
        },
        { on: day },
      ),
      1,
    ),
  },
);

export const writeManifest = (manifest: CopyManifest): string => `${JSON.stringify(manifest, null, 1)}\n`;

const foreign = (expected: string) => fail(problem("files.foreign", { file: MANIFEST }, { expected }));
const wrong = (path: string, expected: string) =>
  fail(problem("files.manifest", { file: MANIFEST, path }, { expected }));

/** What cannot all be true of one copy, whatever its journal holds. */
function ownFault({
  holds,
  since,
  keptBack,
}: CopyManifest): { readonly path: string; readonly expected: string } | undefined {
  if ((holds === "new") !== (since !== undefined))
    return { path: "manifest.since", expected: "to be there with new only" };
  // One's own copy leaves nothing back.
  const isOwn = holds === "everything" || holds === "new";
  return isOwn && keptBack > 0 ? { path: "manifest.keptBack", expected: `0 with ${holds}` } : undefined;
}

/** Codes: files.foreign, files.newer {version}, files.manifest (where.path says where). */
export function readManifest(written: string): Result<CopyManifest> {
  let parsed: unknown;
  try {
    parsed = JSON.parse(written);
  } catch {
    return foreign("JSON");
  }
  const format: unknown = isPlainObject(parsed) ? parsed["format"] : undefined;
  const version = typeof format === "string" ? FORMAT.exec(format)?.[1] : undefined;
  if (version === undefined) return foreign(COPY_FORMAT);
  if (Number(version) > VERSION) return fail(problem("files.newer", { file: MANIFEST }, { version: Number(version) }));
  const fault = plain(parsed, "manifest") ?? check(parsed, "manifest");
  if (fault) return wrong(fault.path, fault.expected);
  // Held to its shape just above.
  const manifest = parsed as CopyManifest;
  if ((manifest.lacking !== undefined) !== Number(version) >= LACKING_FROM)
    return wrong("manifest.lacking", `to be there in ${LACKING_FORMAT} only`);
  if (manifest.volume < 1 || manifest.volume > manifest.of) return wrong("manifest.volume", `1 to ${manifest.of}`);
  const hashes = new Set(manifest.files.map((file) => hashIn(file.name)));
  if (hashes.has(undefined) || hashes.size < manifest.files.length)
    return wrong("manifest.files", "every file once, named by its hash");
  const odd = manifest.files.findIndex((file) => fileName(hashIn(file.name) ?? "", file.type) !== file.name);
  if (odd >= 0) return wrong(`manifest.files[${odd}].type`, "a type that goes with its folder and ending");
  const claim = ownFault(manifest);
  if (claim) return wrong(claim.path, claim.expected);
  return ok(manifest);
}
