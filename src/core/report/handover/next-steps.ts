/**
 * What next, in the order of doing: what keeps the car where it is, what comes before the next drive, what is grave, then
 * days and distances as they come, then looking again. Nothing stands in it twice. Knows no words.
 */
import type { Grade } from "../../terms/index.js";
import { isLook, lookId } from "./due-dates.js";
import { isPlanned } from "./first-page.js";
import type { HandoverInput } from "./input.js";
import type { Lettered } from "./lettering.js";
import type { CannotWait, DueDate, NextStep, NumberedJob, Verdict } from "./model.js";
import { gateState, isUnlooked, openComplaints, type Standing, unseenCount } from "./standing.js";

/** What the order is made from; all of it is worked out before. */
export interface Known {
  readonly pressing: readonly CannotWait[];
  readonly verdict: Verdict;
  readonly dates: readonly DueDate[];
  readonly standing: Standing;
}

/** Before the car is moved · before the next drive · before normal use. */
const STAGES = [0, 1, 2] as const;
type Stage = (typeof STAGES)[number];

const stageOfGrade = (grade: Grade): Stage => (grade === "dangerous" ? 0 : 2);

/**
 * Of the days at which something is looked at again only the soonest: thirty of them would bury what comes first. Looks
 * come in nearest first, for one that has a distance only may be nearer than one with a day.
 */
function soonestLook(dates: readonly DueDate[], { looks = [] }: HandoverInput): readonly DueDate[] {
  const told = looks.flatMap((look) => dates.find(({ id }) => id === lookId(look)) ?? []);
  const soonest = told[0] ?? dates.find(isLook);
  return dates.filter((one) => !isLook(one) || one === soonest);
}

/** Nothing on it is called optional, and nothing says that the rest can wait. */
export function nextSteps(input: HandoverInput, { work }: Lettered, known: Known): readonly NextStep[] {
  const { pressing, verdict, dates } = known;
  const done = (input.done ?? []).filter(isUnlooked);
  const unseen = unseenCount(input);
  const staged = STAGES.map((stage) => worksAt(stage, work, pressing));
  const [moving = [], driving = [], grave = []] = staged;
  const named = new Set(staged.flat().flatMap((step) => ("number" in step ? [step.number] : [])));
  return [
    ...(verdict.is === "do-not-drive" ? [{ is: "do-not-drive" } as const] : []),
    ...(input.loose?.length ? [{ is: "make-fast", what: input.loose.map(({ words }) => words) } as const] : []),
    ...moving,
    ...(input.visit.laidUp === true ? [] : shutGates(input, known)),
    ...driving,
    ...(done.length > 0 ? [{ is: "look-second", jobs: done.map(({ title }) => title) } as const] : []),
    ...grave,
    ...soonestLook(dates, input)
      .filter(({ is, number }) => is !== "job" && (number === undefined || !named.has(number)))
      .map((date) => ({ is: "date", date }) as const),
    ...openComplaints(input)
      .filter(({ answer }) => answer?.is !== "not-read")
      .map(
        ({ words, answer }) =>
          ({ is: "answer-complaint", words, ...(answer?.is === "needs" ? { needs: answer.what } : {}) }) as const,
      ),
    ...(unseen > 0 ? [{ is: "look-at-rest", count: unseen } as const] : []),
    ...(input.visit.laidUp === true ? [{ is: "wake-up" } as const] : []),
  ];
}

/** Findings to measure again or to agree on work for, work to decide on and agreed work, as far as it belongs here. */
function worksAt(stage: Stage, work: readonly NumberedJob[], pressing: readonly CannotWait[]): readonly NextStep[] {
  const here = pressing.filter(({ grade }) => stageOfGrade(grade) === stage);
  const graver = new Map<number, Stage>();
  for (const { grade, jobs } of pressing)
    for (const number of jobs) graver.set(number, least(graver.get(number) ?? 2, stageOfGrade(grade)));
  const open = work.filter((job) => job.doneOn === undefined && isPlanned(job) && stageOf(job, graver) === stage);
  const asked = ({ number, decision }: NumberedJob): boolean =>
    decision?.is === "more" || (decision === undefined && graver.has(number));
  /** Agreed now; by a day that is told it stands among the days, unless it comes before the next drive. */
  const agreed = ({ decision }: NumberedJob): boolean =>
    decision?.is === "now" ||
    (decision?.is === "by" && (stage < 2 || (decision.by?.date === undefined && decision.by?.odometer === undefined)));
  const byName = ({ number, title, where }: NumberedJob) => ({ number, title, where });
  const byLetter = ({ letter, title, where }: CannotWait) => ({ letter, title, where });
  return [
    ...here.filter(({ close }) => close).map((one) => ({ is: "measure-again", ...byLetter(one) }) as const),
    ...here.filter(({ jobs }) => jobs.length === 0).map((one) => ({ is: "find-work", ...byLetter(one) }) as const),
    ...open.filter(asked).map((job) => ({ is: "decide", ...byName(job) }) as const),
    ...open.filter(agreed).map((job) => ({ is: "do-job", ...byName(job) }) as const),
  ];
}

const least = (a: Stage, b: Stage): Stage => (a < b ? a : b);

/** By what it puts right and by when its rules want it, whichever is the more urgent. */
function stageOf({ number, byWhen }: NumberedJob, graver: ReadonlyMap<number, Stage>): Stage {
  const wanted = byWhen.class === 0 ? 0 : byWhen.class === 1 ? 1 : 2;
  return least(graver.get(number) ?? 2, wanted);
}

/** Checks before driving that are shut: those that ask for the same in one step. */
function shutGates({ gates }: HandoverInput, { standing }: Known): readonly NextStep[] {
  const shut = gates.filter((one) => one.drives && gateState(one, standing) !== "cleared");
  const byFirst = new Map<string, { readonly gates: string[]; readonly first: readonly string[] }>();
  for (const { title, first } of shut) {
    const key = first.join("\n");
    const row = byFirst.get(key);
    if (row) row.gates.push(title);
    else byFirst.set(key, { gates: [title], first });
  }
  return [...byFirst.values()].map((one) => ({ is: "clear-gate", ...one }) as const);
}
