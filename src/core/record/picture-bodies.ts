/**
 * What is said of a kept picture without touching it: marks drawn over it, and which earlier picture it was taken after.
 * Types and words only. Spots are parts of the picture's width and height, so that they hold at any size.
 */
type Replaces = { readonly replaces: readonly string[] };

/** From the left edge and from the upper one, each 0 to 1. */
export type Spot = readonly [x: number, y: number];

/**
 * The picture a mark lies over, as `pictureKey` has it. Not the bare hash: that would keep the bytes of an erased
 * picture.
 */
export type PictureKey = string;

/** How long something in the picture is known to be. */
export interface KnownLength {
  /** As typed: a decimal or a fraction. */
  readonly value: string;
  /** UCUM. */
  readonly unit: string;
}

/** `pick`: how far off each spot may be set, as a part of the picture's width. */
type Measured = { readonly from: Spot; readonly to: Spot; readonly pick: number };

export type PictureMark =
  | { readonly type: "arrow"; readonly from: Spot; readonly to: Spot }
  | { readonly type: "ring"; readonly at: Spot; readonly rim: Spot }
  | { readonly type: "words"; readonly at: Spot; readonly words: string }
  /** Two spots whose distance is known. */
  | (Measured & { readonly type: "scale"; readonly known: KnownLength })
  /** Two spots measured; `by` names the scale it is measured by. */
  | (Measured & { readonly type: "length"; readonly by: string });
export type MarkTool = PictureMark["type"];
export const MARK_TOOLS: readonly MarkTool[] = ["arrow", "ring", "words", "scale", "length"];

/** Longest words on a picture; own choice, so that they can be read over it. */
export const MARK_WORDS_AT_MOST = 60;

export interface PictureBodies {
  /** `mark` is the name it keeps however often it is mended; null takes it back. */
  "picture.mark": Replaces & {
    readonly picture: PictureKey;
    readonly mark: string;
    readonly drawn: PictureMark | null;
  };
  /** `after`: id of the earlier picture that was laid over the viewfinder, in whatever visit. */
  "picture.after": Replaces & { readonly picture: PictureKey; readonly after: string };
}
export type PictureKind = keyof PictureBodies;

/** Names a picture by its bytes. */
export const pictureKey = (blob: string): PictureKey => `sha256-${blob}`;
