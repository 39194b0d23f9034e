/**
 * The owner's complaints as lines: the words as spoken, what they may come from, and the points they put first. A
 * suggestion where to look, never an answer. Pure.
 */
import type { Assessment } from "../../core/assess/contract.js";
import type { VisitState } from "../../core/record/index.js";
import { answerable, type Telling } from "./because.js";
import type { Knowledge } from "./knowledge.js";
import { byPoint, type PointRow, pointRow } from "./point-rows.js";

/** Points named under a complaint before the rest is counted. */
const MOST_FIRST = 3;

export interface ComplaintLine {
  readonly id: string;
  readonly text: string;
  /** What it may come from, the likeliest first. */
  readonly second?: string;
  /** Points it puts first that are still to be looked at, likeliest first. */
  readonly first: readonly PointRow[];
  /** How many more it puts first. */
  readonly more: number;
}

const listed = (known: Knowledge, complaint: string | undefined) =>
  known.complaints?.listed.find((one) => one.id === complaint);

/** Suspects of a known complaint, the likeliest first. */
function suspects(known: Knowledge, complaint: string | undefined): string | undefined {
  const text = complaint === undefined ? undefined : known.complaints?.texts[complaint];
  const found = listed(known, complaint);
  if (!text || !found) return undefined;
  const names = [...found.suspects]
    .sort((a, b) => b.weight - a.weight)
    .map(({ suspect }) => text.suspects[suspect] ?? suspect);
  return `${text.name}: ${names.join(", ")}`;
}

/** A point as lists of points name it: `pad.look@axle` is `pad.look` somewhere else. */
export const barePoint = (point: string): string => point.replace(/@.*$/, "").replaceAll("-", "_");

/** What is suggested because of this complaint, also where another one put the same point first before it. */
function suggestedBy(known: Knowledge, complaint: string | undefined, all: Assessment["suggested"]) {
  const points = new Set((listed(known, complaint)?.points ?? []).map(barePoint));
  return all.filter((one) => one.because === complaint || points.has(barePoint(one.point)));
}

/** Every complaint of a visit. In a closed visit nothing is suggested any more. */
export function complaintLines(
  telling: Telling,
  visit: Pick<VisitState, "complaints" | "closed">,
  suggested: Assessment["suggested"],
): readonly ComplaintLine[] {
  return visit.complaints.map(({ id, value }) => {
    const second = suspects(telling.known, value.complaint);
    const rows = visit.closed
      ? []
      : byPoint(answerable(telling, suggestedBy(telling.known, value.complaint, suggested))).map((waiting) =>
          pointRow(telling, waiting),
        );
    return {
      id,
      text: `“${value.text}”`,
      ...(second === undefined ? {} : { second }),
      first: rows.slice(0, MOST_FIRST),
      more: Math.max(0, rows.length - MOST_FIRST),
    };
  });
}
