/**
 * Reads a ZIP archive by its directory, strictly: what is written twice, overlaps, lies about its length or is cut off
 * is refused. (The library's own reader goes by what comes first in the file and takes a cut one for a shorter one.)
 * Layout after APPNOTE.TXT 6.3. Refuses to know what the entries are for.
 */
import { Inflate } from "fflate";
import { fail, ok, type Problem, problem, type Result } from "../../core/terms/index.js";
import { joined } from "./parts.js";

export interface ZipEntry {
  readonly name: string;
  readonly squeezed: boolean;
  readonly crc: number;
  /** Bytes in the archive, and what it says they become. */
  readonly packed: number;
  readonly bytes: number;
  /** Where its own header begins. */
  readonly at: number;
}

export interface UnzipLimits {
  readonly files: number;
  readonly unpackedBytes: number;
  readonly ratio: number;
  readonly smallBytes: number;
}

const END = 0x06054b50;
const DIRECTORY = 0x02014b50;
const LOCAL = 0x04034b50;
const END_LENGTH = 22;
const LONGEST_COMMENT = 65_535;
const DIRECTORY_LENGTH = 46;
const LOCAL_LENGTH = 30;
/** Longest name and extra fields taken in the directory; own choice, far above what a copy has. */
const PER_ENTRY = 1_000;
const ZIP64 = 0xffff_ffff;

const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
export const bytesAt = async (file: Blob, from: number, to: number): Promise<Uint8Array<ArrayBuffer>> =>
  new Uint8Array(await file.slice(from, to).arrayBuffer());

const damaged = (file?: string): Problem => problem("files.damaged", file === undefined ? {} : { file });

/** Where the directory lies. */
async function findDirectory(file: Blob) {
  const begins = viewOf(await bytesAt(file, 0, 4));
  if (begins.byteLength < 4 || begins.getUint32(0, true) !== LOCAL) return fail(problem("files.foreign"));
  const tail = await bytesAt(file, Math.max(0, file.size - END_LENGTH - LONGEST_COMMENT), file.size);
  const view = viewOf(tail);
  for (let at = tail.byteLength - END_LENGTH; at >= 0; at--) {
    if (view.getUint32(at, true) !== END) continue;
    const ends = at + END_LENGTH + view.getUint16(at + 20, true) === tail.byteLength;
    if (!ends) continue;
    const [count, length, from] = [
      view.getUint16(at + 10, true),
      view.getUint32(at + 12, true),
      view.getUint32(at + 16, true),
    ];
    const end = file.size - tail.byteLength + at;
    return ok({ count, from, to: from + length, end });
  }
  return fail(problem("files.cut-short"));
}

/** Every entry in order of where it lies. Codes: files.foreign, files.cut-short, files.damaged, files.too-large. */
export async function readDirectory(file: Blob, limits: UnzipLimits): Promise<Result<readonly ZipEntry[]>> {
  const found = await findDirectory(file);
  if (!found.ok) return found;
  const { count, from, to, end } = found.value;
  if (count > limits.files) return fail(problem("files.too-large", {}, { what: "files", atMost: limits.files }));
  if (to !== end || to - from > count * PER_ENTRY) return fail(damaged());
  const directory = await bytesAt(file, from, to);
  const view = viewOf(directory);
  const entries: ZipEntry[] = [];
  let at = 0;
  while (at < directory.byteLength) {
    if (at + DIRECTORY_LENGTH > directory.byteLength || view.getUint32(at, true) !== DIRECTORY) return fail(damaged());
    const [flags, method] = [view.getUint16(at + 8, true), view.getUint16(at + 10, true)];
    const [packed, bytes, local] = [20, 24, 42].map((by) => view.getUint32(at + by, true)) as [number, number, number];
    const [nameLength, extra, comment] = [28, 30, 32].map((by) => view.getUint16(at + by, true)) as [
      number,
      number,
      number,
    ];
    const next = at + DIRECTORY_LENGTH + nameLength + extra + comment;
    if (next > directory.byteLength) return fail(damaged());
    const name = new TextDecoder().decode(
      directory.subarray(at + DIRECTORY_LENGTH, at + DIRECTORY_LENGTH + nameLength),
    );
    if ((flags & 1) !== 0) return fail(problem("files.other-lock", { file: name }));
    if (method !== 0 && method !== 8) return fail(damaged(name));
    if ([packed, bytes, local].includes(ZIP64))
      return fail(problem("files.too-large", {}, { what: "unpacked", atMost: limits.unpackedBytes }));
    entries.push({ name, squeezed: method === 8, crc: view.getUint32(at + 16, true), packed, bytes, at: local });
    at = next;
  }
  if (entries.length !== count) return fail(damaged());
  entries.sort((a, b) => a.at - b.at);
  // Entries that share bytes would make much out of little.
  for (const [i, entry] of entries.entries())
    if (entry.at + LOCAL_LENGTH + entry.packed > (entries[i + 1]?.at ?? from)) return fail(damaged(entry.name));
  return ok(entries);
}

