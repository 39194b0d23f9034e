/** What the reading scale is given. Types only; figures in the unit shown. */
import type { Grade } from "../terms/index.js";

/** One edge of a limit in the unit shown. */
export interface ScaleEdge {
  readonly at: number;
  /** Grade of the zone that begins here. */
  readonly grade: Grade;
  /** The figure as it is written in the person's locale. */
  readonly text: string;
  /** Words under the figure, e.g. 'major limit'. */
  readonly caption?: string | undefined;
}

export interface ScaleInput {
  /** Worse above (`over`) or worse below (`under`) the edges. */
  readonly direction: "over" | "under";
  readonly edges: readonly ScaleEdge[];
  /** Absent: the lamp hangs unlit at the start. */
  readonly reading?: { readonly value: number; readonly uncertainty: number } | undefined;
  /** Readings kept before this one, drawn as small strokes. */
  readonly kept?: readonly number[] | undefined;
  /** The new or nominal size, dashed. */
  readonly nominal?: { readonly at: number; readonly text: string; readonly caption?: string | undefined } | undefined;
  /** Plausible window of the field, in the unit shown: the ruler shows this while nothing is entered, never more. */
  readonly window: readonly [number, number];
  /** Smallest step of the gauge in the unit shown: no graduation finer than this. */
  readonly resolution?: number | undefined;
  /** Limits stay hidden until a reading is entered. */
  readonly limitsShown: boolean;
  /** A figure as written in the locale, for graduations shown while limits are hidden. Default: decimal point. */
  readonly write?: ((value: number) => string) | undefined;
}

/** How the scale is laid out, in CSS px, so that text is never scaled with the drawing. */
export interface ScaleBox {
  readonly width: number;
  /** Size of its text, 15 at normal text size. */
  readonly text: number;
}
