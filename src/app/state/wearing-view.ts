/**
 * What is wearing on a car, soonest first: plain facts of every part with readings and a limit it is on its way to.
 * Pure; telling them in words is wearing-words.ts' work.
 */
import type { Grounded, JudgedLimit } from "../../core/assess/index.js";
import { type PlanState, wearKey } from "../../core/record/index.js";
import type { Limit } from "../../core/sheet/run.js";
import { DAY_MS, GRADES } from "../../core/terms/index.js";
import { type Edge, type Reach, type Seen, type Series, seriesOf, type Way } from "../../core/trend/index.js";
import { convert, isQuantity, toCanonical, unitOf } from "../../core/units/index.js";
import { capital, derivedName, fieldName, type Knowledge, placeName } from "./knowledge.js";
import type { WornCar, WornVisit } from "./wearing-visits.js";

/** A reading of one part at one visit, as typed. */
export interface WornReading {
  readonly visit: string;
  readonly at: string;
  readonly typed: Grounded["typed"];
}
export interface Wearing {
  /** In addresses: `of~field`. */
  readonly id: string;
  readonly of: string;
  readonly field: string;
  readonly place: string;
  readonly title: string;
  readonly where: string;
  readonly unit: string;
  readonly series: Series;
  readonly readings: ReadonlyMap<string, WornReading>;
  /** The edge told first: the next one not passed, else the gravest passed. */
  readonly reach: Reach;
  /** The edge before it, passed already. */
  readonly passed?: Reach;
}

const dayNumber = (iso: string): number => Math.floor(Date.parse(iso.slice(0, 10)) / DAY_MS);

/** A direction a newer sheet may bring is none that is known here. */
const WAYS: Readonly<Record<string, Way>> = { over: "up", "at-or-over": "up", under: "down", "at-or-under": "down" };
const wayOf = ({ direction }: Pick<JudgedLimit, "direction">): Way | undefined =>
  Object.hasOwn(WAYS, direction) ? WAYS[direction] : undefined;

/** Limits that hold and say that a reading wears. */
const wearingLimits = ({ wears }: WornCar, { reading }: Grounded): readonly JudgedLimit[] =>
  reading.limits.filter((one) => wears.has(one.limit) && one.applies === "yes");

/** Which way is wear; undefined where the limits do not say it, or say both. */
export function wayIn(limits: readonly Pick<JudgedLimit, "direction">[]): Way | undefined {
  const [way, ...others] = new Set(limits.map(wayOf));
  return others.length === 0 ? way : undefined;
}

/** Edges of the limits that say what wears this way, in the unit of the reading. */
function edgesOf(car: WornCar, one: Grounded, way: Way): readonly Edge[] {
  const { reading } = one;
  return wearingLimits(car, one).flatMap((one): readonly Edge[] => {
    const quantity = car.known.limits.get(one.limit)?.quantity ?? "";
    if (wayOf(one) !== way || !isQuantity(quantity)) return [];
    return GRADES.flatMap((grade): readonly Edge[] => {
      const band = one.bands[grade];
      if (band === undefined) return [];
      const at = convert(band, one.unit, reading.unit, quantity);
      return [{ limit: one.limit, grade, at, basis: one.basis, source: one.source, isDefault: one.isDefault }];
    });
  });
}

function kmOf({ odometer }: WornVisit): number | undefined {
  if (!odometer || unitOf(odometer.unit, "distance") === undefined) return undefined;
  const km = toCanonical(odometer.value, odometer.unit, "distance");
  return Number.isFinite(km) ? km : undefined;
}

const fieldOf = ({ key }: Grounded["typed"][number]): string => `${key.point}.${key.field}`;

function seenOf(car: WornCar, { visit, one }: Read, way: Way): Seen {
  const km = kmOf(visit);
  return {
    visit: visit.stream,
    day: dayNumber(visit.at),
    ...(km === undefined ? {} : { km }),
    value: one.reading.value,
    uncertainty: one.reading.uncertainty,
    method: [...new Set(one.typed.map(fieldOf))].sort(),
    gauges: [...new Set(one.typed.flatMap(({ gauge }) => gauge?.id ?? []))].sort(),
    edges: edgesOf(car, one, way),
  };
}

