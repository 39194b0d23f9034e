/** Sizes and turns on paper: how large a picture becomes and how it is set upright. Refuses to know pixels. */

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Longest side of a kept picture: a thread pitch stays readable, 500 pictures stay well under a gigabyte. Own choice. */
export const LONGEST_SIDE = 2048;
/** Longest side of the small copy shown in lists. Own choice. */
export const THUMB_SIDE = 320;

/** The same shape with its longest side at most `longest`; never enlarged, never under one pixel. */
export function fitInto(size: Size, longest: number): Size {
  const factor = Math.min(1, longest / Math.max(size.width, size.height));
  return { width: Math.max(1, Math.round(size.width * factor)), height: Math.max(1, Math.round(size.height * factor)) };
}

/** Whether an EXIF orientation lays the picture on its side (5–8). */
export const liesOnItsSide = (orientation: number): boolean => orientation >= 5 && orientation <= 8;

/** The size as a person should see it. */
export const upright = (size: Size, orientation: number): Size =>
  liesOnItsSide(orientation) ? { width: size.height, height: size.width } : { width: size.width, height: size.height };

/** A canvas transform (a, b, c, d, e, f). */
export type Turn = readonly [number, number, number, number, number, number];

/**
 * The transform that draws a stored picture upright, for a stored (not upright) size of `w` × `h`.
 * Orientations as in EXIF 2.32 (CIPA DC-008) tag 0x0112.
 */
export function turnFor(orientation: number, { width: w, height: h }: Size): Turn {
  switch (orientation) {
    case 2:
      return [-1, 0, 0, 1, w, 0];
    case 3:
      return [-1, 0, 0, -1, w, h];
    case 4:
      return [1, 0, 0, -1, 0, h];
    case 5:
      return [0, 1, 1, 0, 0, 0];
    case 6:
      return [0, 1, -1, 0, h, 0];
    case 7:
      return [0, -1, -1, 0, h, w];
    case 8:
      return [0, -1, 1, 0, 0, w];
    default:
      return [1, 0, 0, 1, 0, 0];
  }
}
