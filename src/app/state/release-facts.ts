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
  type PlanState,
  type Stamp,
  type VisitState,
} from "../../core/record/index.js";
import type { PlaceTree } from "../../core/sheet/run.js";
import type { IsoDate } from "../../core/terms/index.js";
import { barePoint } from "./complaint-lines.js";
import { unprovenNote } from "./gates.js";
import type { Knowledge } from "./knowledge.js";
import { last } from "./plan-input.js";

export interface Handing {
  readonly known: Knowledge;
  readonly tree: PlaceTree;
  readonly assessment: Assessment;
  readonly visit: VisitState;
  readonly said: PlanState;
  readonly house: HouseState | undefined;
  readonly today: IsoDate;
}

/** Later visits of the same car: what is answered there was looked at again too. */
type Later = readonly VisitState[];

/** When a point was answered last; *not fitted* is an answer too, because there is nothing to look at. */
function answeredAt(visits: readonly VisitState[], { point, place }: PointAt): Stamp | undefined {
  let newest: Stamp | undefined;
  for (const { replies } of visits)
    for (const { key, standing } of replies.values()) {
      if (barePoint(key.point) !== barePoint(point) || key.place !== place) continue;
      for (const { value, at } of standing) {
        const isAnswer = value.type !== "non-answer" || value.nonAnswer === "not-fitted";
        if (isAnswer && (!newest || at.wall > newest.wall || (at.wall === newest.wall && at.count > newest.count)))
          newest = at;
      }
    }
  return newest;
}

/** Where a point named by a job is at this car: around the job's place, else inside it. */
function placesOf({ known, tree }: Handing, point: string, place: string): readonly PointAt[] {
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
export const lookedAfter = (handing: Handing, job: string, place: string): readonly PointAt[] =>
  (handing.known.jobs.get(job)?.job.after ?? []).flatMap((point) => placesOf(handing, point, place));

/** Every job of which something was told. */
export function worksIn(handing: Handing, later: Later): readonly WorkTold[] {
  const { known, assessment, said, visit } = handing;
  // What is entered along with a point is asked with it.
  const asked = new Set(
    assessment.asked.flatMap(({ point, place, with: along }) =>
      [point, ...along].map((one) => `${barePoint(one)}@${place}`),
    ),
  );
  return worksTold(said, {
    says: (job, place) => {
      const sheetJob = known.jobs.get(job)?.job;
      return { ...(sheetJob ? { job: sheetJob } : {}), after: lookedAfter(handing, job, place) };
    },
    answered: (at) => answeredAt([visit, ...later], at),
    isAsked: ({ point, place }) => asked.has(`${barePoint(point)}@${place}`),
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
      isUnproven: unprovenNote(visit.notes, gate.gate) !== undefined,
    })),
    works,
    loose: progress.ok ? progress.value.loose : [],
    parts: progress.ok ? progress.value.parts : [],
    complaints,
    isAlone: last(house?.calendar)?.people === 1,
  };
}

const KM_A_MILE = 1.609344;
const DAY_MS = 86_400_000;

const kmOf = (visit: VisitState): number | undefined => {
  const odometer = visit.odometer.at(-1)?.value;
  const figure = odometer && figureOf(odometer);
  if (!odometer || figure === undefined) return undefined;
  return Math.round(odometer.unit === "[mi_i]" ? figure * KM_A_MILE : figure);
};

/** How far the car goes in a day, by its first and last reading; nothing where there are not two of them, apart. */
function paceOf(visits: readonly VisitState[]): number | undefined {
  const read = visits.flatMap((visit) => {
    const [km, at] = [kmOf(visit), Date.parse(lookedOn(visit))];
    return km === undefined || !Number.isFinite(at) ? [] : [{ km, at }];
  });
  const [first, latest] = [read[0], read.at(-1)];
  if (!first || !latest || latest.at - first.at < DAY_MS) return undefined;
  const pace = (latest.km - first.km) / ((latest.at - first.at) / DAY_MS);
  return pace > 0 ? pace : undefined;
}

/** What is due after some way, with a day each. `earlier`: oldest first. */
export function rechecksIn(
  { known, visit, said }: Handing,
  works: readonly WorkTold[],
  earlier: readonly VisitState[],
): readonly Recheck[] {
  const release = said.release.at(-1)?.value;
  const leftAt = release?.odometer;
  const figure = leftAt && figureOf(leftAt);
  const left = figure === undefined ? undefined : Math.round(leftAt?.unit === "[mi_i]" ? figure * KM_A_MILE : figure);
  const odometer = left ?? kmOf(visit);
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
