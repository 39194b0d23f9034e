/**
 * The work list in urgency order: faults with their keys, jobs merged from them, why one stands above another.
 * Knows no access, hours or money; never adds a score to another.
 */
import type { Assessment, ByWhen, Fault, JobDue, UrgencyKey, Why } from "../assess/contract.js";
import { type Grade, worse } from "../terms/index.js";
import { byWhen, daysBetween, type Figures, type NextLookRow, statedLeft } from "./by-when.js";
import { compareKeys, type KeyPart, likelihoodFromTrend, type Urgency, urgencyOf } from "./urgency.js";

/** What the trend of a fault says (lower bounds, so that no later date than is safe is shown). */
export interface FaultTrend {
  readonly fault: string;
  readonly place: string;
  /** Way left before the limit; at or below 0: passed. */
  readonly left: { readonly km?: number; readonly days?: number };
  /** The dangerous edge or the legal limit is passed already. */
  readonly limitPassed?: boolean;
}

export interface OrderSetting extends Figures {
  /** −1 laid up, 0 normal, +1 track, towing, long motorway. */
  readonly exposure: -1 | 0 | 1;
  /** Way to the next planned visit, km. Days come from `at` and `nextVisit`. */
  readonly nextVisitKm?: number;
  readonly trends?: readonly FaultTrend[];
  /** The place of a kind around a place (the car's place tree); absent: a job stands where its fault does. */
  readonly around?: (place: string, kind: string) => string | undefined;
}

/** What ordering needs of an open sheet. */
export interface SheetJobs {
  readonly sheet: {
    readonly jobs: readonly {
      readonly id: string;
      readonly place: string;
      readonly "included-in"?: readonly string[] | undefined;
    }[];
    readonly nextLooks: readonly NextLookRow[];
    /** What its rules name: a row for a grade holds for these faults only. */
    readonly rules: readonly { readonly fault?: string | undefined }[];
  };
}

export interface FaultDue {
  readonly fault: Fault;
  readonly urgency: Urgency;
  readonly byWhen: ByWhen;
}

/** Every fault with its urgency, most urgent first. */
export function urgentFaults(
  faults: readonly Fault[],
  sheets: readonly SheetJobs[],
  setting: OrderSetting,
): readonly FaultDue[] {
  return faults
    .map((fault): FaultDue => {
      const trend = setting.trends?.find((t) => t.fault === fault.fault && t.place === fault.place);
      const left = trend && shareLeft(trend, setting);
      const urgency = urgencyOf({
        id: `${fault.fault}@${fault.place}`,
        grade: fault.grade,
        consequence: fault.consequence,
        likelihood: left === undefined ? fault.likelihood : likelihoodFromTrend(left),
        mustStand: fault.mustStand,
        exposure: setting.exposure,
        close: fault.close,
        position: fault.position,
        ...(trend?.limitPassed === undefined ? {} : { limitPassed: trend.limitPassed }),
        ...(left === undefined ? {} : { left }),
      });
      const stated = byWhen(urgency.key.due, fault, trend?.left, looksFor(fault, sheets), setting);
      const key = { ...urgency.key, left: urgency.key.left ?? statedLeft(stated, setting, setting.nextVisitKm) };
      return { fault, urgency: { ...urgency, key }, byWhen: stated };
    })
    .sort((a, b) => compareKeys(a.urgency.key, b.urgency.key).sign);
}

/** Rows that name the fault, of any sheet, and those for a grade of the sheet that names it: rust keeps no distance. */
export function looksFor({ fault }: Pick<Fault, "fault">, sheets: readonly SheetJobs[]): readonly NextLookRow[] {
  return sheets.flatMap(({ sheet }) => {
    const isOwn = sheet.rules.some((rule) => rule.fault === fault);
    return sheet.nextLooks.filter((look) => isOwn || look.fault !== undefined);
  });
}

/** Way left ÷ way to the next visit, the shorter of distance and time; undefined when neither can be told. */
function shareLeft(trend: FaultTrend, setting: OrderSetting): number | undefined {
  const shares: number[] = [];
  const { km, days } = trend.left;
  if (km !== undefined && km <= 0) shares.push(0);
  else if (km !== undefined && setting.nextVisitKm !== undefined && setting.nextVisitKm > 0)
    shares.push(km / setting.nextVisitKm);
  const daysToNext = daysBetween(setting.at, setting.nextVisit);
  if (days !== undefined && days <= 0) shares.push(0);
  else if (days !== undefined && daysToNext !== undefined && daysToNext > 0) shares.push(days / daysToNext);
  return shares.length === 0 ? undefined : Math.min(...shares);
}

/**
 * The jobs in urgency order. A job takes the key of its most urgent fault; the same job at the same place is one.
 * Faults without a job are not in it: they stand in the findings.
 */
