/**
 * Turns a picture's bytes into one upright canvas of the wanted size, on any engine: engines disagree on
 * whether decoding turns the picture and when it is resized, so both are tried out once on a picture made here.
 * Runs in the worker. Refuses to know types, hashes and where pictures go.
 */
import { fitInto, type Size, turnFor, upright } from "./fit.js";
import type { Header } from "./header.js";
import { withOrientation } from "./orientation-tag.js";

/** What the engine was seen to do with a picture that says it lies on its side. */
interface Manner {
  readonly turns: boolean;
  /** Whether it also does so, in the asked size, when it resizes while decoding. */
  readonly resizes: boolean;
}

const RESIZE = { resizeQuality: "high" } as const;

function context(canvas: OffscreenCanvas): OffscreenCanvasRenderingContext2D {
  const drawing = canvas.getContext("2d", { willReadFrequently: false });
  if (!drawing) throw new Error("no canvas to draw on");
  return drawing;
}

/** Sixteen by eight, left half red, right half blue, said to be turned a quarter: upright it is red above blue. */
async function turnedTrial(): Promise<Blob> {
  const canvas = new OffscreenCanvas(16, 8);
  const drawing = context(canvas);
  drawing.fillStyle = "#f00";
  drawing.fillRect(0, 0, 8, 8);
  drawing.fillStyle = "#00f";
  drawing.fillRect(8, 0, 8, 8);
  const plain = await canvas.convertToBlob({ type: "image/jpeg", quality: 0.95 });
  return new Blob([withOrientation(new Uint8Array(await plain.arrayBuffer()), 6)], { type: "image/jpeg" });
}

/** Whether a bitmap is `width` × `height` and red above blue. */
function standsUpright(bitmap: ImageBitmap, width: number, height: number): boolean {
  if (bitmap.width !== width || bitmap.height !== height) return false;
  const canvas = new OffscreenCanvas(width, height);
  const drawing = context(canvas);
  drawing.drawImage(bitmap, 0, 0);
  const [topRed = 0] = drawing.getImageData(width >> 1, 1, 1, 1).data;
  const [bottomRed = 255] = drawing.getImageData(width >> 1, height - 2, 1, 1).data;
  return topRed > 128 && bottomRed < 128;
}

async function observeManner(): Promise<Manner> {
  const trial = await turnedTrial();
  const whole = await createImageBitmap(trial);
  const turns = standsUpright(whole, 8, 16);
  whole.close();
  // Older engines refuse the options outright; they decode whole pictures then.
  const small = await createImageBitmap(trial, { ...RESIZE, resizeWidth: 4, resizeHeight: 8 }).catch(() => undefined);
  const resizes = turns && small !== undefined && standsUpright(small, 4, 8);
  small?.close();
  return { turns, resizes };
}

let observed: Promise<Manner> | undefined;
const manner = (): Promise<Manner> => {
  observed ??= observeManner();
  return observed;
};

/** Draws `bitmap` upright into a fresh canvas of `size`; transparent parts become white, as on paper. */
function draw(bitmap: ImageBitmap, size: Size, orientation: number): OffscreenCanvas {
  const canvas = new OffscreenCanvas(size.width, size.height);
  const drawing = context(canvas);
  drawing.fillStyle = "#fff";
  drawing.fillRect(0, 0, size.width, size.height);
  drawing.imageSmoothingQuality = "high";
  const lying = upright(size, orientation);
  drawing.setTransform(...turnFor(orientation, lying));
  drawing.drawImage(bitmap, 0, 0, lying.width, lying.height);
  drawing.resetTransform();
  return canvas;
}

/**
 * Decodes `picture` upright with its longest side at most `longest`. With a `header` the engine makes it small while
 * decoding where it does that rightly; `whole` forbids it. Rejects when the engine cannot read the picture.
 */
export async function decodeUpright(
  picture: Blob,
  header: Header | undefined,
  longest: number,
  whole = false,
): Promise<OffscreenCanvas> {
  const engine = await manner();
  const orientation = header?.orientation ?? 1;
  if (header && engine.turns && engine.resizes && !whole) {
    const size = fitInto(upright(header, orientation), longest);
    const small = await createImageBitmap(picture, { ...RESIZE, resizeWidth: size.width, resizeHeight: size.height });
    try {
      return draw(small, size, 1);
    } finally {
      small.close();
    }
  }
  const bitmap = await createImageBitmap(picture);
  try {
    const toTurn = engine.turns ? 1 : orientation;
    return draw(bitmap, fitInto(upright(bitmap, toTurn), longest), toTurn);
  } finally {
    bitmap.close();
  }
}

/** A smaller copy of an upright canvas. */
export function smaller(canvas: OffscreenCanvas, longest: number): OffscreenCanvas {
  const size = fitInto(canvas, longest);
  const copy = new OffscreenCanvas(size.width, size.height);
  const drawing = context(copy);
  drawing.imageSmoothingQuality = "high";
  drawing.drawImage(canvas, 0, 0, size.width, size.height);
  return copy;
}

/** Whether every pixel is the same: what some engines draw, without an error, when a picture is too large for them. */
export function isOneColour(canvas: OffscreenCanvas): boolean {
  const { data } = context(canvas).getImageData(0, 0, canvas.width, canvas.height);
  const pixels = new Uint32Array(data.buffer, data.byteOffset, data.byteLength >> 2);
  return pixels.every((pixel) => pixel === pixels[0]);
}

/** Gives a canvas's memory back at once; engines otherwise hold it until they tidy up. */
export function release(canvas: OffscreenCanvas): void {
  canvas.width = 1;
  canvas.height = 1;
}
