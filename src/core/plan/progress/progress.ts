/**
 * How far a planned visit is: where each part stands, which jobs wait and until when, what is still loose, what was
 * done and not measured again. Worked out from what was told, never kept.
 */
import type { JobStepName, PlanBodies, PlanState } from "../../record/index.js";
import { fail, ok, type Problem, problem, type Result } from "../../terms/index.js";
import { dayNumber } from "../schedule/days.js";
import type { IsoDate } from "../terms.js";
import { daysPast, type PartStands, partStands } from "./parts.js";
import { inOrder, type Told } from "./steps.js";

export interface JobStands {
  readonly job: string;
  readonly place: string;
  readonly stands: JobStepName;
  readonly since: IsoDate;
  /** While it waits: the day to take it up again. Absent only where nobody named one, which is a gap. */
  readonly next?: IsoDate;
  /** Whole days past that day. */
  readonly overdueDays?: number;
  /** Minutes told with its steps, added up; absent where none were told. */
  readonly minutes?: number;
}

/** Something loose, drained, off or unplugged that nobody has put right. */
export interface StillLoose {
  readonly loose: string;
  readonly what: PlanBodies["left-loose"]["what"];
  /** Several where people differ. */
  readonly words: readonly string[];
  readonly place?: string;
  readonly on: IsoDate;
}

export interface Progress {
  readonly parts: readonly PartStands[];
  readonly jobs: readonly JobStands[];
  /** Jobs that wait, the one to be taken up first in front; without a day, before all others. */
  readonly waiting: readonly JobStands[];
  /** Done, and not measured again since. */
  readonly unmeasured: readonly JobStands[];
  readonly loose: readonly StillLoose[];
  /** False while anything is loose: it is put right before the car leaves. */
  readonly mayLeave: boolean;
  /** What is wanting in what was told; nothing of it is made up. */
  readonly gaps: readonly Problem[];
}

type Steps = Pick<PlanState, "partSteps" | "jobSteps" | "loose" | "cleared">;

/** How far it is at a day. Fails where `at` is no day. */
export function progressOf(plan: Steps, at: IsoDate): Result<Progress> {
  if (dayNumber(at) === undefined) return fail(problem("progress.no-day", {}, { named: at }));
  const gaps: Problem[] = [];
  const parts: PartStands[] = [];
  for (const [, told] of byKey(plan.partSteps)) {
    const one = partStands(told, at);
    if (!one) continue;
    parts.push(one.part);
    gaps.push(...one.gaps);
  }
  const jobs = byKey(plan.jobSteps).flatMap(([, told]) => jobStands(told, at));
  const waiting = jobs.filter(({ stands }) => stands === "waiting").sort(byNext);
  for (const { job, place, next } of waiting)
    if (next === undefined) gaps.push(problem("progress.no-next", {}, { job, place }));
  const loose = looseIn(plan);
  return ok({
    parts,
    jobs,
    waiting,
    unmeasured: jobs.filter(({ stands }) => stands === "done"),
    loose,
    mayLeave: loose.length === 0,
    gaps,
  });
}

function jobStands(told: Told<PlanBodies["job.step"]>, at: IsoDate): readonly JobStands[] {
  const steps = inOrder(told);
  const last = steps.at(-1);
  if (!last) return [];
  const { job, place, step: stands, on: since } = last;
  const minutes = steps.flatMap((step) => step.minutes ?? []);
  const next = stands === "waiting" ? last.next : undefined;
  const overdueDays = daysPast(next, at);
  return [
    {
      job,
      place,
      stands,
      since,
      ...(next === undefined ? {} : { next }),
      ...(overdueDays === undefined ? {} : { overdueDays }),
      ...(minutes.length === 0 ? {} : { minutes: minutes.reduce((sum, one) => sum + one, 0) }),
    },
  ];
}

function looseIn({ loose, cleared }: Steps): readonly StillLoose[] {
  return byKey(loose).flatMap(([name, told]) => {
    const [first] = told;
    if (!first || (cleared.get(name) ?? []).length > 0) return [];
    const { what, place, on } = first.value;
    const words = [...new Set(told.map(({ value }) => value.words))];
    return [{ loose: name, what, words, ...(place === undefined ? {} : { place }), on }];
  });
}

const byCode = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
const byNext = (a: JobStands, b: JobStands): number =>
  byCode(a.next ?? "", b.next ?? "") || byCode(a.job, b.job) || byCode(a.place, b.place);
const byKey = <T>(map: ReadonlyMap<string, T>): readonly (readonly [string, T])[] =>
  [...map].sort(([a], [b]) => byCode(a, b));
