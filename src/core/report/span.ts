/**
 * The strip of dates: days as a ruler, work as strokes in a row for each person, the lift as a band, shut days hatched,
 * arrivals as tall strokes. Pure geometry; refuses to know a calendar: days come counted and written.
 */
import { GAP, halfOf, inside, type Label, placeLabels } from "./label-rows.js";
import type { ScaleBox } from "./scale-terms.js";
import type { SpanInput, SpanMark, SpanRow, SpanStroke } from "./span-terms.js";
import { type Drawing, n, type Shape, shape } from "./tree.js";

const MARGIN = 20;
/** Narrower days get no stroke of their own: only those that are written. */
const LEAST_DAY = 4.5;
/** Height of a lift's band and of the hatching, px. */
const BAND = 9;
const HATCH = 7;
/** A stroke shorter than this can't be seen. */
const LEAST_STROKE = 3;
/** Air below a row, px. */
const ROW_GAP = 5;
const LONG = 12;
const SHORT = 6;

interface Strip {
  readonly x: (day: number) => number;
  readonly day: number;
  readonly box: ScaleBox;
}

/** A number above a stroke where it fits between its neighbours. */
function numbers(strokes: readonly SpanStroke[], strip: Strip, y: number): readonly Shape[] {
  let taken = Number.NEGATIVE_INFINITY;
  return strokes.flatMap((stroke) => {
    if (stroke.text === undefined) return [];
    const half = halfOf({ text: stroke.text, look: "figure" }, strip.box.text);
    const x = inside((strip.x(stroke.from) + strip.x(stroke.to)) / 2, half, strip.box.width);
    if (x - half < taken) return [];
    taken = x + half + 2;
    return [shape("text", { class: "figure", x: n(x), y: n(y), "text-anchor": "middle" }, [stroke.text])];
  });
}

/** One stroke of a row: work is full, waiting is dotted, the lift is a band one sees through. */
function strokeShape(stroke: SpanStroke, row: SpanRow, strip: Strip, y: number): Shape {
  const from = strip.x(stroke.from);
  const to = Math.max(from + LEAST_STROKE, strip.x(stroke.to));
  if (row.look === "lift") {
    return shape("rect", { class: "lift", x: n(from), y: n(y - BAND / 2), width: n(to - from), height: BAND });
  }
  return shape("path", { class: stroke.look === "waits" ? "waits" : "work", d: `M${n(from)} ${n(y)}H${n(to)}` });
}

/** A row: its name on a line of its own, numbers and strokes below; says how high it is. */
function rowShapes(
  row: SpanRow,
  strip: Strip,
  top: number,
): { readonly shapes: readonly Shape[]; readonly foot: number } {
  const { text } = strip.box;
  const named = top + text * 1.15;
  const strokes = [...row.strokes].sort((a, b) => a.from - b.from);
  const first = strokes.find((stroke) => stroke.text !== undefined);
  const nameEnd = MARGIN + 2 * halfOf({ text: row.text, look: "words" }, text);
  /** Numbers that begin behind the name stand on its line. */
  const below = first !== undefined && strip.x(first.from) < nameEnd + GAP;
  const y = named + (below ? text * 1.1 : 0) + 7;
  return {
    shapes: [
      shape("text", { class: "words", x: MARGIN, y: n(named - text * 0.25) }, [row.text]),
      ...numbers(strokes, strip, y - 7),
      ...strokes.map((stroke) => strokeShape(stroke, row, strip, y)),
    ],
    foot: y + BAND / 2 + ROW_GAP,
  };
}

/** Short slanted strokes over a shut day, as many as there is room for. */
function hatching(input: SpanInput, strip: Strip, y: number): readonly Shape[] {
  const d = input.days
    .map((day, index) => {
      if (!day.shut) return "";
      const count = Math.max(1, Math.floor(strip.day / 5));
      const gap = strip.day / count;
      return Array.from(
        { length: count },
        (_, i) => `M${n(strip.x(index) + gap * (i + 0.5) - 1.5)} ${n(y - 1)}l3 ${-HATCH}`,
      ).join("");
    })
    .join("");
  return d === "" ? [] : [shape("path", { class: "shut", d })];
}

/** A stroke where each day begins, taller where it is written; one more at the end of the last. */
function dayStrokes(input: SpanInput, strip: Strip, y: number): Shape {
  const every = strip.day >= LEAST_DAY;
  const d = input.days.map((day, index) => {
    if (!every && day.text === undefined) return "";
    return `M${n(strip.x(index))} ${n(y)}v${day.text === undefined ? SHORT : LONG}`;
  });
  return shape("path", { class: "fine", d: `${d.join("")}M${n(strip.x(input.days.length))} ${n(y)}v${SHORT}` });
}

/** Days written under the ruler, left out where they would touch. */
function dayLabels(input: SpanInput, strip: Strip): readonly Label[] {
  let taken = Number.NEGATIVE_INFINITY;
  return input.days.flatMap((day, index): readonly Label[] => {
    if (day.text === undefined) return [];
    const label = { text: day.text, look: "figure" as const, x: strip.x(index) };
    const half = halfOf(label, strip.box.text);
    const x = inside(label.x, half, strip.box.width);
    if (x - half < taken) return [];
    taken = x + half + 8;
    return [label];
  });
}

/** A stroke across all rows. */
const markShape = (mark: SpanMark, strip: Strip, top: number, foot: number): Shape =>
  shape("path", { class: `mark-${mark.look}`, d: `M${n(strip.x(mark.at))} ${n(top)}V${n(foot)}` });

/** The whole strip for a box of `width` px and text of `text` px; without days it has nothing to draw. */
export function spanDrawing(input: SpanInput, box: ScaleBox): Drawing {
  if (input.days.length === 0) return { width: box.width, height: 0, shapes: [] };
  const length = Math.max(40, box.width - 2 * MARGIN);
  const day = length / input.days.length;
  const strip: Strip = { day, box, x: (at) => MARGIN + Math.min(input.days.length, Math.max(0, at)) * day };
  const shapes: Shape[] = [];
  let foot = 0;
  for (const row of input.rows) {
    const drawn = rowShapes(row, strip, foot);
    shapes.push(...drawn.shapes);
    foot = drawn.foot;
  }
  const y = Math.ceil(foot + HATCH + 3);
  const marks = [...input.marks].sort((a, b) => a.at - b.at);
  const labels = placeLabels(
    [
      ...dayLabels(input, strip),
      ...marks.map((mark): Label => ({ text: mark.text, x: strip.x(mark.at), look: "words" })),
    ],
    box,
    y + LONG,
  );
  return {
    width: box.width,
    height: labels.foot,
    shapes: [
      ...hatching(input, strip, y),
      ...marks.map((mark) => markShape(mark, strip, 0, y + LONG)),
      ...shapes,
      shape("path", { class: "base", d: `M${n(strip.x(0))} ${n(y)}H${n(strip.x(input.days.length))}` }),
      dayStrokes(input, strip, y),
      ...labels.shapes,
    ],
  };
}
