/**
 * The ruler a reading is shown on: lamp over the value, its foot value ± uncertainty, limits as strokes, a mark in
 * each zone. Pure geometry in the unit shown; refuses to judge: what is past or too close is decided elsewhere.
 */
import { MARK_WIDTH, type MarkKind, markShapes } from "./marks.js";
import { labelRows } from "./scale-labels.js";
import type { ScaleBox, ScaleInput } from "./scale-terms.js";
import { graduation, type ScaleWindow, scaleWindow, ZONE_ROOM } from "./scale-window.js";
import { type Drawing, n, type Shape, shape } from "./tree.js";

export type { ScaleBox, ScaleEdge, ScaleInput } from "./scale-terms.js";

/** Heights, px: lamp's foot, ruler, foot of the limit strokes. */
const LAMP = 14;
const RULER = 98;
const LIMIT_FOOT = 138;
const MARGIN = 20;
/** The lamp's own half width. */
const APEX = 3;
/** A foot narrower than this can't be seen. */
const LEAST_FOOT = 4;
const KEPT = 26;
const LONG = 16;
const MIDDLE = 11;
const SHORT = 6;

interface Ruler {
  readonly window: ScaleWindow;
  readonly left: number;
  readonly right: number;
  readonly x: (value: number) => number;
}

/** The lamp with its cone: middle, half foot, whether lit. */
interface Lamp {
  readonly x: number;
  readonly half: number;
  readonly lit: boolean;
}

function lampOf(input: ScaleInput, ruler: Ruler): Lamp {
  if (input.reading === undefined) return { x: ruler.left, half: 0, lit: false };
  const { value, uncertainty } = input.reading;
  const half = (uncertainty / (ruler.window.to - ruler.window.from)) * (ruler.right - ruler.left);
  return {
    x: Math.min(ruler.right, Math.max(ruler.left, ruler.x(value))),
    half: Math.max(LEAST_FOOT, half),
    lit: true,
  };
}

/** Height of the cone's edge above a point of the ruler; the ruler itself outside the cone. */
function coneTop(lamp: Lamp, x: number): number {
  const off = Math.abs(x - lamp.x);
  if (!lamp.lit || off >= lamp.half) return RULER;
  return off <= APEX ? LAMP : LAMP + ((off - APEX) / (lamp.half - APEX)) * (RULER - LAMP);
}

function lampShapes(lamp: Lamp): readonly Shape[] {
  const { x, half, lit } = lamp;
  const cone = shape("path", {
    class: "cone",
    d: `M${n(x - APEX)} ${LAMP}H${n(x + APEX)}L${n(x + half)} ${RULER}H${n(x - half)}Z`,
  });
  const body = `M${n(x)} 0V8M${n(x - 6)} 7.5H${n(x + 6)}L${n(x + 3.5)} ${LAMP}H${n(x - 3.5)}Z`;
  return [...(lit ? [cone] : []), shape("path", { class: lit ? "lamp" : "lamp unlit", d: body })];
}

function graduationShapes(input: ScaleInput, ruler: Ruler, lamp: Lamp): readonly Shape[] {
  const { from, to } = ruler.window;
  const g = graduation(to - from, ruler.right - ruler.left, input.resolution);
  const strokes: Record<string, string[]> = { fine: [], strong: [], "fine in-lamp": [], "strong in-lamp": [] };
  for (let i = Math.ceil(from / g.step - 1e-6); i * g.step <= to + g.step * 1e-6; i++) {
    const x = ruler.x(i * g.step);
    const height = i % g.long === 0 ? LONG : i % g.middle === 0 ? MIDDLE : SHORT;
    const look = `${height === LONG ? "strong" : "fine"}${coneTop(lamp, x) <= RULER - height ? " in-lamp" : ""}`;
    strokes[look]?.push(`M${n(x)} ${RULER}V${RULER - height}`);
  }
  return Object.entries(strokes).flatMap(([look, d]) =>
    d.length === 0 ? [] : [shape("path", { class: look, d: d.join("") })],
  );
}