const CRC_TABLE = Array.from({ length: 256 }, (_, byte) => {
  let crc = byte;
  for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? 0xedb88320 ^ (crc >>> 1) : crc >>> 1;
  return crc >>> 0;
});
function crc32(bytes: Uint8Array): number {
  let crc = 0xffff_ffff;
  for (const byte of bytes) crc = (CRC_TABLE[(crc ^ byte) & 0xff] ?? 0) ^ (crc >>> 8);
  return (crc ^ 0xffff_ffff) >>> 0;
}

/** A piece of sixteen thousand becomes seventeen million bytes at worst, before anybody can count them. */
const PIECE = 16_000;

/**
 * One entry unpacked. What really comes out is counted: `atMost` bytes, and no more out of little than `limits` allow.
 * Codes: files.damaged, files.too-large, files.bomb.
 */
export async function unpack(
  file: Blob,
  entry: ZipEntry,
  atMost: number,
  limits: UnzipLimits,
): Promise<Result<Uint8Array<ArrayBuffer>>> {
  const { name } = entry;
  const tooLarge = fail(problem("files.too-large", { file: name }, { what: "file", atMost }));
  if (entry.bytes > atMost || entry.packed > atMost) return tooLarge;
  const head = viewOf(await bytesAt(file, entry.at, entry.at + LOCAL_LENGTH));
  if (head.byteLength < LOCAL_LENGTH || head.getUint32(0, true) !== LOCAL) return fail(damaged(name));
  const named = entry.at + LOCAL_LENGTH;
  const from = named + head.getUint16(26, true) + head.getUint16(28, true);
  const local = new TextDecoder().decode(await bytesAt(file, named, named + head.getUint16(26, true)));
  if (local !== name || head.getUint16(8, true) !== (entry.squeezed ? 8 : 0)) return fail(damaged(name));
  const packed = await bytesAt(file, from, from + entry.packed);
  if (packed.byteLength !== entry.packed) return fail(problem("files.cut-short", { file: name }));
  const bytes = entry.squeezed ? inflate(packed, atMost, limits) : packed;
  if (bytes === "large") return tooLarge;
  if (bytes === "bomb") return fail(problem("files.bomb", { file: name }, { ratio: limits.ratio }));
  if (bytes === undefined || bytes.byteLength !== entry.bytes || crc32(bytes) !== entry.crc) return fail(damaged(name));
  return ok(bytes);
}

function inflate(
  packed: Uint8Array,
  atMost: number,
  limits: UnzipLimits,
): Uint8Array<ArrayBuffer> | "large" | "bomb" | undefined {
  const pieces: Uint8Array[] = [];
  let length = 0;
  let ended = false;
  const stream = new Inflate((piece, final) => {
    length += piece.byteLength;
    if (length <= atMost) pieces.push(piece);
    ended ||= final;
  });
  try {
    for (let at = 0; at < packed.byteLength; at += PIECE) {
      stream.push(packed.subarray(at, at + PIECE), at + PIECE >= packed.byteLength);
      if (length > limits.smallBytes && length > limits.ratio * Math.min(packed.byteLength, at + PIECE)) return "bomb";
      if (length > atMost) return "large";
    }
  } catch {
    return undefined;
  }
  return ended ? joined(pieces) : undefined;
}
