/** Writes the page file with its pictures in it. Runs in the worker: sixty pictures as text would hold every tap up. */
import { type MadePage, type PageWish, type Progress, toHtml } from "../../core/report/index.js";
import { binary } from "./binary.js";
import type { Pictures } from "./pictures.js";

export async function makePage(wish: PageWish, pictures: Pictures, onProgress: Progress): Promise<MadePage> {
  const { pages, words, hashes, most, font } = wish;
  const held = new Map<string, string>();
  for (const [at, hash] of hashes.entries()) {
    const picture = await pictures(hash, most);
    if (picture) held.set(hash, `data:${picture.type};base64,${btoa(binary(picture.bytes))}`);
    onProgress(at + 1, hashes.length);
  }
  const html = toHtml(pages, words, { pictures: held, ...(font ? { font } : {}) });
  return { bytes: new TextEncoder().encode(html), missing: hashes.length - held.size };
}
