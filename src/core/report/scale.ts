/**
 * The ruler a reading is shown on: lamp over the value, its foot value ± uncertainty, limits as strokes, a mark in
 * each zone. Pure geometry in the unit shown; refuses to judge: what is past or too close is decided elsewhere.
 */
import type { Grade } from "../terms/index.js";

/** One edge of a limit in the unit shown. */
export interface ScaleEdge {
  readonly at: number;
  /** Grade of the zone that begins here. */
  readonly grade: Grade;
  /** The figure as it is written in the person's locale. */
  readonly text: string;
  /** Words under the figure, e.g. 'major limit'. */
  readonly caption?: string;
}

export interface ScaleInput {
  /** Worse above (`over`) or worse below (`under`) the edges. */
  readonly direction: "over" | "under";
  readonly edges: readonly ScaleEdge[];
  /** Absent: the lamp hangs unlit at the start. */
  readonly reading?: { readonly value: number; readonly uncertainty: number };
  /** Readings kept before this one, drawn as small strokes. */
  readonly kept?: readonly number[];
  /** The new or nominal size, dashed. */
  readonly nominal?: { readonly at: number; readonly text: string; readonly caption?: string };
  /** Plausible window of the field, in the unit shown: the ruler never shows less than it needs, never more than this. */
  readonly window: readonly [number, number];
  /** Smallest step of the gauge in the unit shown: no graduation finer than this. */
  readonly resolution?: number;
  /** Limits stay hidden until a reading is entered. */
  readonly limitsShown: boolean;
}
