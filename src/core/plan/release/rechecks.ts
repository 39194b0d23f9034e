/**
 * Checks after some distance: what a sheet asks for, and wheel nuts wherever a wheel was off. Each with a day, so that
 * it can stand in a calendar. Distances of wheel nuts and the longest wait: common practice, no source.
 */
import type { PlanState } from "../../record/index.js";
import { dateOf, dayNumber } from "../schedule/days.js";
import type { IsoDate } from "../terms.js";
import type { WorkTold } from "./works.js";

/** Wheel nuts settle; common practice, no source: tightened again after 50 to 100 km. */
const WHEEL_NUTS_KM = 50;
/** Whoever drives little is reminded after a month all the same; common practice, no source. */
const LONGEST_DAYS = 30;
const WHEEL_NUTS = "wheel-nuts";

export interface Recheck {
  /** `wheel-nuts`, or `job@place`. */
  readonly id: string;
  readonly is: "wheel-nuts" | "job";
  readonly job?: string;
  /** Where: every place a wheel was off, or that of the job. */
  readonly places: readonly string[];
  readonly km: number;
  /** Odometer in km at which it is due; absent where nobody read it. */
  readonly at?: number;
  /** The day to think of it: when the car will have gone so far, a month on at the latest. */
  readonly on: IsoDate;
  readonly done?: { readonly who: string; readonly on: IsoDate; readonly words: string };
}

export interface Drives {
  /** Odometer in km when it left, or when it was looked at. */
  readonly odometer?: number;
  /** The day it left; the day a job was done where it has not left yet. */
  readonly leftOn?: IsoDate;
  /** How far it goes in a day, from its earlier readings; absent where that is not known. */
  readonly kmADay?: number;
}

/** Openings that take a wheel off, or that need it off. */
type TakesWheelOff = (access: string) => boolean;

/** What is due after the jobs that are done, the soonest first. */
export function rechecksOf(
  works: readonly WorkTold[],
  rechecked: PlanState["rechecked"],
  drives: Drives,
  takesWheelOff: TakesWheelOff,
): readonly Recheck[] {
  const done = works.flatMap((work) => (work.doneOn === undefined ? [] : [{ ...work, doneOn: work.doneOn }]));
  const make = (id: string, km: number, doneOn: IsoDate, more: Pick<Recheck, "is" | "job" | "places">): Recheck => {
    const last = rechecked.get(id)?.at(-1)?.value;
    return {
      id,
      km,
      ...more,
      on: dueOn(drives.leftOn ?? doneOn, km, drives.kmADay),
      ...(drives.odometer === undefined ? {} : { at: drives.odometer + km }),
      ...(last === undefined || last.on < doneOn ? {} : { done: { who: last.who, on: last.on, words: last.words } }),
    };
  };
  const off = done.filter(({ access }) => access.some(takesWheelOff));
  const latest = off
    .map(({ doneOn }) => doneOn)
    .sort()
    .at(-1);
  const wheels =
    latest === undefined
      ? []
      : [
          make(WHEEL_NUTS, WHEEL_NUTS_KM, latest, {
            is: "wheel-nuts",
            places: [...new Set(off.map((one) => one.place))],
          }),
        ];
  const jobs = done.flatMap(({ job, place, recheckKm, doneOn }) =>
    recheckKm === undefined ? [] : [make(`${job}@${place}`, recheckKm, doneOn, { is: "job", job, places: [place] })],
  );
  return [...wheels, ...jobs].sort(
    (a, b) => a.km - b.km || Number(b.is === "wheel-nuts") - Number(a.is === "wheel-nuts") || (a.id < b.id ? -1 : 1),
  );
}

function dueOn(from: IsoDate, km: number, kmADay: number | undefined): IsoDate {
  const start = dayNumber(from);
  if (start === undefined) return from;
  const days = kmADay !== undefined && kmADay > 0 ? Math.ceil(km / kmADay) : LONGEST_DAYS;
  return dateOf(start + Math.min(Math.max(days, 1), LONGEST_DAYS));
}
