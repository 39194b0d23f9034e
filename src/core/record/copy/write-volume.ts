/** Writes one volume of a copy into whatever packs it. Refuses to know ZIP and passphrases. */
import { fail, ok, problem, type Result } from "../../terms/index.js";
import type { Packing } from "../files.js";
import type { Store } from "../store.js";
import type { CopyPlan } from "./gather.js";
import {
  COPY_FORMAT,
  COPY_LIMITS,
  type CopyLimits,
  fileName,
  JOURNAL,
  LACKING_FORMAT,
  MANIFEST,
  README,
} from "./layout.js";
import { type CopyFile, type CopyManifest, writeManifest } from "./manifest.js";
import { readmeOf } from "./readme.js";

/** What the one who asks knows about a copy: moment, name of the set, version of the app. */
export interface CopyStamp {
  readonly made: string;
  readonly set: string;
  readonly app: string;
}

/** Whole text in pieces, so that no single one has to be squeezed at once. Pieces end with a line. */
function* pieces(journal: string): Generator<string> {
  const AT_LEAST = 250_000;
  for (let at = 0; at < journal.length; ) {
    const end = journal.indexOf("\n", Math.min(at + AT_LEAST, journal.length - 1));
    const to = end < 0 ? journal.length : end + 1;
    yield journal.slice(at, to);
    at = to;
  }
}

/**
 * Writes volume `index` (from 0). A blob whose bytes do not match its name any more ends it, files.rotten {hash}; so does
 * one that went since the plan was made, files.changed: it may have been erased, and its words stand in the plan.
 */
export async function writeVolume<Packed>(
  store: Store,
  plan: CopyPlan,
  index: number,
  stamp: CopyStamp,
  packing: Packing<Packed>,
  tell: (done: number, all: number) => void = () => undefined,
  limits: CopyLimits = COPY_LIMITS,
): Promise<Result<Packed>> {
  const media = plan.volumes[index] ?? [];
  const { holds, counts, since, keptBack, lacking } = plan;
  const volume = { volume: index + 1, of: plan.volumes.length };
  await packing.add(README, [readmeOf({ holds, made: stamp.made, lacking, ...volume })]);
  const { bytes, sha256 } = await packing.add(JOURNAL, pieces(plan.journal));
  const files: CopyFile[] = [];
  const blobs = [...plan.frozen, ...media];
  for (const [done, { hash }] of blobs.entries()) {
    const blob = await store.blob(hash);
    if (!blob.ok) return blob;
    tell(done, blobs.length);
    if (!blob.value) return fail(problem("files.changed"));
    const name = fileName(hash, blob.value.type);
    const written = await packing.add(name, [blob.value.bytes]);
    if (written.sha256 !== hash) return fail(problem("files.rotten", { file: name }, { hash }));
    files.push({ name, type: blob.value.type, bytes: written.bytes });
  }
  const shared = plan.volumes.reduce((sum, one) => sum + one.length, 0);
  const manifest: CopyManifest = {
    format: lacking.length > 0 ? LACKING_FORMAT : COPY_FORMAT,
    ...stamp,
    holds,
    ...(since === undefined ? {} : { since: new Date(since).toISOString() }),
    ...volume,
    counts,
    journal: { bytes, sha256 },
    files,
    elsewhere: shared - media.length + plan.before,
    keptBack: keptBack.length,
    ...(lacking.length > 0 ? { lacking } : {}),
  };
  const contents = new TextEncoder().encode(writeManifest(manifest));
  if (contents.byteLength > limits.manifestBytes)
    return fail(problem("files.too-much", {}, { what: "contents", atMost: limits.manifestBytes }));
  await packing.add(MANIFEST, [contents]);
  return ok(await packing.end());
}
