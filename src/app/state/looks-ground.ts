/**
 * What is to be looked at again on a car, gathered over its visits: findings left standing, work done, checks after some
 * way, readings that wear. Each visit by its own sheets and judgement. Pure; says nothing in words.
 */
import type { Fault } from "../../core/assess/contract.js";
import {
  type CarUse,
  type IsoDate,
  type KmOn,
  type LookRow,
  type LooksAgain,
  type LookWanted,
  looksAgain,
  order,
  type PointAt,
  paceOf,
  type Recheck,
  rowsForFault,
  rowsForJob,
  urgentFaults,
  type WorkTold,
  wasLooked,
  worksTold,
} from "../../core/plan/index.js";
import { type CarState, lookedOn, type PlanState, placesOf, type VisitState } from "../../core/record/index.js";
import { buildPlaces, type PlaceTree } from "../../core/sheet/run.js";
import { DAY_MS, type ReplyValue } from "../../core/terms/index.js";
import { barePoint } from "./complaint-lines.js";
import type { Knowledge } from "./knowledge.js";
import { isDeclined, isWantedNow } from "./owners-word.js";
import { kmAt, kmOf, lookedAfter, rechecksIn } from "./rechecks-in.js";
import { allWearing, type Wearing, wearingList } from "./wearing-view.js";
import type { LeftVisit, WornCar, WornFault } from "./wearing-visits.js";

export interface LooksOf {
  readonly worn: WornCar;
  readonly all: readonly Wearing[];
  /** Visits nobody could read or judge. */
  readonly left: readonly LeftVisit[];
  readonly visits: readonly VisitState[];
  readonly plans: ReadonlyMap<string, PlanState>;
  readonly car: CarState;
  readonly today: IsoDate;
}

/** Which visits count: up to one (a hand-over is of its day), or what the earlier ones ask of one that is open. */
export interface LooksFor {
  readonly upTo?: string;
  readonly openedAt?: string;
  /** What the odometer shows, where no visit that counts has read it yet. */
  readonly read?: KmOn;
}

