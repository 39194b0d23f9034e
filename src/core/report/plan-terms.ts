/** The words of the plan drawing, shared by its parts. Types only. */
import type { MarkKind } from "./marks.js";

export type PlanKind = "body" | "chassis";
/** Which side of the car one stands at, as seen from the driver's seat facing forward. */
export type PlanSide = "left" | "right";
/** Dotted, inked, warm. */
export type PlaceLook = "not-looked" | "done" | "here";

/** One place as the plan draws it. */
export interface PlanPlace {
  readonly id: string;
  readonly look: PlaceLook;
  /** Centre, 0–100 nose to tail, 0–100 left to right; only needed for places the drawing does not know. */
  readonly at?: readonly [number, number] | undefined;
  /** Worst grade standing there, drawn inboard. */
  readonly mark?: MarkKind | undefined;
  /** A letter that stands there in print. */
  readonly letter?: string | undefined;
}
