/**
 * How long something in a picture is, by a known length in the same picture, and how far off that may be. Holds only in
 * the plane of the known length and looked at straight on: no figure here can know whether that is so. Pure.
 */
import type { KnownLength, PictureMark, Spot } from "../record/picture-bodies.js";
import { readTyped } from "../units/index.js";

type Scale = Extract<PictureMark, { readonly type: "scale" }>;
type Length = Extract<PictureMark, { readonly type: "length" }>;

/** Sides of the picture in its own pixels. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/** In millimetres; the true length lies between `low` and `high` where the plane is the same. */
export interface PictureLength {
  readonly mm: number;
  readonly low: number;
  readonly high: number;
}
/** Why there is none: the known length is gone or none, or shorter in the picture than its spots may be off. */
export type NoLength = "no-scale" | "not-read" | "too-short";

/** Each of two spots is off at most so many picks: together they make a distance twice as far off. */
const ENDS = 2;

/** Distance of two spots in pixels. */
function apart([x1, y1]: Spot, [x2, y2]: Spot, { width, height }: PictureSize): number {
  return Math.hypot((x2 - x1) * width, (y2 - y1) * height);
}

/**
 * A known length in millimetres, with half a step of its last digit either way: whoever writes 25 has not said 25.0.
 * Of a fraction the step is its smallest part. Common practice, no source.
 */
export function knownIn({ value, unit }: KnownLength): { readonly mm: number; readonly off: number } | undefined {
  const read = readTyped(value, { quantity: "length", unit });
  if (!read.ok || read.value.value <= 0) return undefined;
  const { canonical, decimals, text } = read.value;
  const step = decimals === null ? 1 / Number(text.split("/")[1]) : 10 ** -decimals;
  const perUnit = canonical / read.value.value;
  return { mm: canonical, off: (step / 2) * perUnit };
}

/** Shorter than this many times what its spots may be off, a known length measures nothing; own choice. */
const LEAST_TIMES = 5;

/** The length of a mark by its scale: worst case, every spot and the known length off at once. */
export function lengthOf(length: Length, scale: Scale | undefined, size: PictureSize): PictureLength | NoLength {
  if (!scale) return "no-scale";
  const known = knownIn(scale.known);
  if (!known) return "not-read";
  const [long, by] = [apart(length.from, length.to, size), apart(scale.from, scale.to, size)];
  const [longOff, byOff] = [length.pick * size.width * ENDS, scale.pick * size.width * ENDS];
  if (by < LEAST_TIMES * byOff || known.off >= known.mm) return "too-short";
  return {
    mm: (known.mm * long) / by,
    low: ((known.mm - known.off) * Math.max(0, long - longOff)) / (by + byOff),
    high: ((known.mm + known.off) * (long + longOff)) / (by - byOff),
  };
}

/** A length as it may be told: its uncertainty in one digit, rounded up, and the value no finer than that. */
export function toldIn(
  { mm, low, high }: PictureLength,
  mmPerUnit: number,
): { readonly value: number; readonly off: number; readonly decimals: number } {
  const value = mm / mmPerUnit;
  const off = Math.max(high - mm, mm - low) / mmPerUnit;
  const power = Math.floor(Math.log10(off));
  const digit = 10 ** power;
  // Nine and a half is told as ten of the next digit, never as nine.
  const up = Math.ceil(off / digit - 1e-9) * digit;
  const decimals = Math.max(0, -Math.floor(Math.log10(up) + 1e-9));
  const step = 10 ** -decimals;
  return { value: Math.round(value / step) * step, off: Math.max(up, step), decimals };
}
