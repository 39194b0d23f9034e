/**
 * What the app asks of whoever picks files and hands them on: names, types and bytes. Refuses to know share
 * sheets, downloads and inputs; those are in device/files.
 */

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
  ready(content: FileContent): ReadyFile;
}
