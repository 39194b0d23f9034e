/**
 * Graduations instead of a bar: one stroke a point, tall when answered, taller and warm where one is, short to come.
 * Pure geometry; refuses to count anything itself.
 */
import { type Drawing, n, shape } from "./tree.js";

export type TickLook = "done" | "here" | "open";

const HEIGHT = 18;
/** From the foot of the ruler up, by look. */
const TOP: Readonly<Record<TickLook, number>> = { done: 8, here: 0, open: 13 };
const RUN = 122;
const WIDEST = 20;
/** More strokes than this can't be told apart at arm's length; neighbours are then drawn as one. */
const MOST = 41;

/** Neighbours joined so that at most {@link MOST} strokes are left; a joined stroke is done only when all of it is. */
function joined(ticks: readonly TickLook[]): readonly TickLook[] {
  if (ticks.length <= MOST) return ticks;
  const size = Math.ceil(ticks.length / MOST);
  const groups: TickLook[] = [];
  for (let i = 0; i < ticks.length; i += size) {
    const group = ticks.slice(i, i + size);
    groups.push(group.includes("here") ? "here" : group.every((t) => t === "done") ? "done" : "open");
  }
  return groups;
}

/** The graduations as a drawing, 18 units high and no wider than the run of the ruler, at most 125 where none is given. */
export function ticksDrawing(ticks: readonly TickLook[], run = RUN): Drawing {
  const strokes = joined(ticks);
  const gap = strokes.length < 2 ? 0 : Math.min(WIDEST, run / (strokes.length - 1));
  return {
    width: 3 + gap * Math.max(0, strokes.length - 1),
    height: HEIGHT,
    shapes: strokes.map((look, i) =>
      shape("path", { class: `tick ${look}`, d: `M${n(1.5 + gap * i)} ${HEIGHT}V${TOP[look]}` }),
    ),
  };
}
