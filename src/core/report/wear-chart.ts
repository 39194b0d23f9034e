/**
 * Readings of one part over the years: strokes as tall as their uncertainty, limits as lines with their words, a cone
 * from the newest reading to the limit, visits as strokes on the time rule. Pure geometry; refuses to reckon.
 */
import { halfOf, inside } from "./label-rows.js";
import type { ScaleBox } from "./scale-terms.js";
import { type Drawing, n, type Shape, shape } from "./tree.js";
import type { WearChartInput, WearStroke } from "./wear-terms.js";

const MARGIN = 20;
const HEIGHT = 150;
const SMALL_HEIGHT = 62;
/** A stroke shorter than this can't be seen. */
const LEAST_STROKE = 4;
/** Ahead at most so many times the stretch looked back on: a limit further off lies beyond the drawing. */
const AHEAD = 2;
/** Air above and below, as a share of the stretch of values. */
const AIR = 0.12;
/** The narrowest foot of light, px. */
const LEAST_FOOT = 6;
const TICK = 6;
const VISIT = 11;

interface Plot {
  readonly x: (day: number) => number;
  readonly y: (value: number) => number;
  readonly from: number;
  readonly to: number;
  readonly top: number;
  readonly foot: number;
  readonly box: ScaleBox;
}

function stretchOf({ runs, cone, visits }: WearChartInput): readonly [number, number] {
  const days = [...runs.flat().map(({ day }) => day), ...visits];
  const [first, last] = [Math.min(...days), Math.max(...days)];
  const back = Math.max(30, last - first);
  const end = cone?.latest ?? cone?.earliest ?? last;
  return [first, Math.min(last + AHEAD * back, Math.max(last + 0.1 * back, end + 0.05 * back))];
}

function valuesOf({ runs, edges, cone }: WearChartInput): readonly [number, number] {
  const strokes = runs.flat().flatMap(({ value, uncertainty }) => [value - uncertainty, value + uncertainty]);
  // An edge far beyond the one that is met next would flatten all the rest.
  const met = cone === undefined ? edges.slice(0, 1).map(({ value }) => value) : [cone.edge];
  const all = [...strokes, ...met];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const air = (high - low || Math.abs(high) || 1) * AIR;
  return [low - air, high + air];
}

function plotOf(input: WearChartInput, box: ScaleBox): Plot {
  const [from, to] = stretchOf(input);
  const [low, high] = valuesOf(input);
  const top = input.small ? 3 : Math.ceil(box.text * 0.4);
  const foot = top + (input.small ? SMALL_HEIGHT : HEIGHT);
  const width = Math.max(40, box.width - 2 * MARGIN);
  return {
    from,
    to,
    top,
    foot,
    box,
    x: (day) => MARGIN + ((day - from) / (to - from)) * width,
    y: (value) => foot - 8 - ((value - low) / (high - low)) * (foot - 8 - top),
  };
}

/** Where a line from the newest reading ends: on the edge, or where the drawing does. */
function endOf(plot: Plot, start: WearStroke, day: number, edge: number): readonly [number, number] {
  if (day <= plot.to) return [plot.x(day), plot.y(edge)];
  const share = (plot.to - start.day) / (day - start.day);
  return [plot.x(plot.to), plot.y(start.value + (edge - start.value) * share)];
}

/** The light from the newest reading; open to the right where no latest can be told. */
function coneShapes(input: WearChartInput, plot: Plot): readonly Shape[] {
  const start = input.runs.at(-1)?.at(-1);
  const { cone } = input;
  if (!start || !cone) return [];
  const apex = `${n(plot.x(start.day))} ${n(plot.y(start.value))}`;
  const [ax, ay] = endOf(plot, start, cone.earliest, cone.edge);
  const open = [plot.x(plot.to), plot.y(start.value)] as const;
  const [bx, by] = cone.latest === undefined ? open : endOf(plot, start, cone.latest, cone.edge);
  const [left, right] = bx - ax < LEAST_FOOT && ay === by ? [ax - LEAST_FOOT / 2, ax + LEAST_FOOT / 2] : [ax, bx];
  // Cut off at the right, the light goes round the corner between edge and end of the drawing.
  const corner = ay !== by && ax < bx ? `L${n(right)} ${n(ay)}` : "";
  return [shape("path", { class: "cone", d: `M${apex}L${n(left)} ${n(ay)}${corner}L${n(right)} ${n(by)}Z` })];
}

/** Room something takes, px. */
interface Room {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
}
const touch = (a: Room, b: Room): boolean => a.left < b.right && b.left < a.right && a.top < b.foot && b.top < a.foot;

/** Where the light lies, as rooms from its apex to its foot: it widens on the way. */
function coneRooms(input: WearChartInput, plot: Plot): readonly Room[] {
  const start = input.runs.at(-1)?.at(-1);
  const { cone } = input;
  if (!start || !cone) return [];
  const [apexX, apexY] = [plot.x(start.day), plot.y(start.value)];
  const [footX, footY] = endOf(plot, start, cone.earliest, cone.edge);
  const far = cone.latest === undefined ? plot.x(plot.to) : endOf(plot, start, cone.latest, cone.edge)[0];
  const y = (share: number): number => apexY + (footY - apexY) * share;
  return [0, 0.25, 0.5, 0.75].map((share) => ({
    left: apexX + (footX - apexX) * share,
    right: Math.max(footX, far),
    top: Math.min(y(share), y(share + 0.25)),
    foot: Math.max(y(share), y(share + 0.25)),
  }));
}

