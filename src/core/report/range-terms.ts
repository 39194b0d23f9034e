/** What the ruler of an estimate is given. Types only; figures in the unit shown, each with its text as written. */

/** A figure on the ruler and what is written at it. */
export interface RangeFigure {
  readonly at: number;
  /** '€960', 'likely €960, 7 h': whole, in the person's language, and short: a drawing can't break a line. */
  readonly text: string;
}

/** An estimate from low to high, for money or hours alike. */
export interface RangeInput {
  readonly low: RangeFigure;
  readonly likely: RangeFigure;
  readonly high: RangeFigure;
  /** Enough four times in five. */
  readonly p80?: RangeFigure | undefined;
  /** The budget: the strongest stroke, on the ruler even when it lies far off. */
  readonly budget?: RangeFigure | undefined;
}
