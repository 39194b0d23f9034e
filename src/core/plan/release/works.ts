/** What was done to a car as its plan tells it: by whom, when, and whether anybody looked again since. Refuses nothing. */
import type { JobStepName, PlanState, Stamp, Stands } from "../../record/index.js";
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

/** How the record is asked. */
export interface Asking {
  readonly says: (job: string, place: string) => SheetSays;
  /** When a point was answered last, in this visit or a later one; a non-answer is none. */
  readonly answered: (at: PointAt) => Stamp | undefined;
  /** Whether a sheet that is open asks for it at all. */
  readonly isAsked: (at: PointAt) => boolean;
  readonly nameOf: (person: string) => string;
}

/** `other`: somebody else than who did it · `same`: only who had done it, after a break · `none`: nobody since. */
export type Looked = "other" | "same" | "none";

export interface WorkTold extends PointAtJob {
  readonly stands: JobStepName;
  /** The day it was done, while it stands as done. */
  readonly doneOn?: IsoDate;
  /** Points to look at again that nobody has answered since. */
  readonly unanswered: readonly PointAt[];
  /** Points the sheets name that none of the open ones asks for. */
  readonly unasked: readonly PointAt[];
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

const isAfter = (a: Stamp, b: Stamp): boolean => a.wall > b.wall || (a.wall === b.wall && a.count > b.count);
/** Names as people write them: blanks and capitals tell nobody apart. */
export const isSamePerson = (a: string, b: string): boolean => {
  const plain = (name: string): string => name.trim().replace(/\s+/g, " ").toLowerCase();
  return plain(a) !== "" && plain(a) === plain(b);
};

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
  { says, answered, isAsked, nameOf }: Asking,
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
  const asked = after.filter(isAsked);
  const secondLook = sheetJob?.["second-look"];
  const recheckKm = sheetJob?.["recheck-km"];
  return {
    job,
    place,
    stands,
    ...(done ? { doneOn: done.on } : {}),
    unanswered: done ? asked.filter((at) => !since(answered(at))) : [],
    unasked: done ? after.filter((at) => !isAsked(at)) : [],
    isOwn: sheetJob === undefined,
    isMeasured: stands === "measured-again",
    ...(secondLook === undefined ? {} : { secondLook }),
    looked: others.length > 0 ? "other" : counting.length > 0 ? "same" : "none",
    lookers: (others.length > 0 ? others : counting).map(({ value }) => value.who),
    access: sheetJob?.access ?? [],
    ...(recheckKm === undefined ? {} : { recheckKm }),
  };
}
