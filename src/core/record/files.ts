/**
 * What the app asks of whoever picks files and hands them on: names, types and bytes. Refuses to know share
 * sheets, downloads and inputs; those are in device/files.
 */
import type { Result } from "../terms/index.js";
import type { BlobHash, Logged } from "./contract.js";
import type { CopyManifest } from "./copy/manifest.js";
import type { KeptBytes } from "./store.js";

/** A file to be handed on, whole and ready. */
export interface FileContent {
  readonly name: string;
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/**
 * What became of it: `shared` given to another app · `downloaded` laid among the downloads · `stopped` the person
 * closed the share sheet · `tap-again` the tap was too long ago for the browser: offer the button once more.
 */
export type Handed = "shared" | "downloaded" | "stopped" | "tap-again";

/** What became of a text: `copied` to the clipboard · `failed` neither could be: it is marked and copied by hand. */
export type TextHanded = "shared" | "copied" | "stopped" | "failed";

/** A file that is built already, so that the tap itself only hands it over. */
export interface ReadyFile {
  /** Call first thing in the tap's handler. Rejects only with an error of the device itself. */
  hand(): Promise<Handed>;
}

/** What to ask a person for. */
export interface PickWish {
  /** Accepted types as in an HTML file input: `image/*`, `.yaml,.json`. Use `image/*` for pictures: iPhones then convert HEIC. */
  readonly accept: string;
  readonly several?: boolean;
  /** Straight to the camera at the back instead of the album. */
  readonly camera?: boolean;
}

/** `Picked` is whatever the device gives for a file. */
export interface FileDoor<Picked> {
  /** Call inside a tap. Empty when the person picked nothing. */
  pick(wish: PickWish): Promise<readonly Picked[]>;
  ready(content: FileContent | Picked): ReadyFile;
  /** Hands a text to the share sheet, else to the clipboard. Call first thing in the tap's handler. */
  share(text: string): Promise<TextHanded>;
  copy(text: string): Promise<TextHanded>;
}

/** One archive being written, entry after entry, in the order of the calls. */
export interface Packing<Packed> {
  /** Adds a file out of its pieces; how long it is and the SHA-256 of what was written. */
  add(
    name: string,
    pieces: Iterable<string | Uint8Array<ArrayBuffer>>,
  ): Promise<{ readonly bytes: number; readonly sha256: string }>;
  /** Ends it; the file, ready to be handed on. */
  end(): Promise<Packed>;
  /** Gives up. Safe to call at any time. */
  stop(): void;
}

/** A copy that was found whole: every byte was unpacked, counted and held against its hash. */
export interface OpenedCopy {
  readonly manifest: CopyManifest;
  readonly log: readonly Logged[];
  /** One blob, by its hash. Rejects when the file changed or went away since it was opened. */
  blob(hash: BlobHash): Promise<KeptBytes>;
  /** Lets go of the file and what was unpacked. */
  close(): void;
}

/** Packs and opens copies beside the screen. `Held` is whatever the device gives for a file. */
export interface Packer<Held> {
  /** Begins an archive; with a passphrase it is one in the age format. */
  pack(name: string, passphrase?: string): Packing<Held>;
  /**
   * Opens a copy and checks all of it; changes nothing. Codes: files.foreign, files.newer {version},
   * files.cut-short, files.damaged, files.bad-name {name}, files.twice {name}, files.too-large {what, atMost},
   * files.bomb, files.wants-passphrase, files.wrong-passphrase, files.too-heavy {atMost}, files.other-lock,
   * files.gone, files.manifest, files.demo, files.miscounted {name}, files.claims {holds}, those of `readJournal`. `tell` hears how far it has come.
   */
  open(
    file: Held,
    passphrase: string | undefined,
    tell: (done: number, all: number) => void,
  ): Promise<Result<OpenedCopy>>;
}
