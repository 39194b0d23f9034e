/** What a drawing of several lines over one axis is given. Types only. */

/** A line to draw: a look of its own, so that no colour is needed to tell it from the others. */
export interface LineTrace {
  readonly id: string;
  /** Written at its end. */
  readonly text: string;
  readonly look: "full" | "dashed" | "dotted";
  readonly points: readonly { readonly at: number; readonly height: number }[];
}

/** A figure written on an axis. */
export interface LineFigure {
  readonly at: number;
  readonly text: string;
}

/** A place of the axis that means something: a stroke over all lines, its words below. */
export interface LineMark extends LineFigure {
  readonly id: string;
}

export interface LinesInput {
  readonly traces: readonly LineTrace[];
  readonly axis: { readonly from: number; readonly to: number; readonly by: "octaves" | "steps" };
  readonly figures: readonly LineFigure[];
  readonly heights: { readonly from: number; readonly to: number; readonly figures: readonly LineFigure[] };
  readonly marks: readonly LineMark[];
}
