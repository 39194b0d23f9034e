/** A picture kept as it came, named by its hash and its true type. Refuses to decode: it must work where decoding fails. */
import type { KeptOriginal, WhyOriginal } from "../../core/record/photo.js";
import { pictureType } from "./sniff.js";

/** SHA-256, lower-case hex. */
export async function sha256(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** The bytes as they came, with the reason. `claimed` is the type the sender gave, used only when the bytes don't tell. */
export async function original(
  bytes: Uint8Array<ArrayBuffer>,
  why: WhyOriginal,
  claimed: string,
): Promise<KeptOriginal> {
  const type = pictureType(bytes) ?? (claimed === "" ? "application/octet-stream" : claimed);
  return { kind: "original", why, type, bytes, hash: await sha256(bytes) };
}