/** Limits as lines; their words stand at an end where they touch neither a figure nor the light, above before below. */
function edgeShapes(input: WearChartInput, plot: Plot, figures: readonly Room[]): readonly Shape[] {
  const { text } = plot.box;
  const taken: Room[] = [...figures, ...coneRooms(input, plot)];
  return input.edges.flatMap((edge) => {
    const y = plot.y(edge.value);
    if (y < plot.top || y > plot.foot) return [];
    const right = plot.x(plot.to);
    const line = shape("path", { class: "edge", d: `M${MARGIN} ${n(y)}H${n(right)}` });
    if (input.small) return [line];
    const wide = 2 * halfOf({ text: edge.text, look: "words" }, text);
    const spots = [MARGIN, right - wide].flatMap((left) =>
      [y - text * 0.35, y + text].map((foot) => ({
        left,
        right: left + wide,
        top: foot - text,
        foot: foot + text * 0.2,
      })),
    );
    const inField = spots.filter(({ top, foot }) => top >= 0 && foot <= plot.foot);
    const spot = inField.find((one) => !taken.some((other) => touch(one, other))) ?? inField[0] ?? spots[0];
    if (!spot) return [line];
    taken.push(spot);
    return [line, shape("text", { class: "words", x: n(spot.left), y: n(spot.foot - text * 0.2) }, [edge.text])];
  });
}

/** Strokes of one series with a thin line between them, and the gap before the next one. */
function runShapes(input: WearChartInput, plot: Plot): readonly Shape[] {
  return input.runs.flatMap((run, index) => {
    const points = run.map(({ day, value }) => `${n(plot.x(day))} ${n(plot.y(value))}`);
    const strokes = run.map(({ day, value, uncertainty }) => {
      const half = Math.max(LEAST_STROKE, plot.y(value - uncertainty) - plot.y(value + uncertainty)) / 2;
      return `M${n(plot.x(day))} ${n(plot.y(value) - half)}v${n(2 * half)}`;
    });
    const [first, before] = [run[0], input.runs[index - 1]?.at(-1)];
    const middle = first && before ? plot.x((first.day + before.day) / 2) : undefined;
    return [
      ...(points.length > 1 ? [shape("path", { class: "run", d: `M${points.join("L")}` })] : []),
      shape("path", { class: "reading", d: strokes.join("") }),
      ...(middle === undefined
        ? []
        : [shape("path", { class: "gap", d: `M${n(middle - 5)} ${n(plot.top)}V${n(plot.foot)}m10 0V${n(plot.top)}` })]),
    ];
  });
}

/** The value beside its stroke, where it touches no other; with the room each takes. */
function valueLabels(input: WearChartInput, plot: Plot): readonly { readonly shape: Shape; readonly room: Room }[] {
  if (input.small) return [];
  const { text, width } = plot.box;
  let taken = Number.NEGATIVE_INFINITY;
  return [...input.runs.flat()].reverse().flatMap((stroke, index) => {
    const half = halfOf({ text: stroke.text, look: "figure" }, text);
    const x = inside(plot.x(stroke.day), half, width);
    if (index > 0 && x + half > taken) return [];
    taken = x - half - 4;
    const over = plot.y(stroke.value + stroke.uncertainty) - text * 0.4;
    const y = over - text > plot.top ? over : plot.y(stroke.value - stroke.uncertainty) + text * 1.2;
    const attrs = { class: "figure", x: n(x), y: n(y), "text-anchor": "middle" };
    return [
      {
        shape: shape("text", attrs, [stroke.text]),
        room: { left: x - half, right: x + half, top: y - text, foot: y + text * 0.2 },
      },
    ];
  });
}

/** The time rule: years as fine strokes with their number, visits as tall ones. */
function timeShapes(input: WearChartInput, plot: Plot): readonly Shape[] {
  const { foot, box } = plot;
  const years = input.years(plot.from, plot.to);
  const strokes = years.map((day) => `M${n(plot.x(day))} ${n(foot)}v${-TICK}`).join("");
  const visits = input.visits.map((day) => `M${n(plot.x(day))} ${n(foot)}v${-VISIT}`).join("");
  let taken = Number.NEGATIVE_INFINITY;
  const labels = input.small
    ? []
    : years.flatMap((day) => {
        const written = input.year(day);
        const half = halfOf({ text: written, look: "figure" }, box.text);
        const x = inside(plot.x(day), half, box.width);
        if (x - half < taken) return [];
        taken = x + half + 6;
        return [
          shape("text", { class: "figure", x: n(x), y: n(foot + box.text * 1.15), "text-anchor": "middle" }, [written]),
        ];
      });
  return [
    shape("path", { class: "base", d: `M${MARGIN} ${n(foot)}H${n(plot.x(plot.to))}` }),
    shape("path", { class: "fine", d: strokes }),
    shape("path", { class: "visit", d: visits }),
    ...labels,
  ];
}

/** The whole chart for a box of `width` px and text of `text` px; without a reading it has nothing to draw. */
export function wearChart(input: WearChartInput, box: ScaleBox): Drawing {
  if (input.runs.flat().length === 0) return { width: box.width, height: 0, shapes: [] };
  const plot = plotOf(input, box);
  const figures = valueLabels(input, plot);
  return {
    width: box.width,
    height: Math.ceil(plot.foot + (input.small ? 3 : box.text * 1.6)),
    shapes: [
      ...coneShapes(input, plot),
      ...timeShapes(input, plot),
      ...edgeShapes(
        input,
        plot,
        figures.map(({ room }) => room),
      ),
      ...runShapes(input, plot),
      ...figures.map((figure) => figure.shape),
    ],
  };
}
