/** What a person with a clock has not looked at yet: how much of it, what there is no time for, what decides most. */
import type { Asked, Assessment } from "../../core/assess/contract.js";
import type { VisitState } from "../../core/record/contract.js";
import type { Audience } from "../../core/terms/index.js";
import type { Knowledge } from "./knowledge.js";
import { fitting } from "./order-by-need.js";
import { isAskedHere, isDone } from "./stops.js";

export interface StillOpen {
  readonly open: number;
  /** Of these, what does not fit into the time; undefined until the order of value is there. */
  readonly beyond: number | undefined;
  /** Those that can decide a major or dangerous fault, the gravest first. */
  readonly gravest: readonly Asked[];
}

interface OnVisit {
  readonly known: Knowledge;
  readonly who: Audience;
  readonly assessment: Pick<Assessment, "asked">;
  readonly visit: Pick<VisitState, "replies" | "stream">;
}

/** `seconds`: left for looking; without it there is no clock. */
export function stillWorth({ known, who, assessment, visit }: OnVisit, seconds = Number.POSITIVE_INFINITY): StillOpen {
  const open = assessment.asked.filter((one) => isAskedHere(known, who, one) && !isDone(known, visit.replies, one));
  const order = fitting(visit.stream, open, seconds);
  return { open: open.length, beyond: order?.beyond, gravest: order?.gravest ?? [] };
}
