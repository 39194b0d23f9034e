/**
 * The rest of the first page: complaints with their answers, what cannot wait, what was looked at, and the high figure
 * against the budget; what to do next is `next-steps.ts`. Knows no words.
 */
import { GRADES } from "../../terms/index.js";
import type { HandoverInput } from "./input.js";
import type { Lettered } from "./lettering.js";
import type { CannotWait, ComplaintLine, Looked, MoneyLine, NumberedJob } from "./model.js";
import { isSettled } from "./standing.js";

export function complaintLines({ complaints }: HandoverInput, { letterFor }: Lettered): readonly ComplaintLine[] {
  return complaints.map(({ id, words, answer }) => ({
    id,
    words,
    ...(answer === undefined ? {} : { answer }),
    letters: answer?.is === "found" ? answer.faults.flatMap((one) => letterFor(one) ?? []) : [],
  }));
}

export const isDeclined = ({ decision }: NumberedJob): boolean => decision?.is === "no";
/** Work somebody can count on: not declined, and not left out of the plan. */
export const isPlanned = (job: NumberedJob): boolean => !isDeclined(job) && job.chosen !== false;

/** Dangerous, major, too close to call, or with work that comes before the next drive. */
export function cannotWait({ findings, work }: Lettered): readonly CannotWait[] {
  return findings
    .filter((one) => !isSettled(one))
    .flatMap((one) => {
      const own = work.filter(({ number }) => one.numbers.includes(number));
      const isUrgent = own.some(({ byWhen, doneOn }) => byWhen.class < 2 && doneOn === undefined);
      if (one.grade !== "dangerous" && one.grade !== "major" && !one.close && !isUrgent) return [];
      const { letter, grade, close, title, where, beforeDriving } = one;
      return [
        {
          letter,
          grade,
          close,
          title,
          where,
          ...(beforeDriving === undefined ? {} : { beforeDriving }),
          jobs: own.filter(isPlanned).map(({ number }) => number),
          declined: own.filter(isDeclined).map(({ number }) => number),
        },
      ];
    });
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
