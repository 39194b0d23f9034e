/**
 * What stands against handing a car back, each with what it is about. Nothing is weighed up: one thing that refuses is
 * enough, and no good news takes it away. Rules: SPEC.md, RL.
 */
import type { Fault, GateState } from "../../assess/contract.js";
import type { Stamp } from "../../record/index.js";
import { levelOf } from "../../terms/index.js";
import { DRIVE_AWAY } from "../../terms/run.js";
import type { PartPlace, PartStands } from "../progress/parts.js";
import type { StillLoose } from "../progress/progress.js";
import { type ComplaintStands, openComplaints } from "./complaints.js";
import { type AnsweredBadly, isAfter, type PointAt, type SecondLookAt, type WorkTold } from "./works.js";

/**
 * `danger`: it may not be driven, whoever wants it · `refuses`: put right first · `told`: said to whoever takes the car,
 * and refuses nothing.
 */
export type Weight = "danger" | "refuses" | "told";

export type Against = { readonly weight: Weight } & (
  | { readonly is: "dangerous"; readonly fault: string; readonly place: string; readonly isDone: boolean }
  | {
      readonly is: "gate";
      readonly gate: string;
      readonly state: "tripped" | "not cleared";
      /** Somebody noted why it is passed, and work was done after that. */
      readonly isNoteOld: boolean;
    }
  /** No gate before driving away: nothing was asked that one would ask. */
  | { readonly is: "no-gate" }
  | {
      readonly is: "loose";
      readonly loose: string;
      readonly words: readonly string[];
      readonly what: StillLoose["what"];
    }
  | { readonly is: "unfinished" | "waiting"; readonly job: string; readonly place: string }
  | {
      readonly is: "part";
      readonly job: string;
      readonly place: string;
      readonly part: string;
      readonly stands: PartPlace;
    }
  | {
      readonly is: "unmeasured" | "for-others" | "unasked";
      readonly job: string;
      readonly place: string;
      readonly points: readonly PointAt[];
    }
  | {
      readonly is: "wanting";
      readonly job: string;
      readonly place: string;
      readonly points: readonly AnsweredBadly[];
    }
  | {
      readonly is: "second-look" | "own-look";
      readonly job: string;
      readonly place: string;
      readonly at: SecondLookAt;
      /** Who did it looked again, and nobody else. */
      readonly isSame: boolean;
    }
  | {
      readonly is: "complaint";
      readonly complaint: string;
      readonly text: string;
      /** Answered, and open all the same: something is needed first, or two answers differ. */
      readonly isAnswered: boolean;
    }
);

export interface HandingBack {
  /** As judged with everything that was answered since. */
  readonly faults: readonly Pick<Fault, "fault" | "place" | "grade" | "jobs">[];
  /** `noted`: when somebody noted why it is passed all the same. */
  readonly gates: readonly (Pick<GateState, "gate" | "guards" | "drives" | "state"> & {
    readonly noted?: Stamp | undefined;
  })[];
  readonly works: readonly WorkTold[];
  readonly loose: readonly StillLoose[];
  readonly parts: readonly PartStands[];
  readonly complaints: readonly ComplaintStands[];
  /** The house says that one person works in it. */
  readonly isAlone: boolean;
}

/** What stands against it, the gravest first. */
export function standsAgainst(given: HandingBack): readonly Against[] {
  const all = [
    ...dangerous(given),
    ...gates(given),
    ...given.loose.map(({ loose, words, what }): Against => ({ weight: "refuses", is: "loose", loose, words, what })),
    ...given.works.flatMap((work) => ofWork(work, given)),
    ...parts(given),
    ...openComplaints(given.complaints).map(
      ({ id, text, answer }): Against => ({
        weight: "told",
        is: "complaint",
        complaint: id,
        text,
        isAnswered: answer !== undefined,
      }),
    ),
  ];
  return WEIGHTS.flatMap((weight) => all.filter((one) => one.weight === weight));
}

const WEIGHTS: readonly Weight[] = ["danger", "refuses", "told"];

const HOLDS_NOTHING: readonly StillLoose["what"][] = ["loose", "off"];
/**
 * Whether it may be handed back not to be driven. A car on a trailer was winched and is strapped down: whatever is
 * loose or off may give way then as well. All else is told.
 */
export const mayBeMoved = (against: readonly Against[]): boolean =>
  against.every((one) => one.is !== "loose" || !HOLDS_NOTHING.includes(one.what));

