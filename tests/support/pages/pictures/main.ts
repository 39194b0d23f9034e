/**
 * A page around device/photo alone, so that a test can hand it pictures and look at what comes back under the app's
 * own policy. Knows no record.
 */
import { startWorker } from "../../../../src/app/trusted.js";
import { type PictureWorker, startPictureQueue } from "../../../../src/device/photo/index.js";
import workerUrl from "../../../../src/device/photo/worker.ts?worker&url";
import { asFromCamera } from "../../exif.js";

/** Colours of the four quarters of a stored picture: top left, top right, bottom left, bottom right. */
export const QUARTERS = {
  "top left": "#e02020",
  "top right": "#20c020",
  "bottom left": "#2020e0",
  "bottom right": "#e0e020",
};

const queue = startPictureQueue((): PictureWorker => startWorker(workerUrl));

/** A square of translucent grey noise, the same on every run. */
function grainTile(): OffscreenCanvas {
  const tile = new OffscreenCanvas(256, 256);
  const drawing = tile.getContext("2d");
  const noise = new ImageData(256, 256);
  let grain = 12345;
  for (let at = 0; at < noise.data.length; at += 4) {
    grain = (grain * 1103515245 + 12345) & 0x7fffffff;
    noise.data.set([(grain >> 16) & 255, (grain >> 16) & 255, (grain >> 16) & 255, 36], at);
  }
  drawing?.putImageData(noise, 0, 0);
  return tile;
}

/** Four coloured quarters under a grain that keeps the encoder busy as a real picture would. */
async function quarteredJpeg(width: number, height: number, orientation: number): Promise<Uint8Array<ArrayBuffer>> {
  const canvas = new OffscreenCanvas(width, height);
  const drawing = canvas.getContext("2d");
  if (!drawing) throw new Error("no canvas");
  const [x, y] = [width / 2, height / 2];
  const corners = [
    [0, 0],
    [x, 0],
    [0, y],
    [x, y],
  ] as const;
  for (const [index, colour] of Object.values(QUARTERS).entries()) {
    const [left, top] = corners[index] ?? [0, 0];
    drawing.fillStyle = colour;
    drawing.fillRect(left, top, x, y);
  }
  drawing.fillStyle = drawing.createPattern(grainTile(), "repeat") ?? "";
  drawing.fillRect(0, 0, width, height);
  const blob = await canvas.convertToBlob({ type: "image/jpeg", quality: 0.92 });
  return asFromCamera(new Uint8Array(await blob.arrayBuffer()), orientation);
}

/** The colour in the middle of each quarter of an encoded picture, to within the encoder's error. */
async function quartersOf(picture: Blob): Promise<Record<string, string>> {
  const bitmap = await createImageBitmap(picture);
  const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
  const drawing = canvas.getContext("2d");
  if (!drawing) throw new Error("no canvas");
  drawing.drawImage(bitmap, 0, 0);
  const found: Record<string, string> = {};
  for (const [name, fx, fy] of [
    ["top left", 1, 1],
    ["top right", 3, 1],
    ["bottom left", 1, 3],
    ["bottom right", 3, 3],
  ] as const) {
    const [r = 0, g = 0, b = 0] = drawing.getImageData((bitmap.width * fx) / 4, (bitmap.height * fy) / 4, 1, 1).data;
    const bright = (value: number): string => (value > 0.6 * Math.max(r, g, b) && value > 60 ? "1" : "0");
    found[name] =
      ({ "100": "red", "010": "green", "001": "blue", "110": "yellow" } as Record<string, string>)[
        bright(r) + bright(g) + bright(b)
      ] ?? `${r},${g},${b}`;
  }
  return found;
}

const text = (bytes: Uint8Array): string => new TextDecoder("latin1").decode(bytes);

