/**
 * Writes what a phone's camera writes into a JPEG: orientation, maker, serial number and where it was taken.
 * For tests that these do not survive. Knows nothing of pixels.
 */

/** Texts that must never be found in a kept picture. Invented. */
export const CAMERA_MAKER = "Testcam Works";
export const CAMERA_SERIAL = "SN-0042-4711";

type Field = readonly [tag: number, type: 2 | 3 | 4 | 5, count: number, bytes: readonly number[]];

const u16 = (value: number): number[] => [value & 0xff, (value >> 8) & 0xff];
const u32 = (value: number): number[] => [...u16(value & 0xffff), ...u16(Math.floor(value / 0x10000))];
const ascii = (text: string): number[] => [...`${text}\0`].map((letter) => letter.charCodeAt(0));
const rationals = (...values: readonly number[]): number[] => values.flatMap((value) => [...u32(value), ...u32(1)]);

/** One image file directory at `offset` of the TIFF block, with the longer values behind it (TIFF 6.0 §2). */
function directory(fields: readonly Field[], offset: number): number[] {
  const entries: number[] = [];
  const values: number[] = [];
  const start = offset + 2 + fields.length * 12 + 4;
  for (const [tag, type, count, bytes] of fields) {
    const inline = bytes.length <= 4;
    const value = inline ? [...bytes, 0, 0, 0, 0].slice(0, 4) : u32(start + values.length);
    entries.push(...u16(tag), ...u16(type), ...u32(count), ...value);
    if (!inline) values.push(...bytes);
  }
  return [...u16(fields.length), ...entries, ...u32(0), ...values];
}

/** A copy of `jpeg` with a camera's EXIF block: turned by `orientation`, taken at 51° 28′ 38″ N, 0° 0′ 5″ W. */
export function asFromCamera(jpeg: Uint8Array, orientation: number): Uint8Array<ArrayBuffer> {
  const main = (gpsAt: number): readonly Field[] => [
    [0x010f, 2, CAMERA_MAKER.length + 1, ascii(CAMERA_MAKER)],
    [0x0112, 3, 1, u16(orientation)],
    [0x8825, 4, 1, u32(gpsAt)],
    [0xc62f, 2, CAMERA_SERIAL.length + 1, ascii(CAMERA_SERIAL)],
  ];
  const gpsAt = 8 + directory(main(0), 8).length;
  const gps: readonly Field[] = [
    [1, 2, 2, ascii("N")],
    [2, 5, 3, rationals(51, 28, 38)],
    [3, 2, 2, ascii("W")],
    [4, 5, 3, rationals(0, 0, 5)],
  ];
  const tiff = [0x49, 0x49, 0x2a, 0, ...u32(8), ...directory(main(gpsAt), 8), ...directory(gps, gpsAt)];
  const body = [0x45, 0x78, 0x69, 0x66, 0, 0, ...tiff];
  const segment = [0xff, 0xe1, (body.length + 2) >> 8, (body.length + 2) & 0xff, ...body];
  const out = new Uint8Array(jpeg.length + segment.length);
  out.set(jpeg.subarray(0, 2));
  out.set(segment, 2);
  out.set(jpeg.subarray(2), 2 + segment.length);
  return out;
}