/** Whether the car may be handed back to be driven. */
export const mayBeDriven = (against: readonly Against[]): boolean => against.every(({ weight }) => weight === "told");

function dangerous({ faults, works }: HandingBack): readonly Against[] {
  return faults.flatMap(({ fault, place, grade, jobs }): readonly Against[] => {
    if (grade !== "dangerous") return [];
    const isDone = works.some((work) => work.doneOn !== undefined && jobs.includes(work.job) && work.place === place);
    return [{ weight: "danger", is: "dangerous", fault, place, isDone }];
  });
}

const SPARK = "spark";

/**
 * The gate before driving away has to be open; the road's and the one before sparks must not be shut. A note why it is
 * passed unproven tells of the car as it was then: work done later is not in it.
 */
function gates({ gates: all, works }: HandingBack): readonly Against[] {
  const isAwayShut = all.some(({ guards, state }) => guards === DRIVE_AWAY && state === "tripped");
  const isLater = (noted: Stamp): boolean =>
    works.every(({ toldAt }) => toldAt === undefined || isAfter(noted, toldAt));
  const stand = all.flatMap(({ gate, guards, drives, state, noted }): readonly Against[] => {
    const isShut = state === "tripped" && (guards === SPARK || (drives && !isAwayShut));
    if (state === "cleared" || !(guards === DRIVE_AWAY || isShut)) return [];
    if (state === "tripped") return [{ weight: "danger", is: "gate", gate, state, isNoteOld: false }];
    const isPassed = noted !== undefined && isLater(noted);
    const isNoteOld = noted !== undefined && !isPassed;
    return [{ weight: isPassed ? "told" : "refuses", is: "gate", gate, state, isNoteOld }];
  });
  return all.some(({ guards }) => guards === DRIVE_AWAY) ? stand : [...stand, { weight: "told", is: "no-gate" }];
}

/** Worse than a reminder, or no judgement at all: then the work is not proven. */
const refuses = ({ is }: AnsweredBadly): boolean =>
  is === "unfit" || (is !== "unsettled" && is !== "in order" && levelOf(is) > levelOf("advisory"));

function ofWork(work: WorkTold, { isAlone }: HandingBack): readonly Against[] {
  const { job, place, stands, doneOn, isOwn, isMeasured } = work;
  if (doneOn === undefined)
    return stands === "begun"
      ? [{ weight: "refuses", is: "unfinished", job, place }]
      : [{ weight: "told", is: "waiting", job, place }];
  const { unanswered, forOthers, unasked, wanting } = work;
  const some = (
    weight: Weight,
    is: "unmeasured" | "for-others" | "unasked",
    points: readonly PointAt[],
    must = false,
  ) => (must || points.length > 0 ? [{ weight, is, job, place, points } as const] : []);
  const found = (weight: Weight, points: readonly AnsweredBadly[]) =>
    points.length > 0 ? [{ weight, is: "wanting", job, place, points } as const] : [];
  return [
    ...found("refuses", wanting.filter(refuses)),
    ...some("refuses", "unmeasured", unanswered, isOwn && !isMeasured),
    ...some("refuses", "for-others", forOthers),
    ...secondLooks(work, isAlone),
    ...some("told", "unasked", unasked),
    ...found(
      "told",
      wanting.filter((one) => !refuses(one)),
    ),
  ];
}

function secondLooks({ job, place, secondLook: at, looked }: WorkTold, isAlone: boolean): readonly Against[] {
  if (at === undefined || looked === "other") return [];
  if (looked === "same" && isAlone) return [{ weight: "told", is: "own-look", job, place, at, isSame: true }];
  return [{ weight: "refuses", is: "second-look", job, place, at, isSame: looked === "same" }];
}

/** Of jobs that are done: a part that was ordered is in the car, and was not found wanting, or has gone back. */
function parts({ works, parts: all }: HandingBack): readonly Against[] {
  const done = new Set(works.filter(({ doneOn }) => doneOn !== undefined).map(({ job, place }) => `${job}@${place}`));
  return all.flatMap(({ job, place, part, stands, failed }): readonly Against[] => {
    const isRight = stands === "sent-back" || (stands === "fitted" && failed.length === 0);
    if (!done.has(`${job}@${place}`) || isRight) return [];
    return [{ weight: "refuses", is: "part", job, place, part, stands }];
  });
}
