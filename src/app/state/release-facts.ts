/**
 * A visit with its plan as handing back asks for it: what the sheets say of each job done, when each point was answered
 * last, who did what. Weighs nothing; pure.
 */
import type { Assessment } from "../../core/assess/contract.js";
import { type ComplaintStands, type HandingBack, progressOf, type WorkTold, worksTold } from "../../core/plan/index.js";
import type { HouseState, PlanState, VisitState } from "../../core/record/index.js";
import type { PlaceTree } from "../../core/sheet/run.js";
import type { IsoDate } from "../../core/terms/index.js";
import type { Knowledge } from "./knowledge.js";
import { last } from "./plan-input.js";
import { lookedAfter } from "./rechecks-in.js";
import { answeredAnew, askedOf, type JudgedVisit } from "./release-anew.js";

export interface Handing {
  readonly known: Knowledge;
  readonly tree: PlaceTree;
  readonly assessment: Assessment;
  readonly visit: VisitState;
  readonly said: PlanState;
  readonly house: HouseState | undefined;
  readonly today: IsoDate;
}

const personOf =
  ({ people }: Pick<PlanState, "people">) =>
  (person: string): string =>
    people.get(person)?.at(-1)?.value.name ?? "";

/** Every job of which something was told. `later`: what is answered in a later visit was looked at again too. */
export function worksIn(handing: Handing, later: readonly JudgedVisit[]): readonly WorkTold[] {
  const { known, assessment, said, visit } = handing;
  const visits = [{ visit, assessment }, ...later];
  return worksTold(said, {
    says: (job, place) => {
      const sheetJob = known.jobs.get(job)?.job;
      return { ...(sheetJob ? { job: sheetJob } : {}), after: lookedAfter(handing, job, place) };
    },
    answered: (at) => answeredAnew(known, visits, at),
    askedOf: (at) => askedOf(handing, at),
    nameOf: personOf(said),
  });
}

export function handingBack(
  { assessment, visit, said, house, today }: Handing,
  works: readonly WorkTold[],
  complaints: readonly ComplaintStands[],
): HandingBack {
  const progress = progressOf(said, today);
  return {
    faults: assessment.faults,
    gates: assessment.gates.map((gate) => ({
      ...gate,
      noted: visit.notes.findLast(({ value }) => value.point === gate.gate)?.at,
    })),
    works,
    loose: progress.ok ? progress.value.loose : [],
    parts: progress.ok ? progress.value.parts : [],
    complaints,
    isAlone: last(house?.calendar)?.people === 1,
  };
}
