/**
 * What the app asks of whoever makes the printed sheet (PDF) and the page file (HTML) of a hand-over: pages in, bytes
 * out, pictures fetched one at a time. Types only; refuses to know fonts, paper and workers. Those are in device/pdf.
 */
import type { HandoverPages, HandoverWords } from "./handover/index.js";

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

/** A hand-over as one page file that carries its pictures. */
export interface PageWish {
  readonly pages: HandoverPages;
  readonly words: HandoverWords;
  /** Pictures of the pages, each once, no larger than `most` pixels on their longer side. */
  readonly hashes: readonly string[];
  readonly most: number;
  /** A typeface as WOFF2; the reader's own where none is given. */
  readonly font?: Uint8Array | undefined;
}

/** The finished page file, and how many pictures it could not hold. */
export interface MadePage {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly missing: number;
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
  /** Writes the page file; `onProgress` is told how many pictures of all lie in it. */
  page(wish: PageWish, pictures: PictureSource, onProgress: Progress): Printing<MadePage>;
}
