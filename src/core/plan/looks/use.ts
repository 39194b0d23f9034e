/** How far a car goes, by its own odometer; a day made of a distance. What is not known makes no day. */
import { dateOf, dayNumber } from "../schedule/days.js";
import type { IsoDate } from "../terms.js";
import type { ByUse, KmOn, Pace } from "./contract.js";

/** A shorter stretch tells of a trip, not of a year. Our own rule. */
const SHORTEST_DAYS = 30;
/** Further ahead nothing is said. */
const FURTHEST_DAYS = 36_525;

interface Read {
  readonly day: number;
  readonly km: number;
}

/**
 * The whole way by the whole time; the slowest and fastest of its stretches of a month or more. Undefined where it was
 * not read twice a month apart, ran backwards or stood still.
 */
export function paceOf(readings: readonly KmOn[]): Pace | undefined {
  const read = readings
    .flatMap(({ on, km }): readonly Read[] => {
      const day = dayNumber(on);
      return day === undefined || !Number.isFinite(km) ? [] : [{ day, km }];
    })
    .sort((a, b) => a.day - b.day || a.km - b.km);
  const [first, last] = [read[0], read.at(-1)];
  if (!first || !last || last.day - first.day < SHORTEST_DAYS || last.km <= first.km) return undefined;
  if (read.some(({ km }, at) => km < (read[at - 1]?.km ?? km))) return undefined;
  const paces = stretches(read).map(([from, to]) => (to.km - from.km) / (to.day - from.day));
  const likely = (last.km - first.km) / (last.day - first.day);
  return paces.length < 2 ? { likely } : { likely, least: Math.min(...paces), most: Math.max(...paces) };
}

/** Each a month or more; what is left at the end belongs to the last. */
function stretches(read: readonly Read[]): readonly (readonly [Read, Read])[] {
  const made: [Read, Read][] = [];
  let from = read[0];
  for (const to of read) {
    if (!from || to.day - from.day < SHORTEST_DAYS) continue;
    made.push([from, to]);
    from = to;
  }
  const [end, last] = [read.at(-1), made.at(-1)];
  return end && last ? [...made.slice(0, -1), [last[0], end]] : made;
}

/** When a way will be gone; undefined where that is not known. */
export function dayByUse(from: IsoDate, km: number, pace: Pace | undefined): ByUse | undefined {
  const start = dayNumber(from);
  if (start === undefined || pace === undefined) return undefined;
  const at = (each: number | undefined, whole: (days: number) => number): IsoDate | undefined => {
    if (each === undefined || each <= 0) return undefined;
    const days = whole(Math.max(0, km) / each);
    return days > FURTHEST_DAYS ? undefined : dateOf(start + days);
  };
  const likely = at(pace.likely, Math.round);
  if (likely === undefined) return undefined;
  const [earliest, latest] = [at(pace.most, Math.floor), at(pace.least, Math.ceil)];
  return { ...(earliest === undefined ? {} : { earliest }), likely, ...(latest === undefined ? {} : { latest }) };
}