/** Jobs of the rules that go by this reading: what would better it. */
function jobsFor(known: Knowledge, of: string): ReadonlySet<string> {
  const plain = of.replaceAll("-", "_");
  const asked = `band(${plain})`;
  return new Set(
    [...known.rules.values()].flatMap(({ grade, when, jobs }) => {
      const byGrade = typeof grade === "object" && grade["limit-of"].replaceAll("-", "_") === plain;
      return byGrade || when.includes(asked) ? (jobs ?? []) : [];
    }),
  );
}

/** Jobs done and parts fitted at a place that holds this one or lies in it. */
function doneAt(
  car: WornCar,
  plans: readonly PlanState[],
  of: string,
  place: string,
): readonly { day: number; job: string }[] {
  const jobs = jobsFor(car.known, of);
  const steps = plans.flatMap((plan) => [
    ...[...plan.jobSteps.values()].flat().filter(({ value }) => value.step === "done"),
    ...[...plan.partSteps.values()].flat().filter(({ value }) => value.step === "fitted"),
  ]);
  return steps.flatMap(({ value }) =>
    jobs.has(value.job) && (car.tree.within(value.place, place) || car.tree.within(place, value.place))
      ? [{ day: dayNumber(value.on), job: value.job }]
      : [],
  );
}

/** The name of a point's field, or of a value worked out. */
function titleOf(known: Knowledge, of: string, field: string, typed: Grounded["typed"]): string {
  const point = known.points.get(of);
  if (!point) {
    const read = known.points.get(typed[0]?.key.point ?? "")?.text.name;
    const name = derivedName(known, of);
    return capital(read === undefined ? name : `${read}: ${name}`);
  }
  const several = Object.values(point.point.fields).filter((one) => "quantity" in one || "count" in one).length > 1;
  return capital(several ? fieldName(point.text, field) : point.text.name);
}

interface Read {
  readonly visit: WornVisit;
  readonly one: Grounded;
}

/** One part over all visits; undefined where no limit says that it wears. */
function wearingOf(car: WornCar, plans: ReadonlyMap<string, PlanState>, reads: readonly Read[]): Wearing | undefined {
  const newest = reads.at(-1)?.one;
  const limits = newest ? wearingLimits(car, newest) : [];
  const way = wayIn(limits);
  if (!newest || limits.length === 0 || way === undefined) return undefined;
  const { point: of, field, place, unit } = newest.reading;
  const points = new Set(reads.flatMap(({ one }) => one.typed.map(({ key }) => `${key.point}@${key.place}`)));
  const words = new Map(
    [...plans].flatMap(([visit, plan]) => {
      const said = plan.wear.get(wearKey({ of, field, place }))?.at(-1)?.value;
      return said === undefined ? [] : [[visit, said] as const];
    }),
  );
  const series = seriesOf({
    way,
    wears: together(newest.reading.limits.flatMap((one) => car.wears.get(one.limit) ?? [])),
    seen: reads.filter(({ one }) => one.reading.unit === unit).map((read) => seenOf(car, read, way)),
    words,
    done: doneAt(car, [...plans.values()], of, place),
    away: car.visits.flatMap((visit) =>
      [...points].some((one) => visit.notFitted.has(one)) ? [dayNumber(visit.at)] : [],
    ),
  });
  const ahead = series.reaches.find((one) => one.is !== "past");
  const past = series.reaches.filter((one) => one.is === "past").at(-1);
  const reach = ahead ?? past;
  if (!reach) return undefined;
  return {
    id: `${of}~${field}`,
    of,
    field,
    place,
    title: titleOf(car.known, of, field, newest.typed),
    where: place === "car" ? "" : capital(placeName(car.known, place)),
    unit,
    series,
    readings: new Map(
      reads.map(({ visit, one }) => [visit.stream, { visit: visit.stream, at: visit.at, typed: one.typed }]),
    ),
    reach,
    ...(past && past !== reach ? { passed: past } : {}),
  };
}

