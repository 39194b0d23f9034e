/**
 * What stands against handing a car back, each with what it is about. Nothing is weighed up: one thing that refuses is
 * enough, and no good news takes it away. Rules: SPEC.md, RL.
 */
import type { Fault, GateState } from "../../assess/contract.js";
import type { PartPlace, PartStands } from "../progress/parts.js";
import type { StillLoose } from "../progress/progress.js";
import type { ComplaintStands } from "./complaints.js";
import type { PointAt, SecondLookAt, WorkTold } from "./works.js";

/**
 * `danger`: it may not be driven, whoever wants it · `refuses`: put right first · `told`: said to whoever takes the car,
 * and refuses nothing.
 */
export type Weight = "danger" | "refuses" | "told";

export type Against = { readonly weight: Weight } & (
  | { readonly is: "dangerous"; readonly fault: string; readonly place: string; readonly isDone: boolean }
  | { readonly is: "gate"; readonly gate: string; readonly state: "tripped" | "not cleared" }
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
      readonly is: "unmeasured" | "unasked";
      readonly job: string;
      readonly place: string;
      readonly points: readonly PointAt[];
    }
  | {
      readonly is: "second-look" | "own-look";
      readonly job: string;
      readonly place: string;
      readonly at: SecondLookAt;
      /** Who did it looked again, and nobody else. */
      readonly isSame: boolean;
    }
  | { readonly is: "complaint"; readonly complaint: string; readonly text: string }
);

export interface HandingBack {
  /** As judged with everything that was answered since. */
  readonly faults: readonly Pick<Fault, "fault" | "place" | "grade" | "jobs">[];
  /** `isUnproven`: somebody noted why it is passed all the same. */
  readonly gates: readonly (Pick<GateState, "gate" | "guards" | "state"> & { readonly isUnproven: boolean })[];
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
    ...given.complaints.flatMap(({ id, text, answer }): readonly Against[] =>
      answer === undefined ? [{ weight: "told", is: "complaint", complaint: id, text }] : [],
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

const [ROAD, AWAY, SPARK] = ["w4-road", "drive-away", "spark"];

/** The gate before driving away has to be open; the road's and the one before sparks must not be shut. */
function gates({ gates: all }: HandingBack): readonly Against[] {
  const isAwayShut = all.some(({ guards, state }) => guards === AWAY && state === "tripped");
  return all.flatMap(({ gate, guards, state, isUnproven }): readonly Against[] => {
    const mayRefuse =
      guards === AWAY || (state === "tripped" && (guards === SPARK || (guards === ROAD && !isAwayShut)));
    if (state === "cleared" || !mayRefuse) return [];
    if (state === "tripped") return [{ weight: "danger", is: "gate", gate, state }];
    return [{ weight: isUnproven ? "told" : "refuses", is: "gate", gate, state }];
  });
}

function ofWork(work: WorkTold, { isAlone }: HandingBack): readonly Against[] {
  const { job, place, stands, doneOn, unanswered, unasked, isOwn, isMeasured, secondLook, looked } = work;
  if (doneOn === undefined)
    return stands === "begun"
      ? [{ weight: "refuses", is: "unfinished", job, place }]
      : [{ weight: "told", is: "waiting", job, place }];
  const isUnmeasured = unanswered.length > 0 || (isOwn && !isMeasured);
  const isLookMissing = secondLook !== undefined && looked !== "other" && !(looked === "same" && isAlone);
  return [
    ...(isUnmeasured ? [{ weight: "refuses", is: "unmeasured", job, place, points: unanswered } as const] : []),
    ...(unasked.length > 0 ? [{ weight: "told", is: "unasked", job, place, points: unasked } as const] : []),
    ...(isLookMissing
      ? [
          {
            weight: "refuses",
            is: "second-look",
            job,
            place,
            at: secondLook,
            isSame: looked === "same",
          } as const,
        ]
      : []),
    ...(secondLook !== undefined && !isLookMissing && looked === "same"
      ? [{ weight: "told", is: "own-look", job, place, at: secondLook, isSame: true } as const]
      : []),
  ];
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
