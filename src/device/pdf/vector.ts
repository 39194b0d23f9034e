/**
 * Draws a drawing of core/report with the pen: the same shapes the screen shows, in ink. Knows the classes of the plan
 * and of a signature; refuses to know what they mean.
 */
import type { Drawing, Shape } from "../../core/report/index.js";
import { HAIR, INK, type LineLook, type Paint, type Pen } from "./pen.js";
import { type PathStep, pathSteps } from "./svg-path.js";

/** As in SVG: x' = ax + cy + e, y' = bx + dy + f. */
type Matrix = readonly [number, number, number, number, number, number];

/** Points from one step, turned and moved. */
const by = ([a, b, c, d, e, f]: Matrix, [m, n, o, p, q, r]: Matrix): Matrix => [
  a * m + c * n,
  b * m + d * n,
  a * o + c * p,
  b * o + d * p,
  a * q + c * r + e,
  b * q + d * r + f,
];
const spot = ([a, b, c, d, e, f]: Matrix, x: number, y: number): readonly [number, number] => [
  a * x + c * y + e,
  b * x + d * y + f,
];
/** How much longer lines become. */
const scaleOf = ([a, b, c, d]: Matrix): number => Math.sqrt(Math.abs(a * d - b * c));

/** Line widths in points on paper, whatever the size of the drawing: as on the screen. */
const LINES: Readonly<Record<string, LineLook>> = {
  ghost: { colour: HAIR, wide: 0.6 },
  "not-looked": { colour: "#66706b", wide: 1, dash: [0.3, 2.8] },
  done: { colour: INK, wide: 1.2 },
  here: { colour: INK, wide: 1.5 },
  stroke: { colour: INK, wide: 1 },
};
/** Its control points' distance for a quarter of a circle. */
const ROUND = 0.5523;

interface Look {
  readonly fill: string | undefined;
  readonly stroke: string | undefined;
  readonly wide: number;
}
const PLAIN: Look = { fill: INK, stroke: undefined, wide: 1 };

/** Into the box at (x, y), as large as it fits. */
export function drawVector(pen: Pen, drawing: Drawing, x: number, y: number, width: number, height: number): void {
  const scale = Math.min(width / drawing.width, height / drawing.height);
  const matrix: Matrix = [scale, 0, 0, scale, x, y];
  for (const one of drawing.shapes) drawShape(pen, one, matrix, PLAIN);
}

const numberOf = (shape: Shape, name: string, otherwise = 0): number => Number(shape.attrs[name] ?? otherwise);
const colourOf = (given: string | number | undefined, inherited: string | undefined): string | undefined =>
  given === undefined ? inherited : given === "none" ? undefined : given === "currentColor" ? INK : String(given);

function paintOf(shape: Shape, matrix: Matrix, look: Look): { readonly own: Look; readonly paint: Paint } {
  const classes = String(shape.attrs["class"] ?? "").split(" ");
  const line = classes.map((one) => LINES[one]).find((one) => one !== undefined);
  const own: Look = {
    fill: colourOf(shape.attrs["fill"], look.fill),
    stroke: colourOf(shape.attrs["stroke"], look.stroke),
    wide: numberOf(shape, "stroke-width", look.wide),
  };
  if (line) return { own, paint: { line } };
  const stroke = own.stroke === undefined ? undefined : { colour: own.stroke, wide: own.wide * scaleOf(matrix) };
  return { own, paint: { fill: own.fill, line: stroke, evenOdd: shape.attrs["fill-rule"] === "evenodd" } };
}

function drawShape(pen: Pen, shape: Shape, outer: Matrix, look: Look): void {
  const matrix = by(outer, transformOf(String(shape.attrs["transform"] ?? "")));
  const { own, paint } = paintOf(shape, matrix, look);
  switch (shape.tag) {
    case "g":
      for (const child of shape.children) if (typeof child !== "string") drawShape(pen, child, matrix, own);
      break;
    case "path":
      pen.path(moved(pathSteps(String(shape.attrs["d"] ?? "")), matrix), paint);
      break;
    case "line": {
      const c = (x: string, y: string) => [numberOf(shape, x), numberOf(shape, y)] as const;
      const steps: readonly PathStep[] = [
        { op: "m", c: c("x1", "y1") },
        { op: "l", c: c("x2", "y2") },
      ];
      pen.path(moved(steps, matrix), { ...paint, fill: undefined });
      break;
    }
    case "rect":
      pen.path(moved(boxSteps(shape), matrix), paint);
      break;
    case "circle":
      pen.path(moved(ovalSteps(shape), matrix), paint);
      break;
    case "text":
      drawText(pen, shape, matrix, own);
      break;
    default:
      throw new Error(`A drawing's <${shape.tag}> is not drawn on paper`);
  }
}

