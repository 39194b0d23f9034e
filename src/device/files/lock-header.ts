/** Reads the head of a locked file, which is plain text, before any work is done for it. Refuses to unlock. */
import { type Problem, problem } from "../../core/terms/index.js";

const MAGIC = "age-encryption.org/v1\n";
const ARMOUR = "-----BEGIN AGE ENCRYPTED FILE-----";
/** Most work taken on: 2^18 needs 256 MB. A file may ask for far more, and would end the page. */
export const SCRYPT_AT_MOST = 18;
const HEAD = 512;

/** `plain`: no locked file · `locked`: unlock it with a passphrase · else why that cannot be. */
export async function lockOf(file: Blob): Promise<"plain" | "locked" | Problem> {
  const head = new TextDecoder("latin1").decode(await file.slice(0, HEAD).arrayBuffer());
  if (head.startsWith(ARMOUR)) return problem("files.other-lock");
  if (!head.startsWith(MAGIC)) return "plain";
  const work = /^-> scrypt [A-Za-z0-9+/]+ ([1-9]\d{0,3})\n/.exec(head.slice(MAGIC.length))?.[1];
  if (work === undefined) return problem("files.other-lock");
  return Number(work) > SCRYPT_AT_MOST
    ? problem("files.too-heavy", {}, { atMost: SCRYPT_AT_MOST, asked: Number(work) })
    : "locked";
}
