/** Shares pictures and sounds out among volumes, in order, none fuller than there is room for. Pure arithmetic. */
import { type Problem, problem } from "../../terms/index.js";
import type { BlobHash } from "../contract.js";
import { archiveAtMost, COPY_LIMITS, type CopyLimits } from "./layout.js";

export interface SizedBlob {
  readonly hash: BlobHash;
  readonly type: string;
  readonly bytes: number;
}

/** What ZIP adds to a file: both headers, the descriptor, its name twice; and its line in the manifest. */
const AROUND_FILE = 500;

/**
 * Lists of what goes into each volume; one empty one where there is nothing. `inAll` is what lies in every volume.
 * Something larger than a volume gets one of its own.
 */
export function shareOut(
  media: readonly SizedBlob[],
  inAll: number,
  limits: CopyLimits = COPY_LIMITS,
): readonly (readonly SizedBlob[])[] {
  const room = limits.volumeBytes - inAll;
  const volumes: SizedBlob[][] = [[]];
  let used = 0;
  for (const blob of media) {
    const takes = blob.bytes + AROUND_FILE;
    const last = volumes.at(-1) ?? [];
    const isFull = used + takes > room || last.length >= limits.files - AROUND_FILES;
    if (isFull && last.length > 0) {
      volumes.push([blob]);
      used = takes;
    } else {
      last.push(blob);
      used += takes;
    }
  }
  return volumes;
}

/** Room left in the count of files for manifest, page, journal and what lies in every volume. */
const AROUND_FILES = 10_000;

/** What a volume takes beside its pictures and sounds. */
export const inEveryVolume = (journalBytes: number, frozen: readonly SizedBlob[]): number =>
  journalBytes + frozen.reduce((sum, { bytes }) => sum + bytes + AROUND_FILE, 0) + 100_000;

/** Page, journal and list of contents. */
const OWN_FILES = 3;

/** What lies in every volume leaves room for each of the others, or a volume would be refused where it is read. */
export function tooMuchInEvery(
  inAll: number,
  frozen: readonly SizedBlob[],
  media: readonly SizedBlob[],
  limits: CopyLimits,
): Problem | undefined {
  const largest = media.reduce((most, { bytes }) => Math.max(most, bytes), 0);
  const atMost = archiveAtMost(limits);
  return inAll + largest + AROUND_FILE > atMost || frozen.length > Math.min(AROUND_FILES, limits.files) - OWN_FILES
    ? problem("files.too-much", {}, { what: "frozen", atMost })
    : undefined;
}
