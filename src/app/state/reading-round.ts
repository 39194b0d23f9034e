/**
 * Readings taken in one round with the same gauge: hub and disc at each wheel, or the wall at each tube. Which comes
 * next, in walking order. Pure; a round never leaves the car state.
 */
import { capital, fieldKind, fieldName, placeName, requiredFields } from "./knowledge.js";
import type { Looking } from "./round-view.js";
import { nonAnswerAt, type PointAt, standingAt } from "./standing.js";
import { stopsOf } from "./stops.js";

export interface ReadingSpot {
  readonly at: PointAt;
  readonly field: string;
}
export interface ReadingRound {
  /** The next one without a reading; none when the round is through. */
  readonly next?: ReadingSpot & { readonly words: string };
  readonly done: number;
  readonly all: number;
}

/** The point in whose entry this one is asked here: itself where it is asked alone, or not asked. */
export const entryOf = (asked: Looking["asked"], { state, place, point }: PointAt): PointAt => ({
  state,
  place,
  point: asked.find((one) => one.state === state && one.place === place && one.with.includes(point))?.point ?? point,
});

/** All readings of one entry, place by place: those of the point itself and of the points answered together with it. */
function spotsOf(looking: Looking, at: PointAt): readonly ReadingSpot[] {
  const { known, who, visit } = looking;
  const entries = stopsOf(known, who, looking, visit.replies)
    .filter(({ state }) => state === at.state)
    .flatMap((stop) => stop.asked);
  const host = entries.find(
    (one) => one.place === at.place && (one.point === at.point || one.with.includes(at.point)),
  )?.point;
  return entries
    .filter((one) => one.point === host)
    .flatMap((one) =>
      [one.point, ...one.with].flatMap((id) => {
        const point = known.points.get(id)?.point;
        const spot: PointAt = { state: one.state, place: one.place, point: id };
        if (!point || nonAnswerAt(visit.replies, spot)) return [];
        return requiredFields(point).flatMap((name) => {
          const field = point.fields[name];
          return field && fieldKind(field) === "reading" ? [{ at: spot, field: name }] : [];
        });
      }),
    );
}

const isSame = (a: ReadingSpot, b: ReadingSpot): boolean =>
  a.field === b.field && a.at.place === b.at.place && a.at.point === b.at.point;

/** The round this reading belongs to; undefined where it stands alone. */
export function readingRound(looking: Looking, here: ReadingSpot): ReadingRound | undefined {
  const { known, visit } = looking;
  const spots = spotsOf(looking, here.at);
  const index = spots.findIndex((spot) => isSame(spot, here));
  if (index < 0 || spots.length < 2) return undefined;
  const stands = (spot: ReadingSpot): boolean => standingAt(visit.replies, spot.at, spot.field).length > 0;
  const next = [...spots.slice(index + 1), ...spots.slice(0, index)].find((spot) => !stands(spot));
  const done = spots.filter(stands).length;
  if (!next) return { done, all: spots.length };
  const point = known.points.get(next.at.point);
  const field = point ? fieldName(point.text, next.field) : next.field;
  const place = capital(placeName(known, next.at.place));
  const words = next.at.place === here.at.place ? field : place;
  return { next: { ...next, words }, done, all: spots.length };
}
