/**
 * Reads size and orientation out of a picture's header, so that it can be made small while it is decoded.
 * Refuses to know pixels; a header it cannot read gives undefined, never a guess.
 */

/** Size in pixels as stored, and the EXIF orientation 1–8 (1: upright). */
export interface Header {
  readonly width: number;
  readonly height: number;
  readonly orientation: number;
}

const ORIENTATION_TAG = 0x0112;
const EXIF = [0x45, 0x78, 0x69, 0x66, 0, 0];

/** Orientation out of an EXIF block (TIFF header right after `Exif\0\0`); 1 when absent or odd. */
function orientationIn(tiff: DataView): number {
  if (tiff.byteLength < 14) return 1;
  const little = tiff.getUint16(0) === 0x4949;
  const first = tiff.getUint32(4, little);
  if (first + 2 > tiff.byteLength) return 1;
  const entries = tiff.getUint16(first, little);
  for (let entry = 0; entry < entries; entry++) {
    const at = first + 2 + entry * 12;
    if (at + 12 > tiff.byteLength) return 1;
    if (tiff.getUint16(at, little) !== ORIENTATION_TAG) continue;
    const value = tiff.getUint16(at + 8, little);
    return value >= 1 && value <= 8 ? value : 1;
  }
  return 1;
}

/** Start-of-frame markers; C4, C8 and CC in that range are tables (ITU-T T.81 table B.1). */
const isFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;

/** Walks the segments of a JPEG up to its frame header. */
export function jpegHeader(bytes: Uint8Array): Header | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let orientation: number | undefined;
  let at = 2;
  while (at + 4 <= view.byteLength) {
    if (view.getUint8(at) !== 0xff) return undefined;
    const marker = view.getUint8(at + 1);
    // Fill bytes before a marker.
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    if (marker === 0xd9 || marker === 0xda) return undefined;
    const length = view.getUint16(at + 2);
    if (length < 2 || at + 2 + length > view.byteLength) return undefined;
    if (isFrame(marker)) {
      if (length < 8) return undefined;
      const [height, width] = [view.getUint16(at + 5), view.getUint16(at + 7)];
      return width > 0 && height > 0 ? { width, height, orientation: orientation ?? 1 } : undefined;
    }
    if (
      marker === 0xe1 &&
      length >= 8 &&
      orientation === undefined &&
      EXIF.every((value, index) => bytes[at + 4 + index] === value)
    ) {
      orientation = orientationIn(new DataView(bytes.buffer, bytes.byteOffset + at + 10, length - 8));
    }
    at += 2 + length;
  }
  return undefined;
}

/** Size out of a PNG's first chunk. */
export function pngHeader(bytes: Uint8Array): Header | undefined {
  if (bytes.byteLength < 24) return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const [width, height] = [view.getUint32(16), view.getUint32(20)];
  return width > 0 && height > 0 ? { width, height, orientation: 1 } : undefined;
}
