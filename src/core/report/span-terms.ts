/**
 * What the strip of dates is given. Types only. Days are counted from the first one shown: 0 is its beginning, 1.5 the
 * middle of the second.
 */

export interface SpanDay {
  /** `YYYY-MM-DD` */
  readonly day: string;
  readonly shut: boolean;
  /** Written under its beginning where there is room: '30 Nov' at the beginning of a week. */
  readonly text?: string | undefined;
}

/** Work or waiting between two moments. */
export interface SpanStroke {
  readonly id: string;
  readonly from: number;
  readonly to: number;
  /** Number of the job, written above where there is room. */
  readonly text?: string | undefined;
  /** `waits`: time between, drawn dotted. */
  readonly look?: "work" | "waits" | undefined;
}

/** A person, or the lift. */
export interface SpanRow {
  readonly id: string;
  readonly text: string;
  readonly look: "person" | "lift";
  readonly strokes: readonly SpanStroke[];
}

/** A moment across all rows: a part comes in, the day the car is wanted, the day it is ready. */
export interface SpanMark {
  readonly id: string;
  readonly at: number;
  readonly text: string;
  readonly look: "arrival" | "wanted" | "ready" | "today";
}

export interface SpanInput {
  readonly days: readonly SpanDay[];
  readonly rows: readonly SpanRow[];
  readonly marks: readonly SpanMark[];
}
