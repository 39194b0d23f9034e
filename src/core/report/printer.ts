/**
 * What the app asks of whoever makes the printed sheet (PDF) of a hand-over: pages in, bytes out, pictures fetched one
 * at a time. Types only; refuses to know fonts, paper and workers. Those are in device/pdf.
 */
import type { HandoverPages } from "./handover/index.js";

/** A hand-over to be printed. */
export interface PrintWish {
  readonly pages: HandoverPages;
  /** Foot of every page, with `{page}` and `{pages}` in it. */
  readonly pageOf: string;
  /** ISO date-time at which it was made: the sheet's own date. */
  readonly madeAt: string;
  /** Stands where a picture cannot be drawn. */
  readonly noPicture: string;
  /** Stands at the end where signs could not be printed, with `{signs}` in it. */
  readonly noSigns: string;
}

/** Bytes of a kept picture; undefined: they are not on this phone. */
export type PictureSource = (
  hash: string,
) => Promise<{ readonly type: string; readonly bytes: Uint8Array<ArrayBuffer> } | undefined>;

/** The finished sheet and what it could not hold. */
export interface PrintedSheet {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly pages: number;
  /** Signs its face has none for: they stand as a crossed box. */
  readonly missingSigns: readonly string[];
  /** Hashes of pictures a box stands for. */
  readonly missingPictures: readonly string[];
}

/** One sheet on its way. */
export interface Printing {
  /** Undefined when it was stopped. Rejects with what broke it; nothing of it is kept then. */
  readonly done: Promise<PrintedSheet | undefined>;
  /** Ends it at once. */
  stop(): void;
}

export interface SheetPrinter {
  /** `onProgress` is told how many pages of all are drawn. */
  print(wish: PrintWish, pictures: PictureSource, onProgress: (done: number, of: number) => void): Printing;
}
