/**
 * Which stretch of the ruler is shown and how it is graduated. Pure figures; refuses to know pixels of a screen
 * beyond how long the ruler is.
 */
import type { ScaleEdge, ScaleInput } from "./scale-terms.js";

/** Marks need this much room in a zone, px; narrower zones push far edges off the ruler. */
export const ZONE_ROOM = 24;
/** Air beyond the outermost figure, as a share of the span. */
const AIR = 0.12;

export interface ScaleWindow {
  readonly from: number;
  readonly to: number;
  /** Edges that lie on the ruler, ascending. */
  readonly edges: readonly ScaleEdge[];
}

const ascending = (edges: readonly ScaleEdge[]): readonly ScaleEdge[] => [...edges].sort((a, b) => a.at - b.at);

/** Span of the figures with air on both sides, inside the plausible window widened to hold the reading itself. */
function around(figures: readonly number[], [least, most]: readonly [number, number]): readonly [number, number] {
  const low = Math.min(...figures);
  const high = Math.max(...figures);
  const air = (high - low) * AIR || Math.abs(high) * AIR || (most - least) / 4 || 1;
  return [Math.max(Math.min(least, low), low - air), Math.min(Math.max(most, high), high + air)];
}

/** Narrowest gap between neighbouring edges, px, on a ruler of `length` px. */
function narrowest(edges: readonly ScaleEdge[], span: number, length: number): number {
  let least = Number.POSITIVE_INFINITY;
  edges.forEach((edge, i) => {
    const before = edges[i - 1];
    if (before !== undefined) least = Math.min(least, ((edge.at - before.at) / span) * length);
  });
  return least;
}

/** The edge farthest from the reading; there is always one among two. */
function withoutFarthest(edges: readonly ScaleEdge[], value: number): readonly ScaleEdge[] {
  const first = edges[0];
  const last = edges[edges.length - 1];
  if (first === undefined || last === undefined) return edges;
  return Math.abs(first.at - value) > Math.abs(last.at - value) ? edges.slice(1) : edges.slice(0, -1);
}

/**
 * The stretch shown: the plausible window while nothing is entered; then reading, kept readings, nominal size and as
 * many edges as leave every zone wide enough for its mark, nearest to the reading first.
 */
export function scaleWindow(input: ScaleInput, length: number): ScaleWindow {
  const { reading, window } = input;
  if (reading === undefined || !input.limitsShown) {
    const low = Math.min(window[0], reading?.value ?? window[0]);
    const high = Math.max(window[1], reading?.value ?? window[1]);
    return { from: low, to: high > low ? high : low + 1, edges: [] };
  }
  const own = [reading.value - reading.uncertainty, reading.value + reading.uncertainty, ...(input.kept ?? [])];
  const all = input.nominal === undefined ? own : [...own, input.nominal.at];
  let edges = ascending(input.edges);
  for (;;) {
    const [from, to] = around([...all, ...edges.map((e) => e.at)], window);
    if (edges.length < 3 || narrowest(edges, to - from, length) >= ZONE_ROOM) return { from, to, edges };
    edges = withoutFarthest(edges, reading.value);
  }
}

/** Graduations: step between strokes, and which strokes are middling and long. */
export interface Graduation {
  readonly step: number;
  readonly middle: number;
  readonly long: number;
}

/** Least room between strokes, px. */
const LEAST_GAP = 4.5;

/** A step of 1, 2 or 5 times a power of ten with room between strokes, not finer than the gauge reads. */
export function graduation(span: number, length: number, resolution = 0): Graduation {
  const least = Math.max((span / length) * LEAST_GAP, resolution);
  const power = 10 ** Math.floor(Math.log10(least));
  for (const [base, middle, long] of [
    [1, 5, 10],
    [2, 5, 25],
    [5, 2, 10],
  ] as const) {
    if (base * power >= least * 0.999) return { step: base * power, middle, long };
  }
  return { step: 10 * power, middle: 5, long: 10 };
}
