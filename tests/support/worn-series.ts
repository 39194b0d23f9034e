/** Readings of one made-up part for tests of the trend: thousand km (or none) and value; the rest as one would expect. */
import type { Edge, Seen, SeriesInput, Way, Wears, WearWord } from "../../src/core/trend/index.js";

/** Thousand km on the clock, and the value read. */
export type Numbers = readonly (readonly [thousand: number | undefined, value: number])[];

/** As in the published examples. */
const U = 0.13;
const LEAST = 3;
/** About 10,000 km a year, unless a test says otherwise. */
const DAYS_PER_THOUSAND = 36.525;

export const edge = (grade: Edge["grade"], at: number): Edge => ({
  limit: "lim.made-up",
  grade,
  at,
  basis: "practice",
  source: "common practice, no source",
  isDefault: true,
});

export const seenAt = (thousand: number, value: number, more: Partial<Seen> = {}): Seen => ({
  visit: String(thousand),
  day: thousand * DAYS_PER_THOUSAND,
  km: thousand * 1000,
  value,
  uncertainty: U,
  method: ["part.thick"],
  gauges: ["gauge"],
  edges: [edge("major", LEAST)],
  ...more,
});

interface More {
  readonly way?: Way;
  readonly wears?: Wears;
  readonly uncertainty?: number;
  readonly edges?: readonly Edge[];
  readonly days?: readonly number[];
  /** By thousand km. */
  readonly words?: Readonly<Record<string, WearWord>>;
}

export function seriesFrom(numbers: Numbers, more: More = {}): SeriesInput {
  const { way = "down", wears = "use", uncertainty = U, edges, days, words = {} } = more;
  return {
    way,
    wears,
    seen: numbers.map(([thousand, value], i) => {
      const { km, ...seen } = seenAt(thousand ?? 0, value, {
        uncertainty,
        ...(edges ? { edges } : {}),
        ...(days ? { day: days[i] ?? 0, visit: String(i) } : {}),
      });
      return thousand === undefined ? seen : { ...seen, km: km ?? 0 };
    }),
    words: new Map(Object.entries(words)),
    done: [],
    away: [],
  };
}
