/**
 * What is told of a figure in the limits book beside the figure itself: what it holds under and for, whose it is, why it
 * came, and that a second person looked at it. Types and words only. A figure judges by itself: none of this decides.
 */

/** Whose figure it is, the most trusted first. Common practice, no source. */
export const FIGURE_TRUST = ["maker-this", "maker-sister", "supplier", "measured", "practice"] as const;
export type FigureTrust = (typeof FIGURE_TRUST)[number];

/** How it came: printed, in writing, by word of mouth, marked on the car or part, taken off a part, done that way here. */
export const FIGURE_WAYS = ["book", "letter", "word", "stamped", "measured", "practice"] as const;
export type FigureWay = (typeof FIGURE_WAYS)[number];

/** Longest words of one box; own choice: a line or two on a phone. */
export const FIGURE_WORDS_AT_MOST = 200;

/** Where a figure comes from, in the words of who entered it. */
export interface FigureSource {
  readonly trust: FigureTrust;
  readonly way: FigureWay;
  /** A book, or what a letter or a mark is. */
  readonly title?: string;
  readonly edition?: string;
  readonly page?: string;
  /** Who said or measured it. */
  readonly who?: string;
  /** ISO 8601 date of the letter, the word or the measuring. */
  readonly on?: string;
}

/** Which cars of the kind it is for, in words: facts about the car are for the sheets. */
export interface FigureFor {
  readonly build?: string;
  readonly engine?: string;
  /** Chassis or engine numbers, as the source writes them. */
  readonly from?: string;
  readonly to?: string;
}

/** A figure outside what is usual, kept on purpose: what was usual then, in `unit`. */
export interface FigureOdd {
  readonly low: number;
  readonly high: number;
  /** UCUM. */
  readonly unit: string;
}

export interface FigureTold {
  /** What it holds under: `cold`, `dry thread`. */
  readonly condition?: string;
  readonly holdsFor?: FigureFor;
  readonly source: FigureSource;
  readonly odd?: FigureOdd;
}

export interface LimitBodies {
  /**
   * `of` is the nonce of the entry that brought (or took out) the figure, made in the same act: its number is only given
   * when it is kept. `told` of a figure brought, `why` of one that replaces another or takes it out.
   */
  "limit.told": {
    readonly key: string;
    readonly of: string;
    readonly told?: FigureTold;
    readonly why?: string;
  };
  /** A second person compared the figure of the entry `of` with its source. */
  "limit.looked": { readonly key: string; readonly of: string; readonly who: string; readonly words?: string };
}
export type LimitKind = keyof LimitBodies;
