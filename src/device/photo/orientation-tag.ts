/** Writes an orientation into a JPEG that has none: the self-test's way to make a turned picture. Knows nothing else. */

/** A copy of `jpeg` with an EXIF block saying only how it is turned (1–8). */
export function withOrientation(jpeg: Uint8Array, orientation: number): Uint8Array<ArrayBuffer> {
  const tiff = [0x49, 0x49, 0x2a, 0, 8, 0, 0, 0, 1, 0, 0x12, 0x01, 3, 0, 1, 0, 0, 0, orientation, 0, 0, 0, 0, 0, 0, 0];
  const body = [0x45, 0x78, 0x69, 0x66, 0, 0, ...tiff];
  const length = body.length + 2;
  const segment = [0xff, 0xe1, length >> 8, length & 0xff, ...body];
  const turned = new Uint8Array(jpeg.length + segment.length);
  turned.set(jpeg.subarray(0, 2));
  turned.set(segment, 2);
  turned.set(jpeg.subarray(2), 2 + segment.length);
  return turned;
}
