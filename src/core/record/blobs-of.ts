/** Which blobs an entry refers to. Refuses to know kinds: what a newer version refers to counts too. */
import type { BlobHash, Logged } from "./contract.js";
import { isEntry } from "./identity.js";

const HASH = /^[0-9a-f]{64}$/;

/** Every text in the body that could name a blob; a false one only keeps a blob longer. */
export function blobsOf(logged: Logged): readonly BlobHash[] {
  const found = new Set<BlobHash>();
  if (isEntry(logged)) collect(logged.body, found);
  return [...found];
}

function collect(value: unknown, found: Set<BlobHash>): void {
  if (typeof value === "string") {
    if (value.length === 64 && HASH.test(value)) found.add(value);
  } else if (typeof value === "object" && value !== null) {
    for (const inner of Object.values(value)) collect(inner, found);
  }
}