/** Readings kept before this one: strokes in the colour of the lamp's lead, taller than any graduation. */
function keptShapes(kept: readonly number[], ruler: Ruler, lamp: Lamp): readonly Shape[] {
  return kept.map((value) => {
    const x = ruler.x(value);
    const look = coneTop(lamp, x) <= RULER - KEPT ? "kept in-lamp" : "kept";
    return shape("path", { class: look, d: `M${n(x)} ${RULER}V${RULER - KEPT}` });
  });
}

/** Zone marks from the mildest on, in the middle of each stretch between edges where there is room. */
function zoneShapes(input: ScaleInput, ruler: Ruler): readonly Shape[] {
  const { edges, from, to } = ruler.window;
  const worse = [...input.edges].sort((a, b) => a.at - b.at);
  const bounds = [from, ...edges.map((e) => e.at), to];
  const size = input.nominal?.at;
  const clip = (value: number): number =>
    size === undefined ? value : input.direction === "over" ? Math.max(value, size) : Math.min(value, size);
  return bounds.slice(1).flatMap((end, i) => {
    const start = bounds[i] ?? from;
    // Beyond the nominal size lies nothing to be graded: the mark of the sound end stands before it.
    const [x1, x2] = [ruler.x(clip(start)), ruler.x(clip(end))];
    if (x2 - x1 < ZONE_ROOM) return [];
    const middle = (start + end) / 2;
    const passed =
      input.direction === "over" ? worse.filter((e) => e.at < middle).at(-1) : worse.find((e) => e.at > middle);
    const mark: MarkKind = passed?.grade ?? "sound";
    const left = (x1 + x2) / 2 - (MARK_WIDTH * 1.1) / 2;
    return [
      shape("g", { class: "mark", transform: `translate(${n(left)} ${RULER + 12}) scale(1.1)` }, markShapes(mark)),
    ];
  });
}

/** Limit strokes below the ruler; inside the cone they go on up to its edge, dark on the light. */
function limitShapes(ruler: Ruler, lamp: Lamp): readonly Shape[] {
  return ruler.window.edges.flatMap((edge) => {
    const x = ruler.x(edge.at);
    const top = Math.max(54, coneTop(lamp, x));
    const below = shape("path", { class: "limit", d: `M${n(x)} ${RULER}V${LIMIT_FOOT}` });
    return top < RULER ? [below, shape("path", { class: "limit in-lamp", d: `M${n(x)} ${RULER}V${n(top)}` })] : [below];
  });
}

/** The whole scale for a box of `width` px and text of `text` px; its height follows from how many rows of figures it needs. */
export function scaleDrawing(input: ScaleInput, box: ScaleBox): Drawing {
  const left = MARGIN;
  const right = Math.max(box.width - MARGIN, left + 40);
  const window = scaleWindow(input, right - left);
  const x = (value: number): number => left + ((value - window.from) / (window.to - window.from)) * (right - left);
  const ruler: Ruler = { window, left, right, x };
  const lamp = lampOf(input, ruler);
  const shown = input.limitsShown && input.reading !== undefined;
  const nominal = shown ? input.nominal : undefined;
  const labels = labelRows(input, ruler, box, shown ? LIMIT_FOOT : RULER);
  return {
    width: box.width,
    height: labels.foot,
    shapes: [
      ...lampShapes(lamp),
      shape("path", { class: "base", d: `M${n(left)} ${RULER}H${n(right)}` }),
      ...graduationShapes(input, ruler, lamp),
      ...(shown ? keptShapes(input.kept ?? [], ruler, lamp) : []),
      ...limitShapes(ruler, lamp),
      ...(nominal === undefined
        ? []
        : [shape("path", { class: "nominal", d: `M${n(x(nominal.at))} ${RULER}V${LIMIT_FOOT}` })]),
      ...(shown ? zoneShapes(input, ruler) : []),
      ...labels.shapes,
    ],
  };
}
