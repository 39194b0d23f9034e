/** Randomness and hashing for the record. Refuses to know what they are for. */
import type { Act, BlobHash, Stamp } from "../../core/record/index.js";

/** 128 random bits as 22 letters and digits. */
export function makeNonce(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return btoa(String.fromCharCode(...bytes))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "");
}

/** One act of a person: everything drafted with it shares its stamp and is undone together. */
export function makeAct(by: string, at: Stamp): Act {
  return { id: makeNonce(), by, at, nonce: makeNonce };
}

/** SHA-256 in small hex digits. */
export async function hashOf(bytes: Uint8Array<ArrayBuffer>): Promise<BlobHash> {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("");
}