function moved(steps: readonly PathStep[], matrix: Matrix): readonly PathStep[] {
  return steps.map((step): PathStep => {
    if (step.op === "h") return step;
    const [x1, y1, x2, y2, x3, y3] = step.c;
    if (step.op !== "c") return { op: step.op, c: spot(matrix, x1, y1) };
    return {
      op: "c",
      c: [...spot(matrix, x1, y1), ...spot(matrix, x2 ?? 0, y2 ?? 0), ...spot(matrix, x3 ?? 0, y3 ?? 0)],
    };
  });
}

/** A box; its corners are rounded as far as it says. */
function boxSteps(shape: Shape): readonly PathStep[] {
  const [x, y, w, h] = ["x", "y", "width", "height"].map((name) => numberOf(shape, name)) as [
    number,
    number,
    number,
    number,
  ];
  const r = Math.min(numberOf(shape, "rx"), w / 2, h / 2);
  if (r === 0) return pathSteps(`M${x} ${y}H${x + w}V${y + h}H${x}Z`);
  const q = (cx: number, cy: number, tx: number, ty: number): string => `Q${cx} ${cy} ${tx} ${ty}`;
  return pathSteps(
    [
      `M${x + r} ${y}H${x + w - r}${q(x + w, y, x + w, y + r)}V${y + h - r}${q(x + w, y + h, x + w - r, y + h)}`,
      `H${x + r}${q(x, y + h, x, y + h - r)}V${y + r}${q(x, y, x + r, y)}Z`,
    ].join(""),
  );
}

function ovalSteps(shape: Shape): readonly PathStep[] {
  const [cx, cy, r] = [numberOf(shape, "cx"), numberOf(shape, "cy"), numberOf(shape, "r")];
  const k = r * ROUND;
  return pathSteps(
    [
      `M${cx + r} ${cy}C${cx + r} ${cy + k} ${cx + k} ${cy + r} ${cx} ${cy + r}`,
      `C${cx - k} ${cy + r} ${cx - r} ${cy + k} ${cx - r} ${cy}C${cx - r} ${cy - k} ${cx - k} ${cy - r} ${cx} ${cy - r}`,
      `C${cx + k} ${cy - r} ${cx + r} ${cy - k} ${cx + r} ${cy}Z`,
    ].join(""),
  );
}

const LETTER_SIZE = 13;
/** Height of a line of text on its ground, and how far it stands out, in parts of its size. */
const GROUND = { high: 1.2, low: 0.28, wide: 0.25 };

/** Text with an outline of its own stands on a ground of that colour: one text, readable on any picture. */
function drawText(pen: Pen, shape: Shape, matrix: Matrix, look: Look): void {
  const text = shape.children.filter((child) => typeof child === "string").join("");
  const size = numberOf(shape, "font-size", LETTER_SIZE) * scaleOf(matrix);
  const [x, y] = spot(matrix, numberOf(shape, "x"), numberOf(shape, "y"));
  const style = { size, bold: true, colour: look.fill ?? INK };
  const anchor = shape.attrs["text-anchor"];
  const at = anchor === "middle" || anchor === "end" ? anchor : "start";
  if (look.stroke !== undefined) {
    const wide = pen.width(text, style);
    const left = at === "start" ? x : x - wide / (at === "middle" ? 2 : 1);
    const out = GROUND.wide * size;
    pen.rect(left - out, y - (GROUND.high - GROUND.low) * size, wide + 2 * out, GROUND.high * size, {
      fill: look.stroke,
    });
  }
  pen.text(text, x, y, style, at);
}

const ASIS: Matrix = [1, 0, 0, 1, 0, 0];

/** What `transform` says, from left to right. */
function transformOf(text: string): Matrix {
  let all = ASIS;
  for (const [, name = "", inside = ""] of text.matchAll(/(\w+)\(([^)]*)\)/g)) {
    const [a = 0, b, c, d = 1, e = 0, f = 0] = inside
      .trim()
      .split(/[\s,]+/)
      .map(Number);
    if (name === "matrix") all = by(all, [a, b ?? 0, c ?? 0, d, e, f]);
    else if (name === "translate") all = by(all, [1, 0, 0, 1, a, b ?? 0]);
    else if (name === "scale") all = by(all, [a, 0, 0, b ?? a, 0, 0]);
    else if (name === "rotate") all = by(all, turned(a, b ?? 0, c ?? 0));
    else throw new Error(`The transform ${name} is not drawn on paper`);
  }
  return all;
}

function turned(degrees: number, x: number, y: number): Matrix {
  const angle = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return by(by([1, 0, 0, 1, x, y], [cos, sin, -sin, cos, 0, 0]), [1, 0, 0, 1, -x, -y]);
}