/** What a look is at, to be put into words. */
export interface LookAbout {
  readonly known: Knowledge;
  readonly visit: string;
  readonly fault?: Fault;
  readonly job?: string;
  /** Of a check after some way: how its own visit names it. */
  readonly check?: string;
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
  /** So many visits could not be read: what they ask for is not in it, and what they answered ends nothing. */
  readonly left: number;
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
export const isRealAnswer = (value: ReplyValue): boolean =>
  value.type !== "non-answer" || value.nonAnswer === "not-fitted";

const answeredIn = ({ replies }: VisitState): ReadonlySet<string> =>
  new Set(
    [...replies.values()].flatMap(({ key, standing }) =>
      standing.some(({ value }) => isRealAnswer(value)) ? [keyOf(key)] : [],
    ),
  );

const NOTHING: ReadonlySet<string> = new Set();

function seenIn({ worn, visits, plans, car }: LooksOf, inTime: readonly VisitState[]): readonly Seen[] {
  const foundAt = new Map(worn.visits.map(({ stream, found }) => [stream, found]));
  // What a visit found that nobody could judge is not known, so its answers end nothing.
  const answers = inTime.map((visit) => ({
    on: dayOf(visit),
    km: kmAt(visit),
    of: foundAt.has(visit.stream) ? answeredIn(visit) : NOTHING,
  }));
  return inTime.flatMap((visit, at): readonly Seen[] => {
    const [known, found] = [worn.knownAt.get(visit.stream), foundAt.get(visit.stream)];
    // It is counted in what is told, and named where wear is told (TR16).
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

/** First due class with a time to it (PL5); before it stands what is done before the car moves or is driven again. */
const LATER = 2;

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
    // Of one nobody says how urgent it is, the look stays.
    const isNow =
      (urgent.get(idOf(fault)) ?? LATER) < LATER ||
      jobs.some(({ id }) => plan !== undefined && isWantedNow(plan, id) && !isDone(plan, id));
    // Work that is done asks for its own look; in own words nothing tells what of.
    const wanted = jobs.filter(({ id }) => !(plan && isDeclined(plan, id)));
    const isWorked =
      wanted.length > 0 &&
      wanted.every(
        ({ job, id }) =>
          isDone(plan, id) &&
          (points.length === 0 || jobRows(seen, job).length > 0 || recheckOf(seen, job) !== undefined),
      );
    const rows = rowsForFault(fault, known.sheets);
    // Open work with no time to look stands in the work list.
    const isListed = rows.length === 0 && wanted.some(({ id }) => !isDone(plan, id));
    if (isGone || isNow || isWorked || isListed) return [];
    const look: LookWanted = {
      id: `finding ${idOf(fault)}`,
      is: "finding",
      of: fault.fault,
      place: fault.place,
      grade: fault.grade,
      from: from(seen),
      rows,
      points,
    };
    return [{ wanted: look, about: { known, visit: visit.stream, fault, places: [fault.place] } }];
  });
}

const recheckOf = ({ known }: Seen, job: string): number | undefined => known.jobs.get(job)?.job["recheck-km"];
const jobRows = (seen: Seen, job: string): readonly LookRow[] =>
  rowsForJob(job, seen.known.sheets, recheckOf(seen, job));

/** What was done in a visit, and what is checked after some way. */
interface Worked {
  readonly seen: Seen;
  readonly works: readonly WorkTold[];
  readonly checks: readonly Recheck[];
  /** From when the checks count. */
  readonly on: IsoDate;
}

function workedIn(seen: Seen): Worked | undefined {
  const { visit, known, plan, earlier } = seen;
  if (!plan) return undefined;
  const works = worksTold(plan, {
    says: (job, place) => {
      const sheetJob = known.jobs.get(job)?.job;
      return { ...(sheetJob ? { job: sheetJob } : {}), after: lookedAfter(seen, job, place) };
    },
    answered: () => undefined,
    askedOf: () => "nobody",
    nameOf: () => "",
  });
  const days = works.flatMap(({ doneOn }) => doneOn ?? []).sort();
  const on = plan.release.at(-1)?.value.on ?? days.at(-1) ?? seen.on;
  return { seen, works, checks: rechecksIn({ known, visit, said: plan }, works, earlier), on };
}

const NUTS = "wheel-nuts";

/**
 * Its places without those at which the same was done anew since, done or not: nuts that were off again are asked of the
 * visit that had them off last.
 */
function standsAt({ job, places }: Recheck, on: IsoDate, later: readonly Worked[]): readonly string[] {
  const anew = later.filter((one) => one.on >= on).flatMap(({ checks }) => checks.filter((one) => one.job === job));
  return places.filter((place) => !anew.some((one) => one.places.includes(place)));
}

/** Work that is done, and what is checked after some way, as far as nobody has looked since. */
function worksOf({ seen, works, checks, on }: Worked, later: readonly Worked[]): readonly Gathered[] {
  const { visit, known, plan } = seen;
  const km = kmOf(plan?.release.at(-1)?.value.odometer) ?? seen.km;
  const make = (
    one: Omit<LookWanted, "grade">,
    about: Pick<LookAbout, "job" | "check" | "places">,
  ): readonly Gathered[] =>
    one.rows.length === 0 || wasLooked(one, seen.after)
      ? []
      : [{ wanted: one, about: { known, visit: visit.stream, ...about } }];
  const jobs = works.flatMap(({ job, place, doneOn }) => {
    if (doneOn === undefined) return [];
    const points = lookedAfter(seen, job, place);
    const id = `job ${job}@${place}`;
    const rows = jobRows(seen, job);
    return make(
      { id, is: "job", of: job, place, from: from({ on: doneOn, km }), rows, points },
      { job, places: [place] },
    );
  });
  const due = checks.flatMap((check) => {
    const places = standsAt(check, on, later);
    const { id, job, km: after, on: by, done } = check;
    const [place] = places;
    if (done !== undefined || place === undefined) return [];
    return make(
      {
        // Two visits may each ask for wheel nuts, at other wheels.
        id: `recheck ${visit.stream} ${id}`,
        is: "recheck",
        of: job ?? NUTS,
        place,
        from: from({ on, km }),
        rows: [{ names: "job", basis: "practice", km: after, on: by }],
        points: job === undefined ? [] : lookedAfter(seen, job, place),
      },
      { check: id, places, ...(job === undefined ? {} : { job }) },
    );
  });
  return [...jobs, ...due];
}

const isoOf = (days: number): IsoDate => new Date(Math.floor(days) * DAY_MS).toISOString().slice(0, 10);

/** By half of what the trend leaves at the earliest (TR14). */
function wearOf(all: readonly Wearing[], { knownAt }: WornCar, isIn: (visit: string) => boolean): readonly Gathered[] {
  return wearingList(all).wearing.flatMap((wearing): readonly Gathered[] => {
    const [look, newest] = [wearing.reach.along?.look, wearing.series.runs.at(-1)?.at(-1)];
    const known = newest && knownAt.get(newest.visit);
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

/** The visits up to one, that one with them; all of them where none is named. */
function upToVisit(visits: readonly VisitState[], last: string | undefined): readonly VisitState[] {
  const sorted = [...visits].sort((a, b) => (lookedOn(a) < lookedOn(b) ? -1 : 1));
  const end = sorted.findIndex(({ stream }) => stream === last);
  return end < 0 ? sorted : sorted.slice(0, end + 1);
}

/** What wore by the day of one visit: neither what was read later nor what was done in a later visit counts. */
export function wearingUpTo(
  { worn, visits, plans }: Pick<LooksOf, "worn" | "visits" | "plans">,
  last: string,
): readonly Wearing[] {
  const streams = new Set(upToVisit(visits, last).map(({ stream }) => stream));
  const cut = { ...worn, visits: worn.visits.filter(({ stream }) => streams.has(stream)) };
  return allWearing(cut, new Map([...plans].filter(([stream]) => streams.has(stream))));
}

/** How many visits before one could not be read. Of one of which not even the day is known it counts as before. */
export const unreadBefore = (left: readonly LeftVisit[], visit: VisitState): number =>
  left.filter((one) => one.stream !== visit.stream && (one.at === undefined || one.at <= lookedOn(visit))).length;

/** When to look again, over the visits that count; what came after them counts for nothing. */
export function looksNow(of: LooksOf, { upTo, openedAt, read: now }: LooksFor = {}): LooksNow {
  const inTime = upToVisit(of.visits, upTo ?? openedAt);
  const asking = new Set(inTime.flatMap(({ stream }) => (stream === openedAt ? [] : [stream])));
  const seen = seenIn(of, inTime).filter(({ visit }) => asking.has(visit.stream));
  const worked = seen.flatMap((one) => workedIn(one) ?? []);
  const all = upTo === undefined ? of.all : wearingUpTo(of, upTo);
  const gathered = new Map(
    [
      ...seen.flatMap(findingsOf),
      ...worked.flatMap((one, at) => worksOf(one, worked.slice(at + 1))),
      ...wearOf(all, of.worn, (visit) => asking.has(visit)),
    ].map((one) => [one.wanted.id, one] as const),
  );
  const told = inTime.flatMap((visit): readonly KmOn[] => {
    const km = kmAt(visit);
    return km === undefined ? [] : [{ on: dayOf(visit), km }];
  });
  const read = now ? [...told, now] : told;
  const [odometer, pace] = [read.at(-1), paceOf(read)];
  const odometerAt = inTime.findLast((visit) => visit.odometer.length > 0);
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
    unit: odometerAt?.odometer.at(-1)?.value.unit === "[mi_i]" ? "[mi_i]" : "km",
    left: of.left.filter(({ stream, at }) => at === undefined || asking.has(stream)).length,
  };
}