export function order(
  assessment: Pick<Assessment, "faults">,
  sheets: readonly SheetJobs[],
  setting: OrderSetting,
): readonly JobDue[] {
  const jobs = new Map(sheets.flatMap((s) => s.sheet.jobs.map((j) => [j.id, j] as const)));
  const merged = new Map<string, JobAtPlace>();
  for (const due of urgentFaults(assessment.faults, sheets, setting)) {
    for (const job of due.fault.jobs) {
      const kind = jobs.get(job)?.place;
      const place = (kind === undefined ? undefined : setting.around?.(due.fault.place, kind)) ?? due.fault.place;
      const at = `${job}@${place}`;
      const entry = merged.get(at) ?? { job, place, faults: [], includes: [] };
      entry.faults.push(due);
      merged.set(at, entry);
    }
  }
  contain(merged, (job) => jobs.get(job)?.["included-in"] ?? []);
  // faults arrive most urgent first, so each job's first is its key; ties between jobs of one fault go by the job's id
  return [...merged.values()]
    .map(({ job, place, faults, includes }): JobDue => {
      const first = faults[0];
      if (first === undefined) throw new Error(`job ${job} without a fault`);
      const others: readonly Why[] =
        faults.length > 1 ? [{ code: "answers-several", params: { faults: faults.length } }] : [];
      return {
        job,
        place,
        grade: faults.reduce<Grade>((w, f) => worse(w, f.fault.grade) ?? w, first.fault.grade),
        faults: faults.map((f) => ({ fault: f.fault.fault, place: f.fault.place })),
        rank: first.urgency.key.rank,
        byWhen: soonest(faults.map((f) => f.byWhen)),
        key: first.urgency.key,
        why: [...first.urgency.why, ...others],
        includes,
      };
    })
    .sort((a, b) => compareJobs(a, b).sign);
}

/** A job at a place while it is put together; its faults stand most urgent first. */
interface JobAtPlace {
  readonly job: string;
  readonly place: string;
  faults: FaultDue[];
  includes: string[];
}

/** Folds every job into the greatest one due at the same place that contains its work. */
function contain(merged: Map<string, JobAtPlace>, greater: (job: string) => readonly string[]): void {
  const holder = (job: string, place: string, below: readonly string[]): JobAtPlace | undefined => {
    for (const candidate of greater(job)) {
      const entry = merged.get(`${candidate}@${place}`);
      // a sheet that runs in a circle is refused where it is checked; an older frozen one must not hang
      if (entry !== undefined && !below.includes(candidate))
        return holder(candidate, place, [...below, candidate]) ?? entry;
    }
    return undefined;
  };
  const folded = [...merged].flatMap(([at, small]) => {
    const into = holder(small.job, small.place, [small.job]);
    return into === undefined ? [] : [{ at, small, into }];
  });
  for (const { at, small, into } of folded) {
    into.faults.push(...small.faults.filter((f) => !into.faults.includes(f)));
    into.includes.push(small.job);
    merged.delete(at);
  }
  for (const { into } of folded) {
    into.faults.sort((a, b) => compareKeys(a.urgency.key, b.urgency.key).sign);
    into.includes.sort();
  }
}

/**
 * Class of the most urgent, with the nearest distance and date of any fault the job answers. Where one of that class has
 * no figure, none is stated: the figure of a lesser one would promise it more time than anybody knows it has.
 */
function soonest(all: readonly ByWhen[]): ByWhen {
  const first = all[0];
  if (first === undefined) throw new Error("no due date to choose from");
  const isOpen = all.some((b) => b.class === first.class && b.distance === undefined && b.date === undefined);
  if (isOpen) return { class: first.class };
  const distances = all.flatMap((b) => (b.distance === undefined ? [] : [b.distance]));
  const dates = all.flatMap((b) => (b.date === undefined ? [] : [b.date])).sort();
  const nearest = distances.sort((a, b) => a.value - b.value)[0];
  return {
    class: first.class,
    ...(nearest === undefined ? {} : { distance: nearest }),
    ...(dates[0] === undefined ? {} : { date: dates[0] }),
  };
}

function compareJobs(a: JobDue, b: JobDue): { readonly sign: -1 | 0 | 1; readonly by: KeyPart | "job" } {
  const keys = compareKeys(a.key, b.key);
  if (keys.sign !== 0) return keys;
  const at = (j: JobDue) => `${j.job}@${j.place}`;
  return { sign: at(a) < at(b) ? -1 : at(a) > at(b) ? 1 : 0, by: "job" };
}

/** Why one stands above another: the first part of the key that differs, and both values of it. */
export interface Reason {
  readonly above: string;
  readonly below: string;
  readonly why: Why;
}

/** Why the upper of two keys stands above: the first part that differs. */
export function whyKeys(a: UrgencyKey, b: UrgencyKey): Why {
  const { by } = compareKeys(a, b);
  const [upper, lower] = compareKeys(a, b).sign <= 0 ? [a, b] : [b, a];
  return { code: `above.${by}`, params: { upper: partOf(upper, by), lower: partOf(lower, by) } };
}

function partOf(key: UrgencyKey, by: KeyPart): string | number {
  if (by === "dangerous" || by === "grade") return key.grade;
  if (by === "left") return key.left ?? "not known";
  return by === "due" ? key.due : by === "rank" ? key.rank : by === "position" ? key.position : key.id;
}

/** Why job A stands above job B (or the other way round: `above` names the upper one). */
export function whyAbove(a: JobDue, b: JobDue): Reason {
  const { sign, by } = compareJobs(a, b);
  const [upper, lower] = sign <= 0 ? [a, b] : [b, a];
  const name = (j: JobDue) => `${j.job}@${j.place}`;
  const why =
    by === "job" ? { code: "above.id", params: { upper: name(upper), lower: name(lower) } } : whyKeys(a.key, b.key);
  return { above: name(upper), below: name(lower), why };
}
