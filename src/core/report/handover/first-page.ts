/**
 * The rest of the first page: complaints with their answers, what cannot wait, what to do next, what was looked at, and
 * the high figure against the budget. Knows no words.
 */
import { GRADES } from "../../terms/index.js";
import { WEAR } from "./due-dates.js";
import type { HandoverInput } from "./input.js";
import type { Lettered } from "./lettering.js";
import type { CannotWait, ComplaintLine, DueDate, Looked, MoneyLine, NextStep, NumberedJob, Verdict } from "./model.js";
import { gateState, guardsDriving, isSettled, openComplaints, type Standing, unseenCount } from "./standing.js";

export function complaintLines({ complaints }: HandoverInput, { letterFor }: Lettered): readonly ComplaintLine[] {
  return complaints.map(({ id, words, answer }) => ({
    id,
    words,
    ...(answer === undefined ? {} : { answer }),
    letters: answer?.is === "found" ? answer.faults.flatMap((one) => letterFor(one) ?? []) : [],
  }));
}

const isDeclined = ({ decision }: NumberedJob): boolean => decision?.is === "no";
/** Work somebody can count on: not declined, and not left out of the plan. */
const isPlanned = (job: NumberedJob): boolean => !isDeclined(job) && job.chosen !== false;

/** Dangerous, major, too close to call, or with work that comes before the next drive. */
export function cannotWait({ findings, work }: Lettered): readonly CannotWait[] {
  return findings
    .filter((one) => !isSettled(one))
    .flatMap((one) => {
      const own = work.filter(({ number }) => one.numbers.includes(number));
      const isUrgent = own.some(({ byWhen, doneOn }) => byWhen.class < 2 && doneOn === undefined);
      if (one.grade !== "dangerous" && one.grade !== "major" && !one.close && !isUrgent) return [];
      const { letter, grade, close, title, where } = one;
      return [
        {
          letter,
          grade,
          close,
          title,
          where,
          jobs: own.filter(isPlanned).map(({ number }) => number),
          declined: own.filter(isDeclined).map(({ number }) => number),
        },
      ];
    });
}

/** Of the days at which wear is looked at again only the soonest: thirty of them would bury what comes first. */
function soonestWear(dates: readonly DueDate[]): readonly DueDate[] {
  const wears = dates.filter(({ id }) => id.startsWith(WEAR));
  const soonest = wears.reduce<DueDate | undefined>(
    (before, one) => (before?.on === undefined || (one.on ?? "") < before.on ? one : before),
    undefined,
  );
  return dates.filter((one) => !one.id.startsWith(WEAR) || one === soonest);
}

/** In the order of doing: nothing on it is called optional, and nothing says that the rest can wait. */
export function nextSteps(
  input: HandoverInput,
  { work }: Lettered,
  pressing: readonly CannotWait[],
  verdict: Verdict,
  dates: readonly DueDate[],
  standing: Standing,
): readonly NextStep[] {
  const urgent = new Set(pressing.flatMap(({ jobs }) => jobs));
  const open = work.filter((job) => job.doneOn === undefined && isPlanned(job));
  const undecided = ({ number, decision }: NumberedJob): boolean =>
    decision?.is === "more" || (decision === undefined && urgent.has(number));
  const named = ({ number, title, where }: NumberedJob) => ({ number, title, where });
  const shut = input.gates.filter((one) => guardsDriving(one) && gateState(one, standing) !== "cleared");
  const unseen = unseenCount(input);
  return [
    ...(verdict.is === "do-not-drive" ? [{ is: "do-not-drive" } as const] : []),
    ...pressing
      .filter(({ close }) => close)
      .map(({ letter, title, where }) => ({ is: "measure-again", letter, title, where }) as const),
    ...pressing
      .filter(({ jobs }) => jobs.length === 0)
      .map(({ letter, title, where }) => ({ is: "find-work", letter, title, where }) as const),
    ...open.filter(undecided).map((job) => ({ is: "decide", ...named(job) }) as const),
    ...open.filter(({ decision }) => decision?.is === "now").map((job) => ({ is: "do-job", ...named(job) }) as const),
    ...shut.map(({ title, first }) => ({ is: "clear-gate", gate: title, first }) as const),
    ...openComplaints(input).map(
      ({ words, answer }) =>
        ({ is: "answer-complaint", words, ...(answer?.is === "needs" ? { needs: answer.what } : {}) }) as const,
    ),
    ...(unseen > 0 ? [{ is: "look-at-rest", count: unseen } as const] : []),
    ...soonestWear(dates)
      .filter(({ is }) => is !== "job" && is !== "next-visit")
      .map(({ words, where, on, distance }) => ({
        is: "date" as const,
        words: where === "" ? words : `${words}, ${where}`,
        ...(on === undefined ? {} : { on }),
        ...(distance === undefined ? {} : { distance }),
      })),
    ...(input.visit.next === undefined ? [] : [{ is: "next-visit", on: input.visit.next } as const]),
  ];
}

/** What was looked at, in numbers. Settled findings are counted no more. */
export function lookedOf({ sheets, looked, notSeen, faults }: HandoverInput): Looked {
  const sum = (of: (sheet: HandoverInput["sheets"][number]) => number): number =>
    sheets.reduce((all, sheet) => all + of(sheet), 0);
  const standing = faults.filter((one) => !isSettled(one));
  const [advisory, minor, major, dangerous] = GRADES.map((of) => standing.filter(({ grade }) => grade === of).length);
  return {
    answered: sum(({ answered }) => answered),
    of: sum(({ of }) => of),
    sound: looked.sound,
    notSeen: notSeen.filter(({ is }) => is === "not-looked").length,
    cannotReach: notSeen.filter(({ is }) => is === "cannot-reach").length,
    notChecked: sum(({ notChecked }) => notChecked),
    notForThisLook: sum(({ notForThisLook }) => notForThisLook),
    grades: { advisory: advisory ?? 0, minor: minor ?? 0, major: major ?? 0, dangerous: dangerous ?? 0 },
  };
}

/** Nothing is called left over while a finding that cannot wait has no work, or something stands in no sum. */
export function moneyLine({ money }: HandoverInput, pressing: readonly CannotWait[]): MoneyLine | undefined {
  if (money?.total === undefined) return undefined;
  const { total, budget, spent = 0, missing } = money;
  const withoutWork = pressing.filter(({ jobs }) => jobs.length === 0).length;
  if (budget === undefined) return { total, withoutWork, missing };
  const rest = budget - spent - total[2];
  return {
    total,
    budget,
    overBy: Math.max(0, -rest),
    ...(rest >= 0 && withoutWork === 0 && missing === 0 ? { left: rest } : {}),
    withoutWork,
    missing,
  };
}
