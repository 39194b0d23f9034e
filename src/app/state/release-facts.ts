/**
 * A visit with its plan as handing back asks for it: what the sheets say of each job done, when each point was answered
 * last, who did what. Weighs nothing; pure.
 */
import type { Assessment } from "../../core/assess/contract.js";
import {
  type ComplaintStands,
  type Drives,
  type HandingBack,
  type PointAt,
  progressOf,
  type Recheck,
  rechecksOf,
  type WorkTold,
  worksTold,
} from "../../core/plan/index.js";
import {
  figureOf,
  type HouseState,
  lookedOn,
  type Odometer,
  type PlanState,
  type VisitState,
} from "../../core/record/index.js";
import type { PlaceTree } from "../../core/sheet/run.js";
import { DAY_MS, type IsoDate } from "../../core/terms/index.js";
import { convert } from "../../core/units/index.js";
import type { Knowledge } from "./knowledge.js";
import { last } from "./plan-input.js";
import { answeredAnew, askedOf, type JudgedVisit } from "./release-anew.js";

export interface Handing {
  readonly known: Knowledge;
  readonly tree: PlaceTree;
  readonly assessment: Assessment;
  readonly visit: VisitState;
  readonly said: PlanState;
  readonly house: HouseState | undefined;
  readonly today: IsoDate;
}

/** Where a point named by a job is at this car: around the job's place, else inside it. */
function placesOf({ known, tree }: Pick<Handing, "known" | "tree">, point: string, place: string): readonly PointAt[] {
  const kind = known.points.get(point)?.point.place;
  if (kind === undefined) return [{ point, place }];
  const around = tree.around(place, kind);
  if (around !== undefined) return [{ point, place: around }];
  const inside = tree.ofKind(kind).flatMap((one) => (tree.within(place, one) ? [{ point, place: one }] : []));
  // A point that fits nowhere here is told, not dropped.
  return inside.length > 0 ? inside : [{ point, place }];
}

const personOf =
  ({ people }: Pick<PlanState, "people">) =>
  (person: string): string =>
    people.get(person)?.at(-1)?.value.name ?? "";

/** Points a job asks to be looked at once it is done, each at its places at this car. */
export const lookedAfter = (handing: Pick<Handing, "known" | "tree">, job: string, place: string): readonly PointAt[] =>
  (handing.known.jobs.get(job)?.job.after ?? []).flatMap((point) => placesOf(handing, point, place));

/** Every job of which something was told. `later`: what is answered in a later visit was looked at again too. */
export function worksIn(handing: Handing, later: readonly JudgedVisit[]): readonly WorkTold[] {
  const { known, assessment, said, visit } = handing;
  const visits = [{ visit, assessment }, ...later];
  return worksTold(said, {
    says: (job, place) => {
      const sheetJob = known.jobs.get(job)?.job;
      return { ...(sheetJob ? { job: sheetJob } : {}), after: lookedAfter(handing, job, place) };
    },
    answered: (at) => answeredAnew(known, visits, at),
    askedOf: (at) => askedOf(handing, at),
    nameOf: personOf(said),
  });
}

export function handingBack(
  { assessment, visit, said, house, today }: Handing,
  works: readonly WorkTold[],
  complaints: readonly ComplaintStands[],
): HandingBack {
  const progress = progressOf(said, today);
  return {
    faults: assessment.faults,
    gates: assessment.gates.map((gate) => ({
      ...gate,
      noted: visit.notes.findLast(({ value }) => value.point === gate.gate)?.at,
    })),
    works,
    loose: progress.ok ? progress.value.loose : [],
    parts: progress.ok ? progress.value.parts : [],
    complaints,
    isAlone: last(house?.calendar)?.people === 1,
  };
}

/** What an odometer shows, in whole kilometres. */
export function kmOf(odometer: Odometer | undefined): number | undefined {
  const figure = odometer && figureOf(odometer);
  if (!odometer || figure === undefined) return undefined;
  return Math.round(convert(figure, odometer.unit === "[mi_i]" ? "[mi_i]" : "km", "km", "distance"));
}
/** What its odometer showed, in whole kilometres. */
export const kmAt = (visit: VisitState): number | undefined => kmOf(visit.odometer.at(-1)?.value);

/** How far the car goes in a day, by its first and last reading; nothing where there are not two of them, apart. */
function paceOf(visits: readonly VisitState[]): number | undefined {
  const read = visits.flatMap((visit) => {
    const [km, at] = [kmAt(visit), Date.parse(lookedOn(visit))];
    return km === undefined || !Number.isFinite(at) ? [] : [{ km, at }];
  });
  const [first, latest] = [read[0], read.at(-1)];
  if (!first || !latest || latest.at - first.at < DAY_MS) return undefined;
  const pace = (latest.km - first.km) / ((latest.at - first.at) / DAY_MS);
  return pace > 0 ? pace : undefined;
}

/** What is due after some way, with a day each. `earlier`: oldest first. */
export function rechecksIn(
  { known, visit, said }: Pick<Handing, "known" | "visit" | "said">,
  works: readonly WorkTold[],
  earlier: readonly VisitState[],
): readonly Recheck[] {
  const release = said.release.at(-1)?.value;
  const odometer = kmOf(release?.odometer) ?? kmAt(visit);
  const pace = paceOf([...earlier, visit]);
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
