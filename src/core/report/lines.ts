/**
 * Several lines over one axis: level by frequency, swing by beat. Full, dashed and dotted, each with its words at its
 * end, what means something as a stroke across. Pure geometry; refuses to know what a line is of.
 */
import { halfOf, inside, type Label, placeLabels } from "./label-rows.js";
import type { LinesInput, LineTrace } from "./lines-terms.js";
import type { ScaleBox } from "./scale-terms.js";
import { type Drawing, n, type Shape, shape } from "./tree.js";

const MARGIN = 20;
/** Room for the figures of the heights, in letters. */
const FIGURES = 4;
const HEIGHT = 150;
const TICK = 6;
/** Air above the highest line, px. */
const TOP = 12;

interface Field {
  readonly x: (at: number) => number;
  readonly y: (height: number) => number;
  readonly left: number;
  readonly right: number;
  readonly foot: number;
}

function fieldOf({ axis, heights }: LinesInput, box: ScaleBox): Field {
  const left = MARGIN + FIGURES * 0.515 * box.text;
  const right = Math.max(left + 40, box.width - MARGIN);
  const foot = TOP + HEIGHT;
  const along = axis.by === "octaves" ? Math.log2 : (at: number) => at;
  const [from, to] = [along(axis.from), along(axis.to)];
  const share = (at: number): number => Math.min(1, Math.max(0, (along(at) - from) / (to - from)));
  const rise = (height: number): number => (height - heights.from) / (heights.to - heights.from);
  return {
    x: (at) => left + share(at) * (right - left),
    y: (height) => foot - Math.min(1, Math.max(0, rise(height))) * HEIGHT,
    left,
    right,
    foot,
  };
}

/** A line from its first point to its last; points off the axis are left out, not drawn at its end. */
function traceShape(trace: LineTrace, input: LinesInput, field: Field): readonly Shape[] {
  const points = trace.points.filter(({ at }) => at >= input.axis.from && at <= input.axis.to);
  if (points.length === 0) return [];
  const d = points.map(({ at, height }, i) => `${i === 0 ? "M" : "L"}${n(field.x(at))} ${n(field.y(height))}`);
  return [shape("path", { class: `trace ${trace.look}`, d: d.join("") })];
}

/** Which line is which: a short piece of each with its words, one below the other above the field. */
function legend(
  traces: readonly LineTrace[],
  box: ScaleBox,
): { readonly shapes: readonly Shape[]; readonly foot: number } {
  const row = box.text * 1.4;
  const shapes = traces.flatMap((trace, i) => {
    const y = row * (i + 0.5);
    return [
      shape("path", { class: `trace ${trace.look}`, d: `M${MARGIN} ${n(y)}h36` }),
      shape("text", { class: "words", x: MARGIN + 44, y: n(y + box.text * 0.35) }, [trace.text]),
    ];
  });
  return { shapes, foot: Math.ceil(row * traces.length) };
}

/** Moves what was drawn down by so many units. */
const lowered = (shapes: readonly Shape[], by: number): Shape =>
  shape("g", { transform: `translate(0 ${n(by)})` }, shapes);

/** The whole drawing for a box of `width` px and text of `text` px; without lines there is nothing to draw. */
export function linesDrawing(input: LinesInput, box: ScaleBox): Drawing {
  if (input.traces.length === 0) return { width: box.width, height: 0, shapes: [] };
  const field = fieldOf(input, box);
  const marks = input.marks.filter(({ at }) => at >= input.axis.from && at <= input.axis.to);
  const labels: Label[] = [
    ...input.figures.map(({ at, text }): Label => ({ text, x: field.x(at), look: "figure" })),
    ...[...marks].sort((a, b) => a.at - b.at).map(({ at, text }): Label => ({ text, x: field.x(at), look: "words" })),
  ];
  const written = placeLabels(labels, box, field.foot + TICK);
  const above = legend(input.traces, box);
  const ticks = input.figures.map(({ at }) => `M${n(field.x(at))} ${n(field.foot)}v${TICK}`).join("");
  const own = [
    ...input.heights.figures.map(({ at, text }) => {
      const half = halfOf({ text, look: "figure" }, box.text);
      const x = inside(field.left - half - 6, half, box.width);
      return shape("text", { class: "figure", x: n(x), y: n(field.y(at) + box.text * 0.35), "text-anchor": "middle" }, [
        text,
      ]);
    }),
    ...input.heights.figures.map(({ at }) =>
      shape("path", { class: "fine", d: `M${n(field.left)} ${n(field.y(at))}H${n(field.right)}` }),
    ),
    ...marks.map(({ at }) => shape("path", { class: "mark", d: `M${n(field.x(at))} ${TOP}V${n(field.foot + TICK)}` })),
    shape("path", { class: "base", d: `M${n(field.left)} ${n(field.foot)}H${n(field.right)}${ticks}` }),
    ...input.traces.flatMap((trace) => traceShape(trace, input, field)),
    ...written.shapes,
  ];
  return { width: box.width, height: above.foot + written.foot, shapes: [...above.shapes, lowered(own, above.foot)] };
}
