/** What was done to a car as its plan tells it: by whom, when, and whether anybody looked again since. Refuses nothing. */
import type { JobStepName, PlanState, Stamp, Stands } from "../../record/index.js";
import type { Grade } from "../../terms/index.js";
import { isSamePerson } from "../../terms/run.js";
import { inOrder } from "../progress/steps.js";
import type { IsoDate } from "../terms.js";

/** What a life hangs on. */
export type SecondLookAt = "brakes" | "steering" | "wheels" | "fuel";

/** A point that is looked at again once a job is done. */
export interface PointAt {
  readonly point: string;
  readonly place: string;
}

/** What the sheets say of a job, as far as handing back goes. */
export interface SheetSays {
  /** Absent for a job in somebody's own words. */
  readonly job?: {
    readonly access: readonly string[];
    readonly "second-look"?: SecondLookAt | undefined;
    readonly "recheck-km"?: number | undefined;
  };
  /** Where the points looked at afterwards are at this car. */
  readonly after: readonly PointAt[];
}

/**
 * What the newest answer to a point was judged to be: in order, a grade, or neither because what it hangs on is not
 * known (`unsettled`), or because it is half, contradicted or set aside by a rule (`unfit`).
 */
export interface AnswerTold {
  readonly at: Stamp;
  readonly is: "in order" | "unsettled" | "unfit" | Grade;
  /** As it was given. */
  readonly says: string;
}

/** Whom a point is asked: whoever makes this visit, somebody else only, or nobody because its sheet is not open. */
export type AskedOf = "this person" | "somebody else" | "nobody";

/** How the record is asked. */
export interface Asking {
  readonly says: (job: string, place: string) => SheetSays;
  /** The newest answer to a point, in this visit or a later one; a non-answer is none. */
  readonly answered: (at: PointAt) => AnswerTold | undefined;
  readonly askedOf: (at: PointAt) => AskedOf;
  readonly nameOf: (person: string) => string;
}

/** A point answered anew that was not found in order. */
export type AnsweredBadly = PointAt & Pick<AnswerTold, "is" | "says">;

/** `other`: somebody else than who did it · `same`: only who had done it, after a break · `none`: nobody since. */
export type Looked = "other" | "same" | "none";

export interface WorkTold extends PointAtJob {
  readonly stands: JobStepName;
  /** The day it was done, while it stands as done, and when that was told. */
  readonly doneOn?: IsoDate;
  readonly toldAt?: Stamp;
  /** Points to look at again that nobody has answered since. */
  readonly unanswered: readonly PointAt[];
  /** The same, where whoever makes this visit is not asked for them. */
  readonly forOthers: readonly PointAt[];
  /** The same, where no open sheet asks for them. */
  readonly unasked: readonly PointAt[];
  /** Answered since, and not in order. */
  readonly wanting: readonly AnsweredBadly[];
  /** In somebody's own words: what has to be looked at again is not known. */
  readonly isOwn: boolean;
  /** Somebody said that it was measured again. */
  readonly isMeasured: boolean;
  readonly secondLook?: SecondLookAt;
  readonly looked: Looked;
  /** Names of who looked a second time. */
  readonly lookers: readonly string[];
  readonly access: readonly string[];
  readonly recheckKm?: number;
}
interface PointAtJob {
  readonly job: string;
  readonly place: string;
}

export const isAfter = (a: Stamp, b: Stamp): boolean => a.wall > b.wall || (a.wall === b.wall && a.count > b.count);

type Step = PlanState["jobSteps"] extends ReadonlyMap<string, readonly (infer One)[]> ? One : never;

/** Every job of which a step was told, in order of their names. */
export function worksTold(said: Pick<PlanState, "jobSteps" | "secondLooks">, asking: Asking): readonly WorkTold[] {
  return [...said.jobSteps]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([key, steps]) => workTold(steps, said.secondLooks.get(key) ?? [], asking) ?? []);
}

function workTold(
  steps: readonly Step[],
  looks: readonly Stands<
    PlanState["secondLooks"] extends ReadonlyMap<string, readonly Stands<infer L>[]> ? L : never
  >[],
  { says, answered, askedOf, nameOf }: Asking,
): WorkTold | undefined {
  const told = inOrder(steps.map((step) => ({ value: { ...step.value, told: step } })));
  const last = told.at(-1);
  if (!last) return undefined;
  const { job, place, step: stands } = last;
  const { job: sheetJob, after } = says(job, place);
  const working = told.filter(({ step }) => step !== "measured-again").at(-1);
  const done = working?.step === "done" ? working : undefined;
  const since = (at: Stamp | undefined): boolean => at !== undefined && done !== undefined && isAfter(at, done.told.at);
  const doneBy = done ? nameOf(done.told.by) : "";
  const counting = looks.filter(({ at }) => since(at));
  // While nobody knows who did it, nobody can be told from them.
  const others = doneBy === "" ? [] : counting.filter(({ value }) => !value.same && !isSamePerson(value.who, doneBy));
  const anew = done ? after.map((at) => ({ at, answer: answered(at) })) : [];
  const missing = anew.flatMap(({ at, answer }) => (since(answer?.at) ? [] : [{ at, of: askedOf(at) }]));
  const left = (whom: AskedOf): readonly PointAt[] => missing.flatMap(({ at, of }) => (of === whom ? [at] : []));
  const secondLook = sheetJob?.["second-look"];
  const recheckKm = sheetJob?.["recheck-km"];
  return {
    job,
    place,
    stands,
    ...(done ? { doneOn: done.on, toldAt: done.told.at } : {}),
    unanswered: left("this person"),
    forOthers: left("somebody else"),
    unasked: left("nobody"),
    wanting: anew.flatMap(({ at, answer }) =>
      answer && since(answer.at) && answer.is !== "in order" ? [{ ...at, is: answer.is, says: answer.says }] : [],
    ),
    isOwn: sheetJob === undefined,
    isMeasured: stands === "measured-again",
    ...(secondLook === undefined ? {} : { secondLook }),
    looked: others.length > 0 ? "other" : counting.length > 0 ? "same" : "none",
    lookers: (others.length > 0 ? others : counting).map(({ value }) => value.who),
    access: sheetJob?.access ?? [],
    ...(recheckKm === undefined ? {} : { recheckKm }),
  };
}