/** Several limits over one value may say both. */
const together = (wears: readonly NonNullable<Limit["wears"]>[]): NonNullable<Limit["wears"]> => {
  const [first] = wears;
  return first !== undefined && wears.every((one) => one === first) ? first : "either";
};

const RANK = { past: 0, reaches: 1, "not-yet": 2, alone: 3 } as const;
const rankOf = ({ passed, reach }: Wearing): number => (passed ? RANK.past : RANK[reach.is]);
const soonestOf = ({ reach }: Wearing): number =>
  reach.along?.days.earliest ?? reach.along?.days.likely ?? Number.POSITIVE_INFINITY;

const readsIn = (car: WornCar): ReadonlyMap<string, Read[]> => {
  const byPart = new Map<string, Read[]>();
  for (const visit of car.visits)
    for (const one of visit.grounds) {
      const key = wearKey({ of: one.reading.point, field: one.reading.field, place: one.reading.place });
      const there = byPart.get(key);
      if (there) there.push({ visit, one });
      else byPart.set(key, [{ visit, one }]);
    }
  return byPart;
};

/** A part of which nothing, or not everything, can be compared, and why. */
export interface Untold {
  readonly id: string;
  readonly title: string;
  readonly where: string;
  /** `way`: its limits do not say which way is wear, or disagree · `unit`: read in another unit at these visits. */
  readonly why: "way" | "unit";
  /** Days, as ISO text. */
  readonly on: readonly string[];
}

/** Parts that would be compared and are not, or not at every visit. */
export function untoldIn(car: WornCar): readonly Untold[] {
  return [...readsIn(car)].flatMap(([id, reads]): readonly Untold[] => {
    const newest = reads.at(-1)?.one;
    const limits = newest ? wearingLimits(car, newest) : [];
    if (!newest || limits.length === 0) return [];
    const { point: of, field, place, unit } = newest.reading;
    const named = {
      id,
      title: titleOf(car.known, of, field, newest.typed),
      where: place === "car" ? "" : capital(placeName(car.known, place)),
    };
    if (wayIn(limits) === undefined) return [{ ...named, why: "way", on: [] }];
    const others = reads.filter(({ one }) => one.reading.unit !== unit);
    return others.length === 0 ? [] : [{ ...named, why: "unit", on: others.map(({ visit }) => visit.at) }];
  });
}

/** Every part with a limit it wears towards: passed first, then the soonest; those nothing can be said of yet last. */
export function allWearing(car: WornCar, plans: ReadonlyMap<string, PlanState>): readonly Wearing[] {
  return [...readsIn(car).values()]
    .flatMap((reads) => wearingOf(car, plans, reads) ?? [])
    .sort((a, b) => rankOf(a) - rankOf(b) || soonestOf(a) - soonestOf(b));
}

/** The parts in three heaps; of several values worked out of the same reading only the one that ends first. */
export function wearingList(all: readonly Wearing[]): {
  readonly wearing: readonly Wearing[];
  readonly notYet: readonly Wearing[];
  readonly alone: readonly Wearing[];
} {
  const told = new Set<string>();
  const once = all.filter((one) => {
    const key = `${[...one.readings.values()].at(-1)?.typed[0]?.key.point ?? one.of}@${one.place}`;
    const isNew = !told.has(key);
    told.add(key);
    return isNew;
  });
  return {
    wearing: once.filter((one) => rankOf(one) <= RANK.reaches),
    notYet: once.filter((one) => rankOf(one) === RANK["not-yet"]),
    alone: once.filter((one) => rankOf(one) === RANK.alone),
  };
}

/** The part an address names. */
export const wearingAt = (all: readonly Wearing[], id: string, place: string): Wearing | undefined =>
  all.find((one) => one.id === id && one.place === place);
