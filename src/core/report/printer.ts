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
  /** Words of the marks, by mark: none stands without its own. */
  readonly marks: Readonly<Record<string, string>>;
  /** Stands where a picture cannot be drawn. */
  readonly noPicture: string;
  /** Stands at the end where signs could not be printed, with `{signs}` in it. */
  readonly noSigns: string;
}

/** Encoded bytes of a picture. */
export interface PaperPicture {
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** Bytes of a kept picture; undefined: they are not on this phone. */
export type PictureSource = (hash: string) => Promise<PaperPicture | undefined>;

/** The finished sheet and what it could not hold. */
export interface PrintedSheet {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly pages: number;
  /** Signs its face has none for: they stand as a crossed box. */
  readonly missingSigns: readonly string[];
  /** Hashes of pictures a box stands for. */
  readonly missingPictures: readonly string[];
}

/** Something on its way. */
export interface Printing<Made> {
  /** Undefined when it was stopped. Rejects with what broke it; nothing of it is kept then. */
  readonly done: Promise<Made | undefined>;
  /** Ends it at once. */
  stop(): void;
}

export type Progress = (done: number, of: number) => void;

export interface SheetPrinter {
  /** `onProgress` is told how many pages of all are drawn. */
  print(wish: PrintWish, pictures: PictureSource, onProgress: Progress): Printing<PrintedSheet>;
  /** Pictures no larger than `most` pixels, for pages that carry them; those that are not there are left out. */
  smaller(
    hashes: readonly string[],
    most: number,
    pictures: PictureSource,
    onProgress: Progress,
  ): Printing<ReadonlyMap<string, PaperPicture>>;
}
