/**
 * Files under a passphrase, in the open age format (age-encryption.org/v1): locked and unlocked piece by piece. The
 * library is fetched when a passphrase is first given. Refuses to know what is inside.
 */
import { Decrypter, Encrypter } from "age-encryption";
import { fail, ok, problem, type Result } from "../../core/terms/index.js";
import { SCRYPT_AT_MOST } from "./lock-header.js";
import { Parts } from "./parts.js";

/**
 * Work of turning the passphrase into a key, as power of two: 128 MB of memory and about a second on a desk, a few on a
 * phone. The figure is that of the OWASP cheat sheet on storing passwords (N = 2^17, r = 8, p = 1); from memory.
 */
const WORK = 17;

/** What was pushed comes out locked in `parts`. */
export function locking(passphrase: string, parts: Parts, work = WORK) {
  const lock = new Encrypter();
  lock.setPassphrase(passphrase);
  lock.setScryptWorkFactor(Math.min(work, SCRYPT_AT_MOST));
  const through = new TransformStream<Uint8Array, Uint8Array>();
  const writer = through.writable.getWriter();
  const done = lock.encrypt(through.readable).then(async (locked) => {
    const reader = locked.getReader();
    for (let next = await reader.read(); !next.done; next = await reader.read()) parts.push(next.value);
  });
  // Waited for at the end; until then a failure shows at the next write.
  done.catch(() => undefined);
  return {
    write: (piece: Uint8Array): Promise<void> => writer.write(piece),
    async end(): Promise<void> {
      await writer.close();
      await done;
    },
  };
}

/** What lies in a locked file. Codes: files.wrong-passphrase, files.damaged, files.too-large. */
export async function unlocked(
  file: Blob,
  passphrase: string,
  atMost: number,
  tell: (done: number) => void,
): Promise<Result<Blob>> {
  const key = new Decrypter();
  key.addPassphrase(passphrase);
  let open: ReadableStream<Uint8Array>;
  try {
    open = await key.decrypt(file.stream());
  } catch (error) {
    const isWrong = error instanceof Error && error.message.startsWith("no identity matched");
    return fail(problem(isWrong ? "files.wrong-passphrase" : "files.damaged"));
  }
  const parts = new Parts();
  const reader = open.getReader();
  try {
    for (let next = await reader.read(); !next.done; next = await reader.read()) {
      parts.push(next.value);
      tell(parts.length);
      if (parts.length > atMost) {
        await reader.cancel();
        return fail(problem("files.too-large", {}, { what: "unpacked", atMost }));
      }
    }
  } catch {
    // Each piece carries its own proof, the last one that it is the last.
    return fail(problem("files.damaged"));
  }
  return ok(parts.blob());
}
