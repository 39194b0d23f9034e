/**
 * What is to be looked at again on a car, gathered over its visits: findings left standing, work done, checks after some
 * way, readings that wear. Each visit by its own sheets and judgement. Pure; says nothing in words.
 */
import type { Fault } from "../../core/assess/contract.js";
import {
  type CarUse,
  type IsoDate,
  type LookRow,
  type LooksAgain,
  type LookWanted,
  looksAgain,
  order,
  type PointAt,
  paceOf,
  rowsForFault,
  rowsForJob,
  urgentFaults,
  wasLooked,
  worksTold,
} from "../../core/plan/index.js";
import { type CarState, lookedOn, type PlanState, placesOf, type VisitState } from "../../core/record/index.js";
import { buildPlaces, type PlaceTree } from "../../core/sheet/run.js";
import { DAY_MS } from "../../core/terms/index.js";
import { barePoint } from "./complaint-lines.js";
import type { Knowledge } from "./knowledge.js";
import { isDeclined, isWantedNow } from "./owners-word.js";
import { kmAt, kmOf, lookedAfter, rechecksIn } from "./rechecks-in.js";
import { type Wearing, wearingList } from "./wearing-view.js";
import type { WornCar, WornFault } from "./wearing-visits.js";

export interface LooksOf {
  readonly worn: WornCar;
  readonly all: readonly Wearing[];
  readonly visits: readonly VisitState[];
  readonly plans: ReadonlyMap<string, PlanState>;
  readonly car: CarState;
  readonly today: IsoDate;
}

/** Which visits count: up to one (a hand-over is of its day), or what the earlier ones ask of one that is open. */
export interface LooksFor {
  readonly upTo?: string;
  readonly openedAt?: string;
}

/** What a look is at, to be put into words. */
export interface LookAbout {
  readonly known: Knowledge;
  readonly visit: string;
  readonly fault?: Fault;
  readonly job?: string;
  readonly places: readonly string[];
  readonly wearing?: Wearing;
}
interface Gathered {
  readonly wanted: LookWanted;
  readonly about: LookAbout;
}

export interface LooksNow extends LooksAgain {
  readonly about: ReadonlyMap<string, LookAbout>;
  readonly use: CarUse;
  /** What its odometer is read in. */
  readonly unit: "km" | "[mi_i]";
}

/** One visit with everything about it, and what was really answered after it. */
interface Seen {
  readonly visit: VisitState;
  readonly on: IsoDate;
  readonly km: number | undefined;
  readonly known: Knowledge;
  readonly tree: PlaceTree;
  readonly found: readonly WornFault[];
  readonly plan: PlanState | undefined;
  readonly earlier: readonly VisitState[];
  readonly after: (at: PointAt) => { readonly on: IsoDate; readonly km?: number | undefined } | undefined;
  /** Found again in a later visit. */
  readonly foundLater: ReadonlySet<string>;
}

const dayOf = (visit: VisitState): IsoDate => lookedOn(visit).slice(0, 10);
const keyOf = ({ point, place }: PointAt): string => `${barePoint(point)}@${place}`;
const idOf = ({ fault, place }: Fault): string => `${fault}@${place}`;

/** *Not fitted* is an answer: there is nothing to look at. */
const answeredIn = ({ replies }: VisitState): ReadonlySet<string> =>
  new Set(
    [...replies.values()].flatMap(({ key, standing }) =>
      standing.some(({ value }) => value.type !== "non-answer" || value.nonAnswer === "not-fitted") ? [keyOf(key)] : [],
    ),
  );

function seenIn({ worn, visits, plans, car }: LooksOf, inTime: readonly VisitState[]): readonly Seen[] {
  const answers = inTime.map((visit) => ({ on: dayOf(visit), km: kmAt(visit), of: answeredIn(visit) }));
  const foundAt = new Map(worn.visits.map(({ stream, found }) => [stream, found]));
  return inTime.flatMap((visit, at): readonly Seen[] => {
    const [known, found] = [worn.knownAt.get(visit.stream), foundAt.get(visit.stream)];
    // A visit nobody could judge is named where wear is told (TR16).
    if (!known || !found) return [];
    const later = inTime.slice(at + 1).flatMap(({ stream }) => foundAt.get(stream) ?? []);
    return [
      {
        visit,
        on: dayOf(visit),
        km: kmAt(visit),
        known,
        tree: buildPlaces(known.common.places, placesOf(car)).tree,
        found,
        plan: plans.get(visit.stream),
        earlier: visits.filter((one) => dayOf(one) < dayOf(visit)).sort((a, b) => (lookedOn(a) < lookedOn(b) ? -1 : 1)),
        after: (point) => answers.slice(at + 1).findLast(({ of }) => of.has(keyOf(point))),
        foundLater: new Set(later.map(({ fault }) => idOf(fault))),
      },
    ];
  });
}

