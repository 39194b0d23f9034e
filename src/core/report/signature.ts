/** A signature as a drawing: its strokes smoothed through the middles between points. Refuses to know whose it is. */
import type { DrawnSignature } from "../record/decision-bodies.js";
import { type Drawing, n, type Shape, shape } from "./tree.js";

/** Radius of a dot: a stroke of one point. */
const DOT = 1.5;

function strokeShape(stroke: readonly number[]): Shape {
  const [x = 0, y = 0] = stroke;
  if (stroke.length < 4) return shape("circle", { class: "dot", cx: n(x), cy: n(y), r: DOT });
  const last = stroke.length - 2;
  let d = `M${n(x)} ${n(y)}`;
  for (let at = 2; at < last; at += 2) {
    const [px = 0, py = 0, nx = 0, ny = 0] = stroke.slice(at, at + 4);
    d += `Q${n(px)} ${n(py)} ${n((px + nx) / 2)} ${n((py + ny) / 2)}`;
  }
  return shape("path", { class: "stroke", d: `${d}L${n(stroke[last] ?? 0)} ${n(stroke[last + 1] ?? 0)}` });
}

/** The drawing in the box it was drawn in. */
export const signatureDrawing = ({ width, height, strokes }: DrawnSignature): Drawing => ({
  width,
  height,
  shapes: strokes.map(strokeShape),
});
