/**
 * Marks over a picture as a drawing in the picture's own pixels. Every line is drawn twice, dark under light, so that it
 * is read on any picture; its colours stand in the drawing itself, because a picture looks the same in every theme.
 * Made of lines, circles and texts only, so that any page can draw it.
 */
import type { PictureMark, Spot } from "../record/picture-bodies.js";
import type { PictureSize } from "./picture-length.js";
import { type Drawing, n, type Shape, shape } from "./tree.js";

export interface DrawnMark {
  readonly drawn: PictureMark;
  /** Written at it: its number, and the words or the length where there are any. */
  readonly label: string;
}

const DARK = "#101413";
const LIGHT = "#fffdf7";
/** In thousandths of the longer side. */
const LIGHT_WIDE = 5;
const DARK_WIDE = 12;
const HEAD = 34;
const CROSS = 16;
const TEXT = 54;
/** Letters in a row of words on a picture. */
const ROW = 20;
/** Of the length of an arrow's head, how far its two strokes stand out. */
const HEAD_OPEN = 0.45;

type Point = readonly [x: number, y: number];
type Stroke = { readonly line: readonly [Point, Point] } | { readonly centre: Point; readonly radius: number };

/** `nearer`: how many times larger the picture is looked at; lines stay as thin as they were. */
function sheetOf({ width, height }: PictureSize, nearer: number) {
  const unit = Math.max(width, height) / 1000 / nearer;
  const at = ([x, y]: Spot): Point => [x * width, y * height];
  return { unit, at };
}

function strokesOf(strokes: readonly Stroke[], unit: number): readonly Shape[] {
  const drawn = (colour: string, wide: number): readonly Shape[] =>
    strokes.map((one) => {
      const look = { fill: "none", stroke: colour, "stroke-width": n(wide * unit), "stroke-linecap": "round" };
      if ("radius" in one)
        return shape("circle", { cx: n(one.centre[0]), cy: n(one.centre[1]), r: n(one.radius), ...look });
      const [[x1, y1], [x2, y2]] = one.line;
      return shape("line", { x1: n(x1), y1: n(y1), x2: n(x2), y2: n(y2), ...look });
    });
  // All that is dark lies under all that is light, so that crossing strokes of one mark stay whole.
  return [...drawn(DARK, DARK_WIDE), ...drawn(LIGHT, LIGHT_WIDE)];
}

function headOf(from: Point, to: Point, size: number): readonly Stroke[] {
  const way = Math.atan2(to[1] - from[1], to[0] - from[0]);
  return [way + Math.PI - HEAD_OPEN, way + Math.PI + HEAD_OPEN].map((angle) => ({
    line: [to, [to[0] + size * Math.cos(angle), to[1] + size * Math.sin(angle)]],
  }));
}

/** A stroke across each end of a measured line. */
function endsOf(from: Point, to: Point, size: number): readonly Stroke[] {
  const way = Math.atan2(to[1] - from[1], to[0] - from[0]) + Math.PI / 2;
  const [dx, dy] = [(Math.cos(way) * size) / 2, (Math.sin(way) * size) / 2];
  return [from, to].map(([x, y]) => ({
    line: [
      [x - dx, y - dy],
      [x + dx, y + dy],
    ],
  }));
}

/** Words broken into rows short enough to stand over a picture. */
export function rowsOf(words: string): readonly string[] {
  const rows: string[] = [];
  for (const word of words.split(/\s+/).filter(Boolean)) {
    const last = rows.at(-1);
    if (last !== undefined && last.length + word.length < ROW) rows[rows.length - 1] = `${last} ${word}`;
    else rows.push(word);
  }
  return rows;
}

/** Words beside a point, to the side with more room, never over an edge. */
function labelOf(label: string, [x, y]: Point, { width, height }: PictureSize, unit: number): readonly Shape[] {
  const rows = rowsOf(label);
  const high = TEXT * unit;
  const goesLeft = x > width / 2;
  const top = Math.min(Math.max(y - high * 0.4, high), height - high * (rows.length - 0.6));
  return rows.map((row, index) =>
    shape(
      "text",
      {
        x: n(x + (goesLeft ? -1 : 1) * high * 0.5),
        y: n(top + index * high * 1.1),
        "text-anchor": goesLeft ? "end" : "start",
        "font-size": n(high),
        "font-weight": 650,
        fill: LIGHT,
        stroke: DARK,
        "stroke-width": n(DARK_WIDE * unit * 0.8),
        "stroke-linejoin": "round",
        "paint-order": "stroke",
      },
      [row],
    ),
  );
}

function markShapes({ drawn, label }: DrawnMark, size: PictureSize, nearer: number): readonly Shape[] {
  const { unit, at } = sheetOf(size, nearer);
  const told = (where: Point): readonly Shape[] => labelOf(label, where, size, unit);
  if (drawn.type === "words") return told(at(drawn.at));
  if (drawn.type === "ring") {
    const [centre, rim] = [at(drawn.at), at(drawn.rim)];
    const radius = Math.hypot(rim[0] - centre[0], rim[1] - centre[1]);
    return [...strokesOf([{ centre, radius }], unit), ...told([centre[0] + radius * 0.7, centre[1] - radius * 0.7])];
  }
  const [from, to] = [at(drawn.from), at(drawn.to)];
  if (drawn.type === "arrow")
    return [...strokesOf([{ line: [from, to] }, ...headOf(from, to, HEAD * unit)], unit), ...told(from)];
  const middle: Point = [
    (from[0] + to[0]) / 2,
    (from[1] + to[1]) / 2 - (drawn.type === "scale" ? 0 : TEXT * unit * 0.6),
  ];
  return [...strokesOf([{ line: [from, to] }, ...endsOf(from, to, HEAD * unit)], unit), ...told(middle)];
}

/** The marks of a picture, in the picture's own pixels. */
export function marksDrawing(size: PictureSize, marks: readonly DrawnMark[], nearer = 1): Drawing {
  return { ...size, shapes: marks.flatMap((mark) => markShapes(mark, size, nearer)) };
}

/** Spots being set: the ones that are, and the one that is moved about. */
export function spotsDrawing(size: PictureSize, set: readonly Spot[], here: Spot | undefined, nearer = 1): Drawing {
  const { unit, at } = sheetOf(size, nearer);
  const cross = (spot: Spot, arm: number): readonly Stroke[] => {
    const [x, y] = at(spot);
    const [near, far] = [arm * unit * 0.35, arm * unit * 2];
    return [
      {
        line: [
          [x - far, y],
          [x - near, y],
        ],
      },
      {
        line: [
          [x + near, y],
          [x + far, y],
        ],
      },
      {
        line: [
          [x, y - far],
          [x, y - near],
        ],
      },
      {
        line: [
          [x, y + near],
          [x, y + far],
        ],
      },
    ];
  };
  const strokes: readonly Stroke[] = [
    ...set.map((spot): Stroke => ({ centre: at(spot), radius: CROSS * unit })),
    ...(here ? cross(here, CROSS * 1.4) : []),
  ];
  return { ...size, shapes: strokesOf(strokes, unit) };
}

/** The picture with its marks as one drawing, for a page that stands alone; `href` is the picture's address or data. */
export function markedPicture(size: PictureSize, href: string, marks: readonly DrawnMark[]): Drawing {
  const picture = shape("image", { href, x: 0, y: 0, width: size.width, height: size.height });
  return { ...size, shapes: [picture, ...marksDrawing(size, marks).shapes] };
}
