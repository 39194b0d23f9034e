/** Randomness and hashing for the record. Refuses to know what they are for. */
import type { Act, BlobHash, Stamp } from "../../core/record/index.js";

/** Nonces made since this page was loaded and not taken into use yet. */
const unused = new Set<string>();

/** 128 random bits as 22 letters and digits. */
export function makeNonce(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  const nonce = btoa(String.fromCharCode(...bytes))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "");
  unused.add(nonce);
  return nonce;
}

/**
 * Takes nonces into use. Those made in this page's life and never taken before cannot have been kept before; drafts
 * from an earlier life, or handed over again, may have been.
 */
export function takeNonces(nonces: readonly string[]): (nonce: string) => boolean {
  const fresh = new Set(nonces.filter((nonce) => unused.delete(nonce)));
  return (nonce) => fresh.has(nonce);
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