const from = ({ on, km }: Pick<Seen, "on" | "km">): LookWanted["from"] => ({ on, ...(km === undefined ? {} : { km }) });
const isDone = (plan: PlanState | undefined, job: string): boolean =>
  plan?.jobSteps.get(job)?.findLast(({ value }) => value.step !== "measured-again")?.value.step === "done";

/** Left standing, not answered anew since, and not to be done now. How hard the car is used is left out: more is looked at. */
function findingsOf(seen: Seen): readonly Gathered[] {
  const { visit, known, tree, found, plan } = seen;
  const faults = found.map(({ fault }) => fault);
  const setting = { at: lookedOn(visit), exposure: 0, around: tree.around } as const;
  const due = order({ faults }, known.sheets, setting);
  const urgent = new Map(urgentFaults(faults, known.sheets, setting).map((one) => [idOf(one.fault), one.byWhen.class]));
  return found.flatMap(({ fault, points }): readonly Gathered[] => {
    const jobs = due.flatMap(({ job, place, faults: of }) =>
      of.some((one) => one.fault === fault.fault && one.place === fault.place) ? [{ job, id: `${job}@${place}` }] : [],
    );
    const isGone = seen.foundLater.has(idOf(fault)) || (points.length > 0 && points.every((at) => seen.after(at)));
    const isNow =
      (urgent.get(idOf(fault)) ?? 0) < 2 ||
      jobs.some(({ id }) => plan !== undefined && isWantedNow(plan, id) && !isDone(plan, id));
    // Work that is done asks for its own look; in own words nothing tells what of.
    const isWorked = jobs.some(
      ({ job, id }) =>
        isDone(plan, id) &&
        (points.length === 0 || jobRows(seen, job).length > 0 || recheckOf(seen, job) !== undefined),
    );
    const rows = rowsForFault(fault, known.sheets);
    // Open work with no time to look stands in the work list.
    const isListed = rows.length === 0 && jobs.some(({ id }) => !isDone(plan, id) && !(plan && isDeclined(plan, id)));
    if (isGone || isNow || isWorked || isListed) return [];
    const wanted: LookWanted = {
      id: `finding ${idOf(fault)}`,
      is: "finding",
      of: fault.fault,
      place: fault.place,
      grade: fault.grade,
      from: from(seen),
      rows,
      points,
    };
    return [{ wanted, about: { known, visit: visit.stream, fault, places: [fault.place] } }];
  });
}

const recheckOf = ({ known }: Seen, job: string): number | undefined => known.jobs.get(job)?.job["recheck-km"];
const jobRows = (seen: Seen, job: string): readonly LookRow[] =>
  rowsForJob(job, seen.known.sheets, recheckOf(seen, job));

/** Work that is done, and what is checked after some way, as far as nobody has looked since. */
function worksOf(seen: Seen): readonly Gathered[] {
  const { visit, known, plan, earlier } = seen;
  if (!plan) return [];
  const works = worksTold(plan, {
    says: (job, place) => {
      const sheetJob = known.jobs.get(job)?.job;
      return { ...(sheetJob ? { job: sheetJob } : {}), after: lookedAfter(seen, job, place) };
    },
    answered: () => undefined,
    askedOf: () => "nobody",
    nameOf: () => "",
  });
  const release = plan.release.at(-1)?.value;
  const km = kmOf(release?.odometer) ?? seen.km;
  const make = (
    one: Omit<LookWanted, "grade">,
    job: string | undefined,
    places: readonly string[],
  ): readonly Gathered[] =>
    one.rows.length === 0 || wasLooked(one, seen.after)
      ? []
      : [{ wanted: one, about: { known, visit: visit.stream, places, ...(job === undefined ? {} : { job }) } }];
  const jobs = works.flatMap(({ job, place, doneOn }) => {
    if (doneOn === undefined) return [];
    const points = lookedAfter(seen, job, place);
    const id = `job ${job}@${place}`;
    const rows = jobRows(seen, job);
    return make({ id, is: "job", of: job, place, from: from({ on: doneOn, km }), rows, points }, job, [place]);
  });
  const on =
    release?.on ??
    works
      .flatMap(({ doneOn }) => doneOn ?? [])
      .sort()
      .at(-1) ??
    seen.on;
  const checks = rechecksIn({ known, visit, said: plan }, works, earlier)
    .filter(({ done }) => done === undefined)
    .flatMap(({ id, job, places, km: after, on: by }) => {
      const [place = "car"] = places;
      const points = job === undefined ? [] : lookedAfter(seen, job, place);
      const rows = [{ names: "job", basis: "practice", km: after, on: by }] as const;
      const of = job ?? "wheel-nuts";
      return make({ id: `recheck ${id}`, is: "recheck", of, place, from: from({ on, km }), rows, points }, job, places);
    });
  return [...jobs, ...checks];
}

