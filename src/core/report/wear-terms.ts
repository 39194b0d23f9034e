/** What the chart of a part's readings is given. Types only: values in the unit shown, times as days since 1970. */

export interface WearStroke {
  readonly day: number;
  readonly value: number;
  /** ±; the stroke is as tall. */
  readonly uncertainty: number;
  /** Written beside the stroke where there is room. */
  readonly text: string;
}
export interface WearEdge {
  readonly value: number;
  /** 'major 3 mm' */
  readonly text: string;
}
export interface WearChartInput {
  /** Oldest first; a new list is a new series, with a gap before it. */
  readonly runs: readonly (readonly WearStroke[])[];
  readonly edges: readonly WearEdge[];
  /** The light from the newest reading to the edge: days at which it is met. */
  readonly cone?:
    | { readonly edge: number; readonly earliest: number; readonly latest?: number | undefined }
    | undefined;
  /** Days of all visits of the car. */
  readonly visits: readonly number[];
  /** A year under the time rule. */
  readonly year: (day: number) => string;
  /** Days on which a year begins, over the stretch given. */
  readonly years: (from: number, to: number) => readonly number[];
  /** Without words and numbers, for a row. */
  readonly small?: boolean | undefined;
}
