/**
 * Points worth looking at as rows: one row a point, however many places it waits at, in the order they come in. Pure;
 * which points and in which order is core/assess's word.
 */
import { t } from "../texts/index.js";
import { settleHref, settleText, type Telling } from "./because.js";
import { capital, placeName } from "./knowledge.js";

/** Places named in a row before the rest is counted. */
const MOST_PLACES = 2;
/** A point that belongs to the car as a whole names no place. */
const WHOLE_CAR = "car";

export interface PointRow {
  readonly id: string;
  readonly title: string;
  /** Where it waits; nothing for the car as a whole. */
  readonly places?: string;
  /** The place that comes first; without it the point can't be answered in this visit. */
  readonly href?: string;
}

interface Waiting {
  readonly point: string;
  readonly place: string;
}

/** What waits, gathered by point; the first of each stands where it stood. */
export function byPoint<One extends Waiting>(all: readonly One[]): readonly (readonly [One, ...One[]])[] {
  const groups = new Map<string, [One, ...One[]]>();
  for (const one of all) {
    const group = groups.get(one.point);
    if (group) group.push(one);
    else groups.set(one.point, [one]);
  }
  return [...groups.values()];
}

/** One row for a point at all the places it waits at. */
export function pointRow(telling: Telling, waiting: readonly [Waiting, ...Waiting[]]): PointRow {
  const [first] = waiting;
  const places = [...new Set(waiting.map(({ place }) => place))].filter((place) => place !== WHOLE_CAR);
  const named = places.slice(0, MOST_PLACES).map((place) => placeName(telling.known, place));
  const rest = places.length - named.length;
  return {
    id: first.point,
    title: settleText(telling, { point: first.point, place: WHOLE_CAR }),
    ...(named.length === 0
      ? {}
      : {
          places: capital(rest > 0 ? t("places.and-more", { places: named.join(", "), n: rest }) : named.join(", ")),
        }),
    ...settleHref(telling, first),
  };
}