const isoOf = (days: number): IsoDate => new Date(Math.floor(days) * DAY_MS).toISOString().slice(0, 10);

/** By half of what the trend leaves at the earliest (TR14). */
function wearOf({ all, worn }: LooksOf, isIn: (visit: string) => boolean): readonly Gathered[] {
  return wearingList(all).wearing.flatMap((wearing): readonly Gathered[] => {
    const [look, newest] = [wearing.reach.along?.look, wearing.series.runs.at(-1)?.at(-1)];
    const known = newest && worn.knownAt.get(newest.visit);
    if (!look || !newest || !known || !isIn(newest.visit)) return [];
    const km = look.km === undefined || newest.km === undefined ? undefined : Math.floor(look.km - newest.km);
    const typed = wearing.readings.get(newest.visit)?.typed ?? [];
    const wanted: LookWanted = {
      id: `wear ${wearing.id}@${wearing.place}`,
      is: "wear",
      of: wearing.id,
      place: wearing.place,
      grade: wearing.reach.edge.grade,
      from: from({ on: isoOf(newest.day), km: newest.km }),
      rows: [
        {
          names: "reading",
          basis: "trend",
          ...(km === undefined ? {} : { km }),
          ...(look.day === undefined ? {} : { on: isoOf(look.day) }),
        },
      ],
      points: typed.map(({ key: { point, place } }) => ({ point, place })),
    };
    return [{ wanted, about: { known, visit: newest.visit, wearing, places: [wearing.place] } }];
  });
}

/** When to look again, over the visits that count. */
export function looksNow(of: LooksOf, { upTo, openedAt }: LooksFor = {}): LooksNow {
  const sorted = [...of.visits].sort((a, b) => (lookedOn(a) < lookedOn(b) ? -1 : 1));
  const end = sorted.findIndex(({ stream }) => stream === (upTo ?? openedAt));
  const inTime = end < 0 ? sorted : sorted.slice(0, end + 1);
  const asking = new Set(inTime.flatMap(({ stream }) => (stream === openedAt ? [] : [stream])));
  const seen = seenIn(of, inTime).filter(({ visit }) => asking.has(visit.stream));
  const gathered = new Map(
    [
      ...seen.flatMap((one) => [...findingsOf(one), ...worksOf(one)]),
      ...wearOf(of, (visit) => asking.has(visit) || upTo !== undefined),
    ].map((one) => [one.wanted.id, one] as const),
  );
  const read = inTime.flatMap((visit) => {
    const km = kmAt(visit);
    return km === undefined ? [] : [{ on: dayOf(visit), km }];
  });
  const [odometer, pace] = [read.at(-1), paceOf(read)];
  const newest = inTime.filter(({ stream }) => asking.has(stream)).at(-1);
  const use: CarUse = {
    today: of.today,
    since: newest ? dayOf(newest) : of.today,
    ...(odometer ? { odometer } : {}),
    ...(pace ? { pace } : {}),
  };
  return {
    ...looksAgain(
      [...gathered.values()].map(({ wanted }) => wanted),
      use,
    ),
    about: new Map([...gathered].map(([id, { about }]) => [id, about])),
    use,
    unit: inTime.at(-1)?.odometer.at(-1)?.value.unit === "[mi_i]" ? "[mi_i]" : "km",
  };
}
