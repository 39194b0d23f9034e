/**
 * The round as stations: all points asked at one place in one car state, in walking order, and which
 * comes next. Pure; takes the walking order as it is given and never decides what is asked.
 */
import type { Asked } from "../../core/assess/contract.js";
import type { VisitState } from "../../core/record/contract.js";
import type { Knowledge } from "./knowledge.js";
import { isAnswered, type PointAt, pointText } from "./standing.js";

export interface Stop {
  readonly state: string;
  readonly place: string;
  readonly asked: readonly Asked[];
  readonly done: number;
}

const stopId = (at: { readonly state: string; readonly place: string }): string => `${at.state} ${at.place}`;

/** Groups what is asked into stops, keeping its order. A point asked twice (opened from two sides) stands once. */
export function stopsOf(known: Knowledge, asked: readonly Asked[], replies: VisitState["replies"]): readonly Stop[] {
  const groups = new Map<string, Asked[]>();
  const seen = new Set<string>();
  for (const one of asked) {
    if (seen.has(pointText(one))) continue;
    seen.add(pointText(one));
    const group = groups.get(stopId(one));
    if (group) group.push(one);
    else groups.set(stopId(one), [one]);
  }
  return [...groups.values()].map((group) => {
    const [first] = group as [Asked, ...Asked[]];
    return {
      state: first.state,
      place: first.place,
      asked: group,
      done: group.filter((one) => isDone(known, replies, one)).length,
    };
  });
}

export function isDone(known: Knowledge, replies: VisitState["replies"], at: PointAt): boolean {
  const point = known.points.get(at.point)?.point;
  return point !== undefined && isAnswered(replies, point, at);
}

const pointOf = (one: Asked): PointAt => ({ state: one.state, place: one.place, point: one.point });

/** The stop a at lies in. */
export const stopAt = (
  stops: readonly Stop[],
  at: { readonly state: string; readonly place: string },
): Stop | undefined => stops.find((stop) => stopId(stop) === stopId(at));

/** Where a round begins or goes on: the remembered point while it is still asked, else the first point not yet answered. */
export function whereToGoOn(
  known: Knowledge,
  stops: readonly Stop[],
  replies: VisitState["replies"],
  remembered: PointAt | undefined,
): PointAt | undefined {
  const all = stops.flatMap((stop) => stop.asked);
  const same = remembered && all.find((one) => pointText(one) === pointText(remembered));
  const open = all.find((one) => !isDone(known, replies, one));
  const found = same ?? open ?? all[0];
  return found && pointOf(found);
}

/**
 * The next point not yet answered after `at`: first in this stop, then in the stops that follow, then from
 * the beginning. Undefined when all is answered.
 */
export function nextOpen(
  known: Knowledge,
  stops: readonly Stop[],
  replies: VisitState["replies"],
  at: PointAt,
): PointAt | undefined {
  const all = stops.flatMap((stop) => stop.asked);
  const here = all.findIndex((one) => pointText(one) === pointText(at));
  const stop = stopAt(stops, at);
  const inStop = stop ? [...stop.asked] : [];
  const hereInStop = inStop.findIndex((one) => pointText(one) === pointText(at));
  const order = [
    ...inStop.slice(hereInStop + 1),
    ...inStop.slice(0, Math.max(hereInStop, 0)),
    ...all.slice(here + 1),
    ...all.slice(0, Math.max(here, 0)),
  ];
  const found = order.find((one) => pointText(one) !== pointText(at) && !isDone(known, replies, one));
  return found && pointOf(found);
}
