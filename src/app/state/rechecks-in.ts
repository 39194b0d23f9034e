/** After some way or some work: where a job wants it looked at again, and what is due when. Judges nothing; pure. */
import { type Drives, type PointAt, paceOf, type Recheck, rechecksOf, type WorkTold } from "../../core/plan/index.js";
import { figureOf, lookedOn, type Odometer, type PlanState, type VisitState } from "../../core/record/index.js";
import type { PlaceTree } from "../../core/sheet/run.js";
import { convert } from "../../core/units/index.js";
import type { Knowledge } from "./knowledge.js";

interface Fitted {
  readonly known: Knowledge;
  readonly tree: PlaceTree;
}
interface Driven {
  readonly known: Knowledge;
  readonly visit: VisitState;
  readonly said: PlanState;
}

/** Where a point named by a job is at this car: around the job's place, else inside it. */
function placesOf({ known, tree }: Fitted, point: string, place: string): readonly PointAt[] {
  const kind = known.points.get(point)?.point.place;
  if (kind === undefined) return [{ point, place }];
  const around = tree.around(place, kind);
  if (around !== undefined) return [{ point, place: around }];
  const inside = tree.ofKind(kind).flatMap((one) => (tree.within(place, one) ? [{ point, place: one }] : []));
  // A point that fits nowhere here is told, not dropped.
  return inside.length > 0 ? inside : [{ point, place }];
}

/** Points a job asks to be looked at once it is done, each at its places at this car. */
export const lookedAfter = (handing: Fitted, job: string, place: string): readonly PointAt[] =>
  (handing.known.jobs.get(job)?.job.after ?? []).flatMap((point) => placesOf(handing, point, place));

/** What an odometer shows, in whole kilometres. */
export function kmOf(odometer: Odometer | undefined): number | undefined {
  const figure = odometer && figureOf(odometer);
  if (!odometer || figure === undefined) return undefined;
  return Math.round(convert(figure, odometer.unit === "[mi_i]" ? "[mi_i]" : "km", "km", "distance"));
}
/** What its odometer showed, in whole kilometres. */
export const kmAt = (visit: VisitState): number | undefined => kmOf(visit.odometer.at(-1)?.value);

/** How far the car goes in a day; nothing where its readings do not tell (LA2). */
function kmADay(visits: readonly VisitState[]): number | undefined {
  const read = visits.flatMap((visit) => {
    const km = kmAt(visit);
    return km === undefined ? [] : [{ on: lookedOn(visit).slice(0, 10), km }];
  });
  return paceOf(read)?.likely;
}

/** Name of such a check among the days of its visit. */
export const checkDate = (id: string): string => `recheck ${id}`;

/** What is due after some way, with a day each. `earlier`: oldest first. */
export function rechecksIn(
  { known, visit, said }: Driven,
  works: readonly WorkTold[],
  earlier: readonly VisitState[],
): readonly Recheck[] {
  const release = said.release.at(-1)?.value;
  const odometer = kmOf(release?.odometer) ?? kmAt(visit);
  const pace = kmADay([...earlier, visit]);
  const drives: Drives = {
    ...(odometer === undefined ? {} : { odometer }),
    ...(release === undefined ? {} : { leftOn: release.on }),
    ...(pace === undefined ? {} : { kmADay: pace }),
  };
  const rows = new Map(known.common.access.map((row) => [row.id, row]));
  const takesOff = (access: string, seen: readonly string[] = []): boolean =>
    access === WHEEL_OFF ||
    (!seen.includes(access) && (rows.get(access)?.needs ?? []).some((one) => takesOff(one, [...seen, access])));
  return rechecksOf(works, said.rechecked, drives, (access) => takesOff(access));
}

/** Row of the access tree that takes a wheel off. */
const WHEEL_OFF = "wheel-off";
