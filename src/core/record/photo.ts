/**
 * What the record asks of whoever keeps pictures: bytes ready to be stored under their SHA-256, never how
 * they were decoded. Refuses to know canvases, files and workers; those are in device/photo.
 */

/** Encoded bytes and the SHA-256 (lower-case hex) they are stored under. Sides in pixels. */
export interface PictureBytes {
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly hash: string;
  readonly width: number;
  readonly height: number;
}

/** A picture made small enough to keep: upright, without any tag the camera wrote into it. */
export interface KeptPicture {
  readonly kind: "picture";
  readonly picture: PictureBytes;
  readonly thumb: PictureBytes;
}

/**
 * Why a picture could not be made smaller and is kept as it came:
 * `heic` this browser cannot read HEIC/HEIF · `no-picture` the bytes are no picture type we know ·
 * `cannot-read` a known type, but damaged or refused · `came-out-blank` the browser drew one flat colour where
 * the picture has none.
 */
export type WhyOriginal = "heic" | "no-picture" | "cannot-read" | "came-out-blank";

/** The bytes as they came, tags included: whoever hands them on must say so. */
export interface KeptOriginal {
  readonly kind: "original";
  readonly why: WhyOriginal;
  /** Type told from the first bytes where known, else what the source claimed, else `application/octet-stream`. */
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly hash: string;
}

export type PictureOutcome = KeptPicture | KeptOriginal;

/**
 * Makes pictures ready to be stored, one at a time and in the order asked.
 * `Source` is whatever the device hands over (a file from the camera or the album); `Abort` its way to stop.
 */
export interface PictureKeeper<Source, Abort> {
  /**
   * Rejects only with an error named `AbortError` when stopped, or the device's own error when the source itself can
   * no longer be read. Whatever else goes wrong, the bytes are kept as they came and the outcome says why.
   */
  keep(source: Source, abort?: Abort): Promise<PictureOutcome>;
  /** Number of pictures waiting or being worked on. */
  readonly waiting: number;
}
