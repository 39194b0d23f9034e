/**
 * The seven marks: four grades, sound, and the two kinds of not looked at. Three codes at once: number of cuts,
 * solid/hollow/broken, outline. Refuses to know colour: everything is currentColor.
 */
import type { Grade } from "../terms/index.js";
import { type Drawing, n, type Shape, shape } from "./tree.js";

/** Worst first, as they stand in the count strip. */
export const MARKS = ["dangerous", "major", "minor", "advisory", "sound", "not-looked", "cannot-reach"] as const;
export type MarkKind = Grade | "sound" | "not-looked" | "cannot-reach";

/** Box of every mark, in units; the stick stands from x 3 to 13, the dangerous one from 1 to 15. */
export const MARK_WIDTH = 16;
export const MARK_HEIGHT = 20;
const LEFT = 3;
const RIGHT = 13;
const HOLLOW_LINE = 1.8;

/** A V cut: height of its middle, half its opening, how deep it goes. */
interface Cut {
  readonly y: number;
  readonly half: number;
  readonly depth: number;
}
const MINOR: readonly Cut[] = [{ y: 10, half: 3.1, depth: 7 }];
const MAJOR: readonly Cut[] = [
  { y: 6.3, half: 2.9, depth: 7 },
  { y: 13.7, half: 2.9, depth: 7 },
];
const DANGEROUS: readonly Cut[] = [4.6, 10, 15.4].map((y) => ({ y, half: 2.7, depth: 5.6 }));

/** The solid stick cut from the right, and from both sides when `both`. */
function solid(left: number, right: number, cuts: readonly Cut[], both: boolean): Shape {
  const down = cuts.map((c) => `V${n(c.y - c.half)}L${n(right - c.depth)} ${n(c.y)}L${n(right)} ${n(c.y + c.half)}`);
  const up = [...cuts]
    .reverse()
    .map((c) => `V${n(c.y + c.half)}L${n(left + c.depth)} ${n(c.y)}L${n(left)} ${n(c.y - c.half)}`);
  const d = `M${n(left)} 0H${n(right)}${down.join("")}V${MARK_HEIGHT}H${n(left)}${both ? up.join("") : ""}Z`;
  return shape("path", { d, fill: "currentColor" });
}

/** A stroked line figure in the colour of the text. */
function stroked(d: string, width = HOLLOW_LINE): Shape {
  return shape("path", { d, fill: "none", stroke: "currentColor", "stroke-width": width });
}

/** Edges of the hollow and broken sticks, half a line inside the solid one. */
const L = LEFT + HOLLOW_LINE / 2;
const R = RIGHT - HOLLOW_LINE / 2;
const T = HOLLOW_LINE / 2;
const B = MARK_HEIGHT - HOLLOW_LINE / 2;

/** Broken outline: four corners and two short pieces a side. */
const BROKEN = [
  `M${n(L)} 3.6V${n(T)}H6.2M9.8 ${n(T)}H${n(R)}V3.6`,
  `M${n(R)} 6.2V8.4M${n(R)} 11.6V13.8M${n(R)} 16.4V${n(B)}H9.8`,
  `M6.2 ${n(B)}H${n(L)}V16.4M${n(L)} 13.8V11.6M${n(L)} 8.4V6.2`,
].join("");

/** The shapes of a mark in its 16 × 20 box. */
export function markShapes(mark: MarkKind): readonly Shape[] {
  switch (mark) {
    case "dangerous":
      return [solid(1, 15, DANGEROUS, true)];
    case "major":
      return [solid(LEFT, RIGHT, MAJOR, false)];
    case "minor":
      return [solid(LEFT, RIGHT, MINOR, false)];
    case "advisory":
      return [stroked(`M${n(L)} ${n(T)}H${n(R)}V6.6L7.4 10L${n(R)} 13.4V${n(B)}H${n(L)}Z`)];
    case "sound":
      return [stroked(`M${n(L)} ${n(T)}H${n(R)}V${n(B)}H${n(L)}Z`)];
    case "not-looked":
      return [stroked(BROKEN)];
    case "cannot-reach":
      return [stroked(BROKEN), stroked("M.8 14.6L15.2 5.4", 2.6)];
  }
}

/** A mark as a drawing of its own. */
export function markDrawing(mark: MarkKind): Drawing {
  return { width: MARK_WIDTH, height: MARK_HEIGHT, shapes: markShapes(mark) };
}
