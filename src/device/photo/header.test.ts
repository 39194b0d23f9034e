import fc from "fast-check";
import { expect, test } from "vitest";
import { jpegHeader, pngHeader } from "./header.js";
import { withOrientation } from "./orientation-tag.js";

const segment = (marker: number, body: readonly number[]): number[] => [
  0xff,
  marker,
  (body.length + 2) >> 8,
  (body.length + 2) & 0xff,
  ...body,
];
const frame = (width: number, height: number, marker = 0xc0): number[] =>
  segment(marker, [8, height >> 8, height & 0xff, width >> 8, width & 0xff, 1, 1, 0x11, 0]);
const jpeg = (...segments: readonly (readonly number[])[]): Uint8Array =>
  new Uint8Array([0xff, 0xd8, ...segments.flat()]);

test("size is read from the frame, baseline or progressive, behind any other segments", () => {
  expect(jpegHeader(jpeg(frame(4032, 3024)))).toEqual({ width: 4032, height: 3024, orientation: 1 });
  const colourProfile = segment(
    0xe2,
    Array.from({ length: 3000 }, () => 0),
  );
  expect(jpegHeader(jpeg(colourProfile, frame(640, 480, 0xc2)))).toEqual({ width: 640, height: 480, orientation: 1 });
});

test("a Huffman table is not taken for a frame", () => {
  expect(jpegHeader(jpeg(frame(9, 9, 0xc4), frame(20, 10)))).toMatchObject({ width: 20, height: 10 });
});

test.each([1, 2, 3, 4, 5, 6, 7, 8])("orientation %i is read back as written", (orientation) => {
  expect(jpegHeader(withOrientation(jpeg(frame(16, 8)), orientation))?.orientation).toBe(orientation);
});

test("orientation in the other byte order is read too", () => {
  const tiff = [0x4d, 0x4d, 0, 0x2a, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 8, 0, 0, 0, 0, 0, 0];
  const exif = segment(0xe1, [0x45, 0x78, 0x69, 0x66, 0, 0, ...tiff]);
  expect(jpegHeader(jpeg(exif, frame(16, 8)))?.orientation).toBe(8);
});

test("an orientation outside 1 to 8 counts as upright", () => {
  expect(jpegHeader(withOrientation(jpeg(frame(16, 8)), 9))?.orientation).toBe(1);
});

test("a cut-off or damaged header gives no size, and never throws", () => {
  expect(jpegHeader(jpeg(frame(16, 8)).subarray(0, 6))).toBeUndefined();
  expect(jpegHeader(jpeg([0xff, 0xda, 0, 2]))).toBeUndefined();
  expect(jpegHeader(jpeg(frame(0, 8)))).toBeUndefined();
  const whole = withOrientation(jpeg(frame(4032, 3024)), 6);
  const damage = fc.array(fc.tuple(fc.nat(whole.length - 1), fc.nat(255)), { maxLength: 8 });
  fc.assert(
    fc.property(damage, fc.nat(whole.length), (changes, end) => {
      const bytes = whole.slice(0, end);
      for (const [at, value] of changes) if (at < end) bytes[at] = value;
      const header = jpegHeader(bytes);
      expect(header === undefined || (header.orientation >= 1 && header.orientation <= 8)).toBe(true);
      pngHeader(bytes);
    }),
    { seed: 2026, numRuns: 2000 },
  );
});

test("the size of a PNG is read from its first chunk", () => {
  const bytes = new Uint8Array(30);
  new DataView(bytes.buffer).setUint32(16, 1200);
  new DataView(bytes.buffer).setUint32(20, 900);
  expect(pngHeader(bytes)).toEqual({ width: 1200, height: 900, orientation: 1 });
  expect(pngHeader(bytes.subarray(0, 20))).toBeUndefined();
});
