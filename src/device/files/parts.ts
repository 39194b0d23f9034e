/**
 * Bytes that arrive in pieces, given to the browser in lumps, which lays them on the disk: a volume need not fit into
 * the memory of a page. Refuses to know what they are.
 */

/** Own choice: large enough that a volume has few hundred lumps. */
const LUMP = 4_000_000;

export class Parts {
  #lumps: Blob[] = [];
  #waiting: Uint8Array<ArrayBuffer>[] = [];
  #bytes = 0;
  length = 0;

  push(piece: Uint8Array): void {
    // Encoders use their buffers again; and the types do not say that none of them is shared between threads.
    this.#waiting.push(new Uint8Array(piece));
    this.#bytes += piece.byteLength;
    this.length += piece.byteLength;
    if (this.#bytes >= LUMP) this.#lump();
  }

  #lump(): void {
    this.#lumps.push(new Blob(this.#waiting));
    this.#waiting = [];
    this.#bytes = 0;
  }

  blob(): Blob {
    this.#lump();
    return new Blob(this.#lumps);
  }

  file(name: string, type: string): File {
    this.#lump();
    return new File(this.#lumps, name, { type });
  }
}

/** SHA-256 in small hex digits. */
export async function sha256(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** Pieces as one. */
export function joined(pieces: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const all = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.byteLength, 0));
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.byteLength;
  }
  return all;
}
