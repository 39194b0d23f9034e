/**
 * How a limit's facts are written down: edges in the notes' own unit, how they are passed, on what they rest, and where
 * the sheets differ on purpose. Knows no limit.
 */
import type { Basis } from "../../src/core/terms/index.js";

/** How an edge is passed. */
export type Sense = ">" | "≥" | "<" | "≤";
/** Edges of advisory, minor, major, dangerous; null: no such step. */
export type Edges = readonly [
  advisory: number | null,
  minor: number | null,
  major: number | null,
  dangerous: number | null,
];

/** What a figure rests on. */
export interface Rests {
  readonly basis: Basis;
  /** Document and clause, or one of the two phrases that say there is none. */
  readonly source: string;
  /** Words that must stand in the sheet's own source. */
  readonly named: string;
}
export interface LimitFact {
  readonly limit: string;
  readonly unit: string;
  readonly sense: Sense;
  readonly edges: Edges;
  readonly rests: Rests;
  /** The sheets say otherwise on purpose: what they say, in the same unit, and why. */
  readonly ours?: { readonly edges: Edges; readonly because: string };
}

export const CP: Rests = { basis: "practice", source: "common practice, no source", named: "common practice" };
export const MEMORY: Rests = { basis: "unverified", source: "from memory", named: "from memory" };
export const published = (source: string, named: string): Rests => ({ basis: "published", source, named });
/** A figure published for something else, used here: practice. */
export const borrowed = (source: string, named: string): Rests => ({ basis: "practice", source, named });

export const fact = (limit: string, unit: string, sense: Sense, edges: Edges, rests: Rests): LimitFact => ({
  limit: `lim.${limit}`,
  unit,
  sense,
  edges,
  rests,
});
/** The same, said otherwise by the sheets. */
export const but = (of: LimitFact, edges: Edges, because: string): LimitFact => ({ ...of, ours: { edges, because } });

/** The notes name no figure at all; ours, and why there is a limit. */
const none: Edges = [null, null, null, null];
export const own = (limit: string, unit: string, sense: Sense, edges: Edges, because: string, rests = CP): LimitFact =>
  but(fact(limit, unit, sense, none, rests), edges, because);
