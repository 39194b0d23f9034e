/**
 * How a copy is laid out: names of its files by hash and type, and how much one may hold. Refuses to know ZIP, which
 * is only the envelope.
 */
import type { BlobHash } from "../contract.js";

/** The format of a copy that holds all it names; an older version of the app reads it. */
export const COPY_FORMAT = "leadlamp-copy/1";
/** The same with a list of what it lacks: an older version could not tell of that, and says that it is too old. */
export const LACKING_FORMAT = "leadlamp-copy/2";
export const MANIFEST = "manifest.json";
export const README = "README.txt";
export const JOURNAL = "journal.jsonl";

/**
 * What a copy may hold: the writer keeps to it, the reader refuses what is beyond. Own choices, each with its reason. `volumeBytes`: what file systems of cards, mail and messengers still take.
 * `files`: plain ZIP counts to 65,535. `unpackedBytes`: twice a volume, for text that was squeezed. `journalBytes`: some
 * 500,000 entries. `fileBytes`: a picture kept as it came from the largest sensor, or an hour of sound. `ratio`: lines
 * of a journal shrink to a twentieth; what shrinks to a two-hundredth is no journal. `smallBytes`: below that no ratio
 * is asked for.
 */
export const COPY_LIMITS = {
  volumeBytes: 1_000_000_000,
  files: 60_000,
  unpackedBytes: 2_000_000_000,
  journalBytes: 256_000_000,
  fileBytes: 256_000_000,
  manifestBytes: 32_000_000,
  ratio: 200,
  smallBytes: 1_000_000,
} as const;
export type CopyLimits = { readonly [Limit in keyof typeof COPY_LIMITS]: number };

/** The largest archive read: what ZIP adds is reckoned with while writing, this much is left for what was not. */
export const archiveAtMost = ({ volumeBytes }: CopyLimits): number => volumeBytes * 1.1;

/** Endings people's programs know; a type that is not here ends in `bin` and is named in the manifest all the same. */
const ENDINGS: ReadonlyMap<string, string> = new Map([
  ["image/jpeg", "jpg"],
  ["image/png", "png"],
  ["image/gif", "gif"],
  ["image/webp", "webp"],
  ["image/avif", "avif"],
  ["image/heic", "heic"],
  ["image/bmp", "bmp"],
  ["audio/webm", "webm"],
  ["audio/mp4", "m4a"],
  ["audio/ogg", "ogg"],
  ["audio/wav", "wav"],
  ["application/json", "json"],
]);

const FILE_NAME = /^(?:pictures|sounds|frozen|other)\/([0-9a-f]{64})\.[a-z0-9]{2,5}$/;

/** Whether a blob opens a visit (sheets, limits, judgements): such ones are small and lie in every volume. */
export const isFrozen = (type: string): boolean => type === "application/json";

/** The name of a blob in a copy. */
export function fileName(hash: BlobHash, type: string): string {
  const [plain = ""] = type.split(";");
  const folder = plain.startsWith("image/")
    ? "pictures"
    : /^(?:audio|video)\//.test(plain)
      ? "sounds"
      : isFrozen(plain)
        ? "frozen"
        : "other";
  return `${folder}/${hash}.${ENDINGS.get(plain) ?? "bin"}`;
}

/** The hash a file of a copy is named by; undefined for any other name, whatever it leads to. */
export const hashIn = (name: string): BlobHash | undefined => FILE_NAME.exec(name)?.[1];

/** Whether a file may stand in a copy at all. */
export const isCopyName = (name: string): boolean =>
  name === MANIFEST || name === README || name === JOURNAL || hashIn(name) !== undefined;
