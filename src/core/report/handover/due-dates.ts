/** Every day and distance somebody has to think of after the visit, nearest day first. Knows no words of its own. */
import type { Figure, HandoverInput, LookAtTold, LookTold } from "./input.js";
import type { DueDate, NumberedJob } from "./model.js";
import { unended } from "./sentence.js";

const WEAR = "trend:";
const LOOK = "look:";
/** A day at which something is looked at again: there may be thirty of them. */
export const isLook = ({ id }: Pick<DueDate, "id">): boolean => id.startsWith(WEAR) || id.startsWith(LOOK);

/** Nothing done and nothing declined is due; a decision to do it by a day stands beside the day the rules name. */
export function dueDates(input: HandoverInput, work: readonly NumberedJob[]): readonly DueDate[] {
  const open = work.filter(({ doneOn, decision }) => doneOn === undefined && decision?.is !== "no");
  const dates: readonly DueDate[] = [
    ...open.flatMap(({ id, number, title, where, byWhen: { date, distance } }) =>
      date === undefined && distance === undefined
        ? []
        : [{ id: `job:${id}`, is: "job" as const, number, words: title, where, on: date, distance }],
    ),
    ...open.flatMap(({ id, number, title, where, decision }) =>
      decision?.is === "by" && (decision.by?.date !== undefined || decision.by?.odometer !== undefined)
        ? [
            {
              id: `decided:${id}`,
              is: "decided" as const,
              number,
              words: title,
              where,
              on: decision.by.date,
              odometer: decision.by.odometer,
            },
          ]
        : [],
    ),
    ...(input.dates ?? []).map(({ id, is, words, on, distance }) => ({
      id: `date:${id}`,
      is,
      words,
      where: "",
      on,
      distance,
    })),
    ...(input.looks?.flatMap((look) => lookDate(look, open)) ?? wearDates(input)),
    ...(input.visit.next === undefined
      ? []
      : [{ id: "next-visit", is: "next-visit" as const, words: "", where: "", on: input.visit.next }]),
  ];
  return [...dates].sort(sooner(input.visit.odometer));
}

/** While nothing else is known to be looked at again. */
const wearDates = ({ trends = [] }: HandoverInput): readonly DueDate[] =>
  trends.flatMap(({ id, title, where, lookAgain }) =>
    lookAgain === undefined
      ? []
      : [{ id: `${WEAR}${id}`, is: "look-again" as const, words: title, where, on: lookAgain }],
  );

/** One visit of looks, without what stands among the days already. */
function lookDate({ id, of, on, odometer, distance }: LookTold, open: readonly NumberedJob[]): readonly DueDate[] {
  const dated = open.filter(({ byWhen }) => byWhen.date !== undefined || byWhen.distance !== undefined);
  const isTold = ({ is, fault }: LookAtTold): boolean =>
    is === "recheck" ||
    (fault !== undefined &&
      dated.some(({ faults }) => faults.some((one) => one.fault === fault.fault && one.place === fault.place)));
  const what = of
    .filter((one) => !isTold(one))
    .map(({ title, where }) => [unended(title), where].filter(Boolean).join(", "));
  if (what.length === 0) return [];
  const words = [...new Set(what)].join("; ");
  return [{ id: `${LOOK}${id}`, is: "look-again", words, where: "", on, odometer, distance }];
}

/** Sorts behind every day. */
const LAST = "9999-12-31";
const KM_A_MILE = 1.609344;
const km = ({ value, unit }: Figure): number => Number(value) * (unit === "[mi_i]" ? KM_A_MILE : 1);

/** By the day; of one day, or of none, by the way there is to go. */
function sooner(odometer: Figure | undefined): (a: DueDate, b: DueDate) => number {
  const left = (one: DueDate): number => {
    const at = one.odometer === undefined || odometer === undefined ? Infinity : km(one.odometer) - km(odometer);
    return Math.min(one.distance === undefined ? Infinity : km(one.distance), at);
  };
  const order = <T>(a: T, b: T): number => (a < b ? -1 : a > b ? 1 : 0);
  return (a, b) => order(a.on ?? LAST, b.on ?? LAST) || order(left(a), left(b));
}
