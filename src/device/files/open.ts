/**
 * Opens a copy and checks all of it before anything is taken in: lock, directory, names, lengths, hashes, every line.
 * Changes nothing; what is wrong is told with where it stands.
 */
import type { OpenedCopy } from "../../core/record/files.js";
import {
  archiveAtMost,
  COPY_LIMITS,
  type CopyLimits,
  type CopyManifest,
  claimFault,
  hashIn,
  isCopyName,
  JOURNAL,
  MANIFEST,
  notForHere,
  readJournal,
  readManifest,
} from "../../core/record/index.js";
import { fail, ok, type Problem, problem, type Result } from "../../core/terms/index.js";
import { lockOf } from "./lock-header.js";
import { sha256 } from "./parts.js";
import { readDirectory, unpack, type ZipEntry } from "./unzip.js";

type Tell = (done: number, all: number) => void;
type Unpack = (entry: ZipEntry, atMost: number) => Promise<Result<Uint8Array<ArrayBuffer>>>;

/** A locked file is a little longer than what lies in it. */
const LONGER = 1.01;

/** The archive itself, out of its lock. */
async function unlockedFile(
  file: Blob,
  passphrase: string | undefined,
  limits: CopyLimits,
  tell: Tell,
): Promise<Result<Blob>> {
  const atMost = archiveAtMost(limits);
  if (file.size > atMost * LONGER) return fail(problem("files.too-large", {}, { what: "archive", atMost }));
  if (file.size === 0) return fail(problem("files.foreign"));
  const lock = await lockOf(file);
  if (lock === "plain") return ok(file);
  if (lock !== "locked") return fail(lock);
  if (!passphrase) return fail(problem("files.wants-passphrase"));
  const { unlocked } = await import("./lock.js");
  return unlocked(file, passphrase, atMost, (done) => tell(done, file.size));
}

/** Entries by name: only names a copy has, each once. */
function byName(entries: readonly ZipEntry[]): Result<ReadonlyMap<string, ZipEntry>> {
  const named = new Map<string, ZipEntry>();
  for (const entry of entries) {
    const { name } = entry;
    if (named.has(name)) return fail(problem("files.twice", { file: name }, { name }));
    named.set(name, entry);
  }
  if (!named.has(MANIFEST)) return fail(problem("files.foreign", {}, { expected: MANIFEST }));
  const odd = entries.find(({ name }) => !isCopyName(name));
  return odd ? fail(problem("files.bad-name", { file: odd.name }, { name: odd.name })) : ok(named);
}

/** The archive holds just what its manifest says, and its record can be read. */
async function readRecord(
  named: ReadonlyMap<string, ZipEntry>,
  unpacked: Unpack,
  limits: CopyLimits,
): Promise<Result<Pick<OpenedCopy, "manifest" | "log">>> {
  const text = async (name: string, atMost: number): Promise<Result<Uint8Array<ArrayBuffer>>> => {
    const entry = named.get(name);
    return entry ? unpacked(entry, atMost) : fail(problem("files.missing", { file: name }, { name }));
  };
  const written = await text(MANIFEST, limits.manifestBytes);
  if (!written.ok) return written;
  const read = readManifest(new TextDecoder().decode(written.value));
  if (!read.ok) return read;
  const manifest = read.value;
  const absent = manifest.files.find(({ name }) => !named.has(name));
  if (absent) return fail(problem("files.missing", { file: absent.name }, { name: absent.name }));
  const listed = new Set(manifest.files.map(({ name }) => name));
  const more = [...named.keys()].find((name) => hashIn(name) !== undefined && !listed.has(name));
  if (more !== undefined) return fail(problem("files.bad-name", { file: more }, { name: more }));
  const journal = await text(JOURNAL, limits.journalBytes);
  if (!journal.ok) return journal;
  if ((await sha256(journal.value)) !== manifest.journal.sha256)
    return fail(problem("files.damaged", { file: JOURNAL }));
  const log = readJournal(new TextDecoder().decode(journal.value));
  if (!log.ok) return fail(...log.problems.map((one): Problem => ({ ...one, where: { ...one.where, file: JOURNAL } })));
  if (log.value.length !== manifest.counts.entries) return fail(problem("files.damaged", { file: JOURNAL }));
  const refused = notForHere(log.value) ?? claimFault(manifest, log.value);
  return refused ? fail(refused) : ok({ manifest, log: log.value });
}

/** Every other file is unpacked once, and is what its name says. */
async function checkFiles(
  named: ReadonlyMap<string, ZipEntry>,
  { files }: CopyManifest,
  unpacked: Unpack,
  limits: CopyLimits,
  tell: Tell,
): Promise<Problem | undefined> {
  const listed = new Map(files.map((file) => [file.name, file]));
  let done = 0;
  for (const [name, entry] of named) {
    if (name === MANIFEST || name === JOURNAL) continue;
    const bytes = await unpacked(entry, limits.fileBytes);
    if (!bytes.ok) return bytes.problems[0];
    const hash = hashIn(name);
    if (
      hash !== undefined &&
      (bytes.value.byteLength !== listed.get(name)?.bytes || (await sha256(bytes.value)) !== hash)
    )
      return problem("files.damaged", { file: name });
    tell(++done, named.size);
  }
  return undefined;
}

const isGone = (error: unknown): boolean =>
  error instanceof Error && (error.name === "NotReadableError" || error.name === "NotFoundError");

/** See `Packer.open`. */
export async function openCopy(
  file: Blob,
  passphrase?: string,
  tell: Tell = () => undefined,
  limits: CopyLimits = COPY_LIMITS,
): Promise<Result<OpenedCopy>> {
  try {
    return await opened(file, passphrase, tell, limits);
  } catch (error) {
    // The phone took the file away, or another program wrote over it meanwhile.
    if (isGone(error)) return fail(problem("files.gone"));
    throw error;
  }
}

async function opened(
  file: Blob,
  passphrase: string | undefined,
  tell: Tell,
  limits: CopyLimits,
): Promise<Result<OpenedCopy>> {
  const archive = await unlockedFile(file, passphrase, limits, tell);
  if (!archive.ok) return archive;
  const directory = await readDirectory(archive.value, limits);
  const entries = directory.ok ? byName(directory.value) : directory;
  if (!entries.ok) return entries;
  const named = entries.value;
  let out = 0;
  const unpacked: Unpack = async (entry, atMost) => {
    const bytes = await unpack(archive.value, entry, atMost, limits);
    if (bytes.ok) out += bytes.value.byteLength;
    return out > limits.unpackedBytes
      ? fail(problem("files.too-large", {}, { what: "unpacked", atMost: limits.unpackedBytes }))
      : bytes;
  };
  const record = await readRecord(named, unpacked, limits);
  if (!record.ok) return record;
  const { manifest, log } = record.value;
  const wrong = await checkFiles(named, manifest, unpacked, limits, tell);
  if (wrong) return fail(wrong);
  const byHash = new Map(manifest.files.map((one) => [hashIn(one.name) ?? "", one]));
  return ok({
    manifest,
    log,
    async blob(hash) {
      const listed = byHash.get(hash);
      const entry = listed && named.get(listed.name);
      if (!entry) throw new Error(`${hash} is not in this copy`);
      const bytes = await unpack(archive.value, entry, limits.fileBytes, limits);
      if (!bytes.ok) throw new Error(`${listed.name} changed while it was read`);
      return { hash, type: listed.type, bytes: bytes.value };
    },
    close: () => undefined,
  });
}
