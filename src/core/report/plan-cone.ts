/** The lamp's cone from a place on the plan down to the pool below it. Geometry only. */
import { n, type Shape, shape } from "./tree.js";

export interface ConeInput {
  /** Middle and half width of the apex, and its height, in the drawing that holds plan and cone. */
  readonly x: number;
  readonly y: number;
  readonly half: number;
  readonly width: number;
  readonly height: number;
}

/** Half the foot of the cone, as a share of the whole width. */
const FOOT = 0.355;
/** The edge line lies half its own thickness inside the foot. */
const EDGE = 0.75;

/** Fill and edge of the cone; the edge goes on along the foot so that the pool below is closed by one line. */
export function coneShapes({ x, y, half, width, height }: ConeInput): readonly Shape[] {
  const foot = FOOT * width;
  const middle = Math.min(width - foot, Math.max(foot, x));
  const left = middle - foot;
  const right = middle + foot;
  const down = n(height - EDGE);
  return [
    shape("path", {
      class: "cone-fill",
      d: `M${n(x - half)} ${n(y)}L${n(x + half)} ${n(y)}L${n(right)} ${n(height)}L${n(left)} ${n(height)}Z`,
    }),
    shape("path", {
      class: "cone-edge",
      d: `M0 ${down}L${n(left)} ${down}L${n(x - half)} ${n(y)}M${n(x + half)} ${n(y)}L${n(right)} ${down}L${n(width)} ${down}`,
    }),
  ];
}
