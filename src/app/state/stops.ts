/**
 * The round as stations: all points asked at one place in one car state, in walking order, and which
 * comes next. Pure; takes the walking order as it is given and never decides what is asked.
 */
import type { Asked, Assessment } from "../../core/assess/contract.js";
import type { VisitState } from "../../core/record/contract.js";
import type { Audience } from "../../core/terms/index.js";
import type { Knowledge } from "./knowledge.js";
import { isAnswered, type PointAt, pointText, replyAt } from "./standing.js";

export interface Stop {
  readonly state: string;
  readonly place: string;
  readonly asked: readonly Asked[];
  readonly done: number;
}

const stopId = (at: { readonly state: string; readonly place: string }): string => `${at.state} ${at.place}`;

/** Whether the car is off the ground in this state. */
const isLifted = (known: Pick<Knowledge, "states">, state: string): boolean => known.states.get(state)?.lifted === true;

/**
 * Whether this person is asked it in this car state. At home and at a viewing the wheels stay on the ground: a point
 * that can also be looked at there is asked there only.
 */
export function isAskedHere(known: Pick<Knowledge, "states" | "points">, who: Audience, one: Asked): boolean {
  if (who === "technician" || !isLifted(known, one.state)) return true;
  const states = known.points.get(one.point)?.point.states ?? [];
  return who === "buyer" && states.every((state) => isLifted(known, state));
}

/**
 * Groups what is asked one after the other at one place into stops, keeping its order: in order of value a place has a
 * stop in each lap. A point asked twice (opened from two sides) stands once.
 */
export function stopsOf(
  known: Knowledge,
  who: Audience,
  { asked, suggested }: Pick<Assessment, "asked" | "suggested">,
  replies: VisitState["replies"],
): readonly Stop[] {
  const likely = new Map(suggested.map((one, rank) => [`${one.place} ${one.point}`, rank]));
  const rankOf = (one: Asked): number => likely.get(`${one.place} ${one.point}`) ?? likely.size;
  const groups: Asked[][] = [];
  const seen = new Set<string>();
  for (const one of asked) {
    if (seen.has(pointText(one)) || !isAskedHere(known, who, one)) continue;
    seen.add(pointText(one));
    const group = groups.at(-1);
    if (group?.[0] && stopId(group[0]) === stopId(one)) group.push(one);
    else groups.push([one]);
  }
  return groups.map((group) => {
    const [first] = group as [Asked, ...Asked[]];
    return {
      state: first.state,
      place: first.place,
      // What the complaint makes likely comes first at its place; the way round the car stays as it is.
      asked: [...group].sort((a, b) => rankOf(a) - rankOf(b)),
      done: group.filter((one) => isDone(known, replies, one)).length,
    };
  });
}

/** A point, and those answered in the same entry with it. */
export type PointsAt = PointAt & Pick<Partial<Asked>, "with">;

/** Whether the point is answered, and every point asked in the same entry. */
export function isDone(known: Knowledge, replies: VisitState["replies"], at: PointsAt): boolean {
  return [at.point, ...(at.with ?? [])].every((id) => {
    const point = known.points.get(id)?.point;
    return point !== undefined && isAnswered(replies, point, { ...at, point: id });
  });
}

/** Whether nothing of a completed point is left to say: every field has its reply, or what was said is unremarkable. */
export function isAllSaid(known: Pick<Knowledge, "points">, replies: VisitState["replies"], at: PointAt): boolean {
  const point = known.points.get(at.point)?.point;
  const said = Object.keys(point?.fields ?? {}).map((field) => [field, replyAt(replies, at, field)] as const);
  return (
    said.every(([, value]) => value) ||
    said.every(
      ([field, value]) =>
        !value || (value.type === "words" && String(value.words) === String(point?.unremarkable?.[field])),
    )
  );
}

const pointOf = (one: Asked): PointAt => ({ state: one.state, place: one.place, point: one.point });

/** The stop a point lies in; of one not asked, the first of its place. */
export const stopAt = (stops: readonly Stop[], at: PointAt): Stop | undefined =>
  stops.find(({ asked }) => asked.some((one) => pointText(one) === pointText(at))) ??
  stops.find((stop) => stopId(stop) === stopId(at));

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