async function keep(source: Blob) {
  const tasks: number[] = [];
  // Its own task, so that making the picture to be kept is not counted as keeping it.
  await new Promise((resolve) => setTimeout(resolve));
  const watch = new PerformanceObserver((list) => tasks.push(...list.getEntries().map((entry) => entry.duration)));
  watch.observe({ type: "longtask" });
  const began = performance.now();
  const outcome = await queue.keep(source);
  const ms = performance.now() - began;
  await new Promise((resolve) => setTimeout(resolve, 100));
  watch.disconnect();
  return { outcome, ms, tasks };
}

const digest = async (bytes: Uint8Array<ArrayBuffer>): Promise<string> =>
  Array.from(new Uint8Array(await crypto.subtle.digest("SHA-256", bytes)), (byte) =>
    byte.toString(16).padStart(2, "0"),
  ).join("");

const acts = {
  /** Makes a picture as from a camera, keeps it, and tells what came out. */
  async camera(width: number, height: number, orientation: number) {
    const source = await quarteredJpeg(width, height, orientation);
    const before = text(source);
    const { outcome, ms, tasks } = await keep(new Blob([source], { type: "image/jpeg" }));
    if (outcome.kind !== "picture") return { kind: outcome.kind, why: outcome.why, ms, tasks };
    const { picture, thumb } = outcome;
    return {
      kind: outcome.kind,
      sourceBytes: source.length,
      sourceHasTags: before.includes("Exif") && before.includes("Testcam Works") && before.includes("SN-0042-4711"),
      picture: { ...picture, bytes: picture.bytes.length, text: text(picture.bytes) },
      thumb: { ...thumb, bytes: thumb.bytes.length, text: text(thumb.bytes) },
      hashesRight: (await digest(picture.bytes)) === picture.hash && (await digest(thumb.bytes)) === thumb.hash,
      quarters: await quartersOf(new Blob([picture.bytes], { type: picture.type })),
      thumbQuarters: await quartersOf(new Blob([thumb.bytes], { type: thumb.type })),
      ms,
      tasks,
    };
  },
  /** Keeps bytes as given. */
  async bytes(given: readonly number[], type: string) {
    const { outcome, ms, tasks } = await keep(new Blob([new Uint8Array(given)], { type }));
    const base = { kind: outcome.kind, ms, tasks };
    return outcome.kind === "original"
      ? { ...base, why: outcome.why, type: outcome.type, bytes: Array.from(outcome.bytes) }
      : base;
  },
  /** A picture of one black colour, which is what it is. */
  async black() {
    const canvas = new OffscreenCanvas(600, 400);
    canvas.getContext("2d")?.fillRect(0, 0, 600, 400);
    return (await keep(await canvas.convertToBlob({ type: "image/jpeg" }))).outcome.kind;
  },
  /** A transparent picture: paper white shows through. */
  async transparent() {
    const clear = new OffscreenCanvas(400, 300);
    clear.getContext("2d")?.clearRect(0, 0, 400, 300);
    const { outcome } = await keep(await clear.convertToBlob({ type: "image/png" }));
    if (outcome.kind !== "picture") return outcome.why;
    const bitmap = await createImageBitmap(new Blob([outcome.picture.bytes], { type: outcome.picture.type }));
    const canvas = new OffscreenCanvas(1, 1);
    canvas.getContext("2d")?.drawImage(bitmap, 0, 0);
    return Array.from(canvas.getContext("2d")?.getImageData(0, 0, 1, 1).data ?? []);
  },
  /** Stops the first of three pictures while it is worked on. */
  async stopFirst() {
    const source = new Blob([await quarteredJpeg(4032, 3024, 1)], { type: "image/jpeg" });
    const stop = new AbortController();
    const all = [queue.keep(source, stop.signal), queue.keep(source), queue.keep(source)];
    setTimeout(() => stop.abort(), 30);
    const ended = await Promise.allSettled(all);
    return ended.map((one) => (one.status === "fulfilled" ? one.value.kind : String((one.reason as Error).name)));
  },
};
export type PictureActs = typeof acts;

Object.assign(globalThis, { pictures: acts });
document.title = "Ready";
