/**
 * Whether bytes carry what a camera writes beside a picture: EXIF (place, serial number, time), XMP. Looks for the marks
 * these formats begin with. Refuses to take anything out: bytes are named by their hash.
 */
const codes = (text: string): readonly number[] => [...text].map((letter) => letter.charCodeAt(0));

/** EXIF in JPEG, WebP and HEIF; in PNG; XMP in any; the tag of a place in written-out form. */
const MARKS = ["Exif\0\0", "EXIF", "eXIf", "ns.adobe.com/xap", "<x:xmpmeta", "GPSLatitude"].map(codes);

/** Four letters turn up by chance in the squeezed part of a large picture: they count near the beginning only. */
const BEGINNING = 64_000;
const SHORT = 5;

export function holdsCameraTags(bytes: Uint8Array): boolean {
  return MARKS.some((mark) => {
    const end = mark.length < SHORT ? Math.min(bytes.length, BEGINNING) : bytes.length;
    const [first = 0] = mark;
    for (let at = bytes.indexOf(first); at >= 0 && at + mark.length <= end; at = bytes.indexOf(first, at + 1))
      if (mark.every((code, index) => bytes[at + index] === code)) return true;
    return false;
  });
}
