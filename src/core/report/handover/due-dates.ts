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
    ...(input.looks?.flatMap((look) => lookDate(look, open, input)) ?? wearDates(input)),
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

/** Among the days, one visit of looks goes by this name. */
export const lookId = ({ id }: Pick<LookTold, "id">): string => `${LOOK}${id}`;

/** One visit of looks, without what stands among the days already. */
function lookDate(
  look: LookTold,
  open: readonly NumberedJob[],
  { dates = [], visit }: HandoverInput,
): readonly DueDate[] {
  const { of, on, odometer, distance, isOverdue } = look;
  const before = open.filter((job) => isNoLater(job, look, visit.odometer));
  const isTold = ({ date, fault }: LookAtTold): boolean =>
    dates.some(({ id }) => id === date) ||
    (fault !== undefined &&
      before.some(({ faults }) => faults.some((one) => one.fault === fault.fault && one.place === fault.place)));
  const what = of
    .filter((one) => !isTold(one))
    .map(({ title, where }) => [unended(title), where].filter(Boolean).join(", "));
  if (what.length === 0) return [];
  const words = [...new Set(what)].join("; ");
  return [{ id: lookId(look), is: "look-again", words, where: "", on, odometer, distance, isOverdue }];
}

/**
 * Whether work comes no later than a look by every figure the look has; a day made of the look's own distance is none.
 * What cannot be compared is taken for later: a look too many is told, none too few.
 */
function isNoLater({ byWhen }: NumberedJob, look: LookTold, odometer: Figure | undefined): boolean {
  const { date, distance } = byWhen;
  const left = leftOf(look, odometer);
  const hasWay = look.odometer !== undefined || look.distance !== undefined;
  const isDayKept = look.on === undefined || (look.isByUse && hasWay) || (date !== undefined && date <= look.on);
  const isWayKept = !hasWay || (distance !== undefined && km(distance) <= left + ROUNDED_KM);
  return (look.on !== undefined || hasWay) && isDayKept && isWayKept;
}

/** Sorts behind every day. */
const LAST = "9999-12-31";
const KM_A_MILE = 1.609344;
const km = ({ value, unit }: Figure): number => Number(value) * (unit === "[mi_i]" ? KM_A_MILE : 1);

/** An odometer is told in whole figures, of kilometres or of miles. */
const ROUNDED_KM = 2;

/** The way there is to go; endless where that is not known. */
function leftOf(
  { odometer: at, distance }: Pick<DueDate, "odometer" | "distance">,
  odometer: Figure | undefined,
): number {
  const left = at === undefined || odometer === undefined ? Infinity : km(at) - km(odometer);
  return Math.min(distance === undefined ? Infinity : km(distance), left);
}

/** By the day; of one day, or of none, by the way there is to go. */
function sooner(odometer: Figure | undefined): (a: DueDate, b: DueDate) => number {
  const order = <T>(a: T, b: T): number => (a < b ? -1 : a > b ? 1 : 0);
  return (a, b) => order(a.on ?? LAST, b.on ?? LAST) || order(leftOf(a, odometer), leftOf(b, odometer));
}
