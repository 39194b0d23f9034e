/**
 * Writes a copy as a plain ZIP archive, entry after entry, locked on the way out where there is a passphrase. Text is
 * squeezed, pictures and sounds are squeezed already. Refuses to know what the entries are.
 */
import { Zip, ZipDeflate, ZipPassThrough } from "fflate";
import type { Packing } from "../../core/record/files.js";
import { joined, Parts, sha256 } from "./parts.js";

const isText = (name: string): boolean => /\.(?:txt|jsonl?)$/.test(name);

/** ZIP writes years from 1980 to 2099 only; a phone whose clock says otherwise must be able to keep a copy all the same. */
function moment(now: Date): Date {
  const year = now.getFullYear();
  return year >= 1980 && year <= 2099 ? now : new Date(1980, 0, 1);
}

const encoder = new TextEncoder();
const encoded = (piece: string | Uint8Array<ArrayBuffer>): Uint8Array<ArrayBuffer> =>
  typeof piece === "string" ? encoder.encode(piece) : piece;

/** Begins an archive. `work`: see lock.ts; tests take less. */
export function startPack(name: string, passphrase?: string, now = new Date(), work?: number): Packing<File> {
  const parts = new Parts();
  let waiting: Uint8Array[] = [];
  let broke: Error | undefined;
  const zip = new Zip((error, piece) => {
    if (error) broke = error;
    else waiting.push(piece);
  });
  const lock = passphrase ? import("./lock.js").then(({ locking }) => locking(passphrase, parts, work)) : undefined;
  const flush = async (): Promise<void> => {
    if (broke) throw broke;
    const pieces = waiting;
    waiting = [];
    const out = await lock;
    for (const piece of pieces) {
      if (out) await out.write(piece);
      else parts.push(piece);
    }
  };
  return {
    async add(entry, pieces) {
      const file = isText(entry) ? new ZipDeflate(entry, { level: 6 }) : new ZipPassThrough(entry);
      file.mtime = moment(now);
      zip.add(file);
      const written: Uint8Array<ArrayBuffer>[] = [];
      for (const piece of pieces) {
        const bytes = encoded(piece);
        written.push(bytes);
        file.push(bytes);
        await flush();
      }
      file.push(new Uint8Array(), true);
      await flush();
      const [only] = written;
      const all = written.length === 1 && only ? only : joined(written);
      return { bytes: all.byteLength, sha256: await sha256(all) };
    },
    async end() {
      zip.end();
      await flush();
      const out = await lock;
      if (!out) return parts.file(name, "application/zip");
      await out.end();
      // No type of its own is registered for it.
      return parts.file(name, "application/octet-stream");
    },
    stop: () => zip.terminate(),
  };
}
