/**
 * Tells a picture's type from its first bytes, never from what its name or sender claims. Refuses to decode.
 */

export type PictureType =
  | "image/jpeg"
  | "image/png"
  | "image/gif"
  | "image/webp"
  | "image/avif"
  | "image/heic"
  | "image/bmp";

const starts = (bytes: Uint8Array, at: number, wanted: readonly number[]): boolean =>
  wanted.every((value, index) => bytes[at + index] === value);
const ascii = (bytes: Uint8Array, at: number, length: number): string =>
  String.fromCharCode(...bytes.subarray(at, at + length));

/** Brands of ISO base media files (ISO/IEC 14496-12 `ftyp`): HEIF family (ISO/IEC 23008-12) and AVIF. */
const HEIC_BRANDS = new Set(["heic", "heix", "heim", "heis", "hevc", "hevx", "mif1", "msf1"]);
const AVIF_BRANDS = new Set(["avif", "avis"]);

/** Major brand first, then the compatible ones: HEIC files often name only the general `mif1` as their major brand. */
function brandsOf(bytes: Uint8Array): string[] {
  const [a = 0, b = 0, c = 0, d = 0] = bytes;
  const end = Math.min(a * 0x1000000 + b * 0x10000 + c * 0x100 + d, bytes.length, 256);
  const brands = [ascii(bytes, 8, 4)];
  for (let at = 16; at + 4 <= end; at += 4) brands.push(ascii(bytes, at, 4));
  return brands;
}

/** The type the bytes show; undefined when they are none of the picture types a phone makes. */
export function pictureType(bytes: Uint8Array): PictureType | undefined {
  if (starts(bytes, 0, [0xff, 0xd8, 0xff])) return "image/jpeg";
  if (starts(bytes, 0, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return "image/png";
  if (ascii(bytes, 0, 6) === "GIF87a" || ascii(bytes, 0, 6) === "GIF89a") return "image/gif";
  if (ascii(bytes, 0, 4) === "RIFF" && ascii(bytes, 8, 4) === "WEBP") return "image/webp";
  if (ascii(bytes, 4, 4) === "ftyp") {
    const brands = brandsOf(bytes);
    if (brands.some((brand) => AVIF_BRANDS.has(brand))) return "image/avif";
    if (brands.some((brand) => HEIC_BRANDS.has(brand))) return "image/heic";
  }
  if (ascii(bytes, 0, 2) === "BM" && bytes.length > 26) return "image/bmp";
  return undefined;
}
