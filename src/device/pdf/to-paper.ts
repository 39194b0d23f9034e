/** A kept picture as paper needs it: no larger than it is printed. Runs in the worker; holds one picture at a time. */
import type { PaperPicture } from "../../core/report/index.js";

/** What is kept for print stays clear at this. Own choice. */
const QUALITY = 0.8;
const EMBEDDED: ReadonlySet<string> = new Set(["image/jpeg"]);

/** Smaller where it is larger than `most` pixels on its longer side; undefined where it is no picture one can read. */
export async function toPaper({ type, bytes }: PaperPicture, most: number): Promise<PaperPicture | undefined> {
  let bitmap: ImageBitmap | undefined;
  try {
    bitmap = await createImageBitmap(new Blob([bytes], { type }));
    const scale = most / Math.max(bitmap.width, bitmap.height);
    if (scale >= 1 && EMBEDDED.has(type)) return { type, bytes };
    const by = Math.min(1, scale);
    const canvas = new OffscreenCanvas(
      Math.max(1, Math.round(bitmap.width * by)),
      Math.max(1, Math.round(bitmap.height * by)),
    );
    const context = canvas.getContext("2d");
    if (!context) return undefined;
    context.imageSmoothingQuality = "high";
    context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
    const blob = await canvas.convertToBlob({ type: "image/jpeg", quality: QUALITY });
    // The canvas holds its pixels until it is small.
    canvas.width = 1;
    canvas.height = 1;
    return { type: blob.type, bytes: new Uint8Array(await blob.arrayBuffer()) };
  } catch {
    return undefined;
  } finally {
    bitmap?.close();
  }
}
