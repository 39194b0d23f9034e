/**
 * A hand-over in words, as nested blocks: what every form that is read (page, text, printed sheet) is drawn from, so
 * that all of them say the same. Types only; knows no mark-up, no fonts, no sizes.
 */
import type { MarkKind } from "../marks.js";
import type { Drawing } from "../tree.js";
import type { SignalWord } from "./input.js";

/** The whole document. `title` names it in a list of files and in a window. */
export interface HandoverPages {
  readonly lang: string;
  readonly title: string;
  /** Under the title: whose car, when. */
  readonly subtitle: string;
  /** Foot of every page, without the number. */
  readonly foot: string;
  readonly blocks: readonly Block[];
  /** So many of the blocks are the first page: what must be read, the cautions with it, a buyer's figures. */
  readonly first: number;
}

export type Block =
  | { readonly is: "heading"; readonly level: 2 | 3; readonly text: string; readonly newPage?: boolean | undefined }
  /** `strong`: the one sentence of the first page. `small`: remarks. */
  | { readonly is: "text"; readonly text: string; readonly look?: "strong" | "small" | undefined }
  | { readonly is: "list"; readonly items: readonly string[]; readonly numbered?: boolean | undefined }
  /** Name and value pairs. */
  | { readonly is: "pairs"; readonly pairs: readonly (readonly [name: string, value: string])[] }
  | { readonly is: "table"; readonly table: TableBlock }
  | { readonly is: "caution"; readonly caution: CautionBlock }
  | { readonly is: "finding"; readonly finding: FindingBlock }
  | { readonly is: "drawing"; readonly drawing: Drawing; readonly label: string }
  | { readonly is: "picture"; readonly picture: PictureBlock }
  /** The marks with their words. */
  | { readonly is: "key"; readonly marks: readonly { readonly mark: MarkKind; readonly word: string }[] }
  /** Who signed for what; drawn over it where it was drawn. */
  | { readonly is: "signature"; readonly words: string; readonly drawing?: Drawing | undefined }
  /** Lines to sign on. */
  | { readonly is: "sign"; readonly lines: readonly string[] };

export interface TableBlock {
  readonly caption: string;
  readonly head: readonly { readonly text: string; readonly isFigure?: boolean | undefined }[];
  readonly rows: readonly TableRow[];
}
/** The first cell names the row. */
export interface TableRow {
  readonly mark?: MarkKind | undefined;
  readonly cells: readonly string[];
  /** Under the row, over its whole width. */
  readonly notes?: readonly string[] | undefined;
}

export interface CautionBlock {
  readonly signal: SignalWord;
  readonly word: string;
  readonly not: string;
  readonly lines: readonly string[];
}

export interface FindingBlock {
  readonly letter: string;
  readonly mark: MarkKind;
  /** The grade in a word: no mark stands alone. */
  readonly word: string;
  readonly title: string;
  readonly where: string;
  /** How sure, too close, by hand, on what terms. */
  readonly says: readonly string[];
  /** The because: what kind of step, and what it says. */
  readonly steps: readonly { readonly kind: string; readonly says: string }[];
  readonly after: readonly string[];
  readonly pictures: readonly PictureBlock[];
}

export interface PictureBlock {
  readonly hash: string;
  readonly caption: string;
  readonly width: number;
  readonly height: number;
  readonly marks?: Drawing | undefined;
}
