/**
 * From the bytes of one picture to what the record keeps: upright, small, without the camera's tags, with a
 * thumbnail and hashes; or the bytes as they came and why. Runs in the worker. Refuses to know where they go.
 */
import type { PictureBytes, PictureOutcome, WhyOriginal } from "../../core/record/photo.js";
import { original, sha256 } from "./as-it-came.js";
import { decodeUpright, isOneColour, release, smaller } from "./decode.js";
import { LONGEST_SIDE, THUMB_SIDE } from "./fit.js";
import { type Header, jpegHeader, pngHeader } from "./header.js";
import { pictureType } from "./sniff.js";

/** Enough that a hairline crack survives at 2048 pixels; about half a megabyte a picture. Own choice. */
const PICTURE_QUALITY = 0.82;
const THUMB_QUALITY = 0.7;
/** Pixels beyond any phone camera of today (200 million): decoding more is refused rather than risked. */
const MOST_PIXELS = 220_000_000;

async function encode(canvas: OffscreenCanvas, quality: number): Promise<PictureBytes> {
  const blob = await canvas.convertToBlob({ type: "image/jpeg", quality });
  const bytes = new Uint8Array(await blob.arrayBuffer());
  // An engine that cannot write the asked type writes another without a word: keep what it really is.
  return { type: blob.type, bytes, hash: await sha256(bytes), width: canvas.width, height: canvas.height };
}

async function readsAsOneColour(picture: Blob): Promise<boolean> {
  const probe = await decodeUpright(picture, { width: 16, height: 16, orientation: 1 }, 16);
  const plain = isOneColour(probe);
  release(probe);
  return plain;
}

/** Canvas and thumbnail; undefined when the engine drew one flat colour where the picture has none. */
async function drawn(picture: Blob, header: Header | undefined, whole: boolean) {
  const canvas = await decodeUpright(picture, header, LONGEST_SIDE, whole);
  const thumb = smaller(canvas, THUMB_SIDE);
  if (!isOneColour(thumb) || (await readsAsOneColour(picture))) return { canvas, thumb };
  release(canvas);
  release(thumb);
  return undefined;
}

/** Makes one picture ready to be kept. Rejects only when `source` itself can no longer be read. */
export async function makeKept(source: Blob): Promise<PictureOutcome> {
  const bytes = new Uint8Array(await source.arrayBuffer());
  const type = pictureType(bytes);
  const header = type === "image/jpeg" ? jpegHeader(bytes) : type === "image/png" ? pngHeader(bytes) : undefined;
  if (header && header.width * header.height > MOST_PIXELS) return original(bytes, "cannot-read", source.type);
  // The type of the blob must be the true one: some engines trust it over the bytes.
  const picture = new Blob([bytes], { type: type ?? source.type });
  try {
    const both = (await drawn(picture, header, false)) ?? (await drawn(picture, header, true));
    if (!both) return await original(bytes, "came-out-blank", source.type);
    const kept = await encode(both.canvas, PICTURE_QUALITY);
    const thumb = await encode(both.thumb, THUMB_QUALITY);
    release(both.canvas);
    release(both.thumb);
    return { kind: "picture", picture: kept, thumb };
  } catch {
    const why: WhyOriginal = type === "image/heic" ? "heic" : type === undefined ? "no-picture" : "cannot-read";
    return original(bytes, why, source.type);
  }
}
