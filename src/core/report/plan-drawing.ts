/**
 * The plan of the car: body seen from above, or chassis seen through it, turned so that the side one stands at lies
 * at the bottom. An invented low-volume mid-engined sports car. Knows places by id and by `at`; refuses to know
 * screens, colours and what was found.
 */
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
  readonly at?: readonly [number, number];
  /** Worst grade standing there, drawn inboard. */
  readonly mark?: MarkKind;
  /** A letter that stands there in print. */
  readonly letter?: string;
}
