/**
 * What a buyer takes to the table: what is due with its figures, reasons to walk away with what they rest on, what must
 * be cleared before any figure is named, what was claimed, what nobody could look at. Knows no words.
 */

import type { Three } from "../../terms/index.js";
import { guardsPrice } from "../../terms/run.js";
import type { ClaimTold, GateTold, MoneyTold, NotSeen } from "./input.js";
import type { Lettered } from "./lettering.js";
import type { Buying, LetteredFinding, NumberedJob, WalkAway } from "./model.js";
import { isSettled } from "./standing.js";
import { weightOf } from "./unseen.js";

/** Watched, not due: no price is asked off for it. */
const WATCH = 4;

interface Told {
  readonly notSeen: readonly NotSeen[];
  readonly money?: MoneyTold | undefined;
  /** As they stand once it is known what still stands. */
  readonly gates: readonly GateTold[];
  readonly claims?: readonly ClaimTold[] | undefined;
}

export function buyingOf({ findings, work }: Lettered, { notSeen, money, gates, claims }: Told): Buying {
  const due = work.filter(({ byWhen, doneOn }) => byWhen.class < WATCH && doneOn === undefined);
  const priced = due.flatMap(({ cost }) => (cost === undefined ? [] : [cost]));
  const asked = new Set(due.map(({ id }) => id));
  // One of which nobody knows what needs it is opened all the same.
  const openings = (money?.openings ?? []).filter(({ jobs }) => jobs.length === 0 || jobs.some((id) => asked.has(id)));
  const total = sumOf([...priced, ...openings.map(({ cost }) => cost)]);
  const held = gates.filter(({ guards, state }) => guardsPrice(guards) && state !== "cleared");
  const isShut = held.some(({ state }) => state === "tripped");
  return {
    due,
    openings: priced.length === 0 ? [] : openings,
    ...(priced.length === 0 || isShut ? {} : { total }),
    withoutFigure: due.length - priced.length,
    walkAway: findings.filter((one) => !isSettled(one)).flatMap((one) => walkAway(one, work) ?? []),
    held,
    claims: claims ?? [],
    risks: risksOf(notSeen),
  };
}

/** Column by column. */
export const sumOf = (all: readonly Three[]): Three =>
  all.reduce<Three>((sum, one) => [sum[0] + one[0], sum[1] + one[1], sum[2] + one[2]], [0, 0, 0]);

/** Items of Annex I to Directive 2014/45/EU under 6.1: chassis or frame and what is fixed to it. */
const STRUCTURE = /^EU 2014\/45 6\.1(?!\d)/;

/**
 * Dangerous, must stand, structure at major, worst outcome at major, or major with no work known. The first three rest
 * on the grade and the published item; the last two are our own rule.
 */
function walkAway(of: LetteredFinding, work: readonly NumberedJob[]): WalkAway | undefined {
  const { fault, place, letter, title, where, grade, mustStand, consequence, answersTo, numbers } = of;
  const told = { fault, place, letter, title, where };
  if (grade === "dangerous") return { ...told, basis: "graded-dangerous" };
  if (mustStand) return { ...told, basis: "must-stand" };
  if (grade !== "major") return undefined;
  const item = answersTo.find((one) => STRUCTURE.test(one));
  if (item !== undefined) return { ...told, basis: "structure", item };
  if (consequence === 1) return { ...told, basis: "worst-outcome" };
  return work.some(({ number }) => numbers.includes(number)) ? undefined : { ...told, basis: "no-work-known" };
}

/** Gravest first; what nobody has worked out counts as the gravest. What could have decided nothing is no risk. */
export function risksOf(notSeen: readonly NotSeen[]): readonly NotSeen[] {
  return notSeen.filter((one) => weightOf(one) > 0).sort((a, b) => weightOf(b) - weightOf(a));
}
