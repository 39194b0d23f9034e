/**
 * What a phone remembers of the copy handed on last: when, how far every stream had come, and what it did not hold.
 * Never part of the record.
 */
import type { BlobHash } from "../contract.js";
import { count, fields, hash, isPlainObject, listOf, text } from "../shape.js";

interface StreamMade {
  /** Text of the heads at that time: tells whether anything changed at all. */
  readonly mark: string;
  /** Last number per writer: what comes after is new. */
  readonly last: Readonly<Record<string, number>>;
  /** Number of entries and latest stamp, as the summaries tell them. */
  readonly sum: string;
  /** Blobs its entries name and the copy did not hold; absent where nobody looked: then any may be among them. */
  readonly lacking?: readonly BlobHash[];
}

export interface CopyMade {
  readonly at: number;
  readonly streams: Readonly<Record<string, StreamMade>>;
}

/** The setting it is kept under. */
export const COPY_MADE = "files.copy-made";

const stream = fields(
  {
    mark: text,
    last: (value) => (isPlainObject(value) ? undefined : { path: "", expected: "an object" }),
    sum: text,
  },
  { lacking: listOf(hash) },
);
const made = fields({
  at: count,
  streams: (value) => (isPlainObject(value) ? undefined : { path: "", expected: "an object" }),
});

/** What was remembered; undefined when nothing was, or it is of another shape: then everything counts as new. */
export function readCopyMade(value: unknown): CopyMade | undefined {
  if (made(value, "") || !isPlainObject(value)) return undefined;
  const streams = Object.values(value["streams"] as object);
  // Held to its shape here.
  return streams.every((one) => !stream(one, "")) ? (value as unknown as CopyMade) : undefined;
}

/** Whether something happened below the heads: a gap filled, a stub, a fork. A mark is one `writer last moved` a line. */
export function movedBelow(before: string, now: string): boolean {
  const moved = (mark: string) =>
    new Map(
      mark
        .split("\n")
        .map((line) => line.split(" "))
        .map(([writer = "", , below = "0"]) => [writer, below]),
    );
  const old = moved(before);
  return [...moved(now)].some(([writer, below]) => below !== (old.get(writer) ?? "0"));
}
