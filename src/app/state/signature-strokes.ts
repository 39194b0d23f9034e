/** From points drawn on the glass to the strokes that are kept: whole numbers in the box, none closer than can be seen. */
import type { DrawnSignature } from "../../core/record/index.js";

export interface DrawnPoint {
  readonly x: number;
  readonly y: number;
}
export interface Glass {
  readonly width: number;
  readonly height: number;
  readonly strokes: readonly (readonly DrawnPoint[])[];
}

/** Points nearer than this to the last one kept say nothing more, px. */
const NEAREST = 3;
/** Far above any name, and half of what an entry holds. */
const POINTS_AT_MOST = 2_000;

/** Undefined while nothing is drawn. */
export function strokesOf({ width, height, strokes }: Glass): DrawnSignature | undefined {
  const box = { width: Math.round(width), height: Math.round(height) };
  let left = POINTS_AT_MOST;
  const kept = strokes.flatMap((points): readonly (readonly number[])[] => {
    const stroke = thinned(points, box).slice(0, left * 2);
    left -= stroke.length / 2;
    return stroke.length > 0 ? [stroke] : [];
  });
  return kept.length > 0 ? { ...box, strokes: kept } : undefined;
}

/** Shorter than this, all strokes together, px: a dot or a slip of the finger. Own choice: a third of the narrowest glass. */
const SHORTEST_NAME = 80;

/** Whether what is drawn may be a name at all. */
export function isName({ strokes }: DrawnSignature): boolean {
  const length = strokes.reduce((sum, stroke) => {
    let own = 0;
    for (let at = 2; at + 1 < stroke.length; at += 2)
      own += Math.hypot((stroke[at] ?? 0) - (stroke[at - 2] ?? 0), (stroke[at + 1] ?? 0) - (stroke[at - 1] ?? 0));
    return sum + own;
  }, 0);
  return length >= SHORTEST_NAME;
}

function thinned(points: readonly DrawnPoint[], { width, height }: Omit<Glass, "strokes">): readonly number[] {
  const stroke: number[] = [];
  let before: DrawnPoint | undefined;
  for (const [index, point] of points.entries()) {
    const isLast = index === points.length - 1;
    const isNear = before !== undefined && Math.hypot(point.x - before.x, point.y - before.y) < NEAREST;
    if (isNear && !(isLast && stroke.length === 2)) continue;
    before = point;
    stroke.push(within(point.x, width), within(point.y, height));
  }
  return stroke;
}

const within = (value: number, most: number): number => Math.min(most, Math.max(0, Math.round(value)));
