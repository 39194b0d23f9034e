/**
 * How urgent one finding is: severity, likelihood, rank, due class and the key it is ordered by.
 * Knows one finding at a time; never looks at another, so no number of small things can outrank one great one.
 */

import type { UrgencyKey, Why } from "../assess/contract.js";
import type { Grade } from "../terms/index.js";
import { levelOf } from "../terms/index.js";
import { type Band, bandOf, type Consequence, LIKELIHOODS, type Likelihood, rankOf } from "./matrix.js";

/** What urgency is worked out from. */
export interface Urgent {
  readonly id: string;
  readonly grade: Grade;
  /** Worst credible outcome of that failure. */
  readonly consequence: Consequence;
  /** Before the next planned visit. */
  readonly likelihood: Likelihood;
  /** The rule says the car must stand. */
  readonly mustStand: boolean;
  /** −1 laid up, 0 normal, +1 track, towing, long motorway. */
  readonly exposure: -1 | 0 | 1;
  /** A reading too close to an edge to call. */
  readonly close: boolean;
  /** The dangerous edge or the legal limit is already passed. */
  readonly limitPassed?: boolean;
  /** Way left to the limit over way to the next visit (same unit both); under 1 the limit comes first. */
  readonly left?: number;
  /** Position in the walk round the car. */
  readonly position: number;
}

export interface Urgency {
  readonly key: UrgencyKey;
  readonly severity: Consequence;
  readonly likelihood: Likelihood;
  readonly band: Band;
  /** Band high but not graded dangerous: ask for another look at grade or consequence. Never changes the grade. */
  readonly lookAgain: boolean;
  readonly why: readonly Why[];
}

/** The mildest severity a grade allows (our own rule): a dangerous fault is never less than catastrophic. */
const FLOOR: Readonly<Record<Grade, Consequence>> = { dangerous: 1, major: 3, minor: 4, advisory: 4 };

/** Half the way to the next visit: the half-life idea of plant inspection codes, carried over by choice. */
const HALF_WAY = 0.5;
const IMMOBILE_RANK = 5;
const STATED_RANK = 9;
const NEXT_VISIT_RANK = 17;

/** Likelihood from a trend: way left ÷ way to the next visit; ≤0 A, <½ B, <1 C, <2 D, else E (our own rule). */
export function likelihoodFromTrend(left: number): Likelihood {
  if (left <= 0) return "A";
  if (left < HALF_WAY) return "B";
  if (left < 1) return "C";
  return left < 2 ? "D" : "E";
}

/** The urgency of one finding, with the reasons in code and figures. */
export function urgencyOf(of: Urgent): Urgency {
  const floor = FLOOR[of.grade];
  // the less of two consequences is one of them
  const severity = Math.min(of.consequence, floor) as Consequence;
  const likelihood = likelihoodOf(of);
  const rank = rankOf(severity, likelihood);
  const band = bandOf(rank);
  const { due, because } = dueOf(of, severity, rank);
  const lookAgain = band === "high" && of.grade !== "dangerous";
  const why: Why[] = [
    { code: `due.${because}`, params: { class: due } },
    { code: "grade", params: { grade: of.grade } },
    { code: "rank", params: { rank, band, severity, likelihood } },
  ];
  if (of.exposure !== 0) why.push({ code: of.exposure > 0 ? "exposure.hard" : "exposure.laid-up", params: {} });
  if (of.close) why.push({ code: "measure-again", params: {} });
  if (lookAgain) why.push({ code: "look-again-at-grade", params: { band, grade: of.grade } });
  const key: UrgencyKey = {
    gate: of.grade === "dangerous" ? 0 : 1,
    due,
    rank,
    grade: of.grade,
    left: of.left ?? null,
    position: of.position,
    id: of.id,
  };
  return { key, severity, likelihood, band, lookAgain, why };
}

function likelihoodOf(of: Urgent): Likelihood {
  const stated = LIKELIHOODS.indexOf(of.likelihood);
  const atLeast = of.close ? Math.min(stated, LIKELIHOODS.indexOf("C")) : stated;
  const index = Math.min(LIKELIHOODS.length - 1, Math.max(0, atLeast - of.exposure));
  return LIKELIHOODS[index] ?? of.likelihood;
}

function dueOf(of: Urgent, severity: Consequence, rank: number): { due: UrgencyKey["due"]; because: string } {
  if (of.grade === "dangerous") {
    if (of.mustStand) return { due: 0, because: "must-stand" };
    if (rank <= IMMOBILE_RANK) return { due: 0, because: "dangerous-and-likely" };
    return { due: 1, because: "dangerous" };
  }
  if (severity === 1 && rank <= IMMOBILE_RANK) return { due: 1, because: "worst-outcome-and-likely" };
  if (of.limitPassed === true) return { due: 1, because: "limit-passed" };
  if (of.grade === "major") return { due: 2, because: "major" };
  if (rank <= STATED_RANK) return { due: 2, because: "rank" };
  if (of.left !== undefined && of.left < 1) return { due: 2, because: "limit-before-next-visit" };
  return rank <= NEXT_VISIT_RANK ? { due: 3, because: "rank" } : { due: 4, because: "rank" };
}

/** Which part of the key first tells two apart. */
export type KeyPart = "dangerous" | "due" | "rank" | "grade" | "left" | "position" | "id";

/** Compares by the key, first part first; ids by code unit. Zero only for the same id at the same place. */
export function compareKeys(a: UrgencyKey, b: UrgencyKey): { readonly sign: -1 | 0 | 1; readonly by: KeyPart } {
  const parts: readonly (readonly [KeyPart, number])[] = [
    ["dangerous", a.gate - b.gate],
    ["due", a.due - b.due],
    ["rank", a.rank - b.rank],
    ["grade", levelOf(b.grade) - levelOf(a.grade)],
    ["left", compareLeft(a.left, b.left)],
    ["position", a.position - b.position],
  ];
  for (const [by, difference] of parts) if (difference !== 0) return { sign: difference < 0 ? -1 : 1, by };
  return { sign: a.id < b.id ? -1 : a.id > b.id ? 1 : 0, by: "id" };
}

/** Nearer to its limit first; an unknown way counts as the longest. */
function compareLeft(a: number | null, b: number | null): number {
  if (a === b) return 0;
  if (a === null) return 1;
  return b === null ? -1 : a - b;
}
