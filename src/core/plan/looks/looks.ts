/**
 * When to look again: of each thing the earliest figure, distance and day; those that lie near each other as one visit.
 * Knows no sheet, no record and no words, and takes nothing unknown for nothing.
 */
import { addMonths, YEAR } from "../by-when.js";
import { dayNumber } from "../schedule/days.js";
import type { IsoDate } from "../terms.js";
import type { ByUse, CarUse, LookDue, LookRow, LookStands, LooksAgain, LookVisit, LookWanted } from "./contract.js";
import { dayByUse } from "./use.js";

/** First span from the newest visit on; each further one is twice as long. Our own rule. */
const FIRST_DAYS = 8;
/** Before all spans: due by the newest visit already. */
const DUE = -1;

/** Everything that is to be looked at again, nearest first, and what nothing says a time for. */
export function looksAgain(wanted: readonly LookWanted[], use: CarUse): LooksAgain {
  const all = wanted.map((one) => ({ one, near: nearOf(one, use) }));
  const unsaid = all.flatMap(({ one, near }) => (near === undefined ? [one] : [])).sort(byId);
  const looks = all
    .flatMap(({ one, near }) => (near === undefined ? [] : [{ due: dueOf(one, use), near }]))
    .sort((a, b) => a.near - b.near || graver(a.due, b.due) || byId(a.due, b.due));
  const spans = new Map<number, LookDue[]>();
  for (const { due, near } of looks) {
    const span = spanOf(near);
    const there = spans.get(span);
    if (there) there.push(due);
    else spans.set(span, [due]);
  }
  return { visits: [...spans].map(([span, of]) => visitOf(`look-${span}`, of)), unsaid };
}

const byId = (a: LookWanted, b: LookWanted): number => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
const GRAVITY = ["dangerous", "major", "minor", "advisory"];
const graver = (a: LookWanted, b: LookWanted): number =>
  GRAVITY.indexOf(a.grade ?? "advisory") - GRAVITY.indexOf(b.grade ?? "advisory");

/**
 * The spans are fixed, so that one look more can never move another into a later visit; and each is as long as all
 * before it, so that none is brought forward by more than half of its time.
 */
function spanOf(near: number): number {
  if (near <= 0) return DUE;
  let span = 0;
  for (let end = FIRST_DAYS; end < near; end *= 2) span += 1;
  return span;
}

const least = <T extends number | string>(all: readonly T[]): T | undefined =>
  all.reduce<T | undefined>((low, one) => (low === undefined || one < low ? one : low), undefined);

/** The figures of one look: each the least that is stated, with the rows they come from. */
function figuresOf({ rows, from }: LookWanted) {
  const dayIn = ({ on, months }: LookRow): IsoDate | undefined =>
    least([on, months === undefined ? undefined : addMonths(from.on, months)].flatMap((day) => day ?? []));
  const km = least(rows.flatMap((row) => row.km ?? []));
  const by = least(rows.flatMap((row) => dayIn(row) ?? []));
  const why = rows.filter((row) => (km !== undefined && row.km === km) || (by !== undefined && dayIn(row) === by));
  return { km, by, why };
}

/** Where a distance begins to be counted in time: at the newest reading of the odometer, else where it counts from. */
function startOf(
  { from }: LookWanted,
  km: number,
  { odometer }: CarUse,
): { readonly on: IsoDate; readonly left: number } {
  if (from.km === undefined || odometer === undefined || odometer.on < from.on || odometer.km < from.km)
    return { on: from.on, left: km };
  return { on: odometer.on, left: from.km + km - odometer.km };
}

/**
 * Days from the newest visit until it is due; undefined where no figure is stated. Where the car's own use is not
 * known an ordinary year says which of two comes first, and nothing else.
 */
function nearOf(wanted: LookWanted, use: CarUse): number | undefined {
  const { km, by } = figuresOf(wanted);
  const since = dayNumber(use.since) ?? 0;
  const days: number[] = [];
  const stated = by === undefined ? undefined : dayNumber(by);
  if (stated !== undefined) days.push(stated - since);
  if (km !== undefined) {
    const { on, left } = startOf(wanted, km, use);
    const pace = use.pace?.most ?? use.pace?.likely ?? YEAR.km / YEAR.days;
    days.push((dayNumber(on) ?? since) + left / pace - since);
  }
  return least(days);
}

/** Read lower since, an odometer has run over or is another one: what it showed before is no figure of it. */
const isCountedAnew = ({ from }: LookWanted, { odometer }: CarUse): boolean =>
  from.km !== undefined && odometer !== undefined && odometer.on > from.on && odometer.km < from.km;

function dueOf(wanted: LookWanted, use: CarUse): LookDue {
  const { km, by, why } = figuresOf(wanted);
  const from = isCountedAnew(wanted, use) ? { on: wanted.from.on } : wanted.from;
  const start = km === undefined ? undefined : startOf(wanted, km, use);
  const byUse = start && dayByUse(start.on, start.left, use.pace);
  const at = km === undefined || from.km === undefined ? undefined : from.km + km;
  const day = least([by, byUse?.earliest ?? byUse?.likely].flatMap((one) => one ?? []));
  return {
    ...wanted,
    from,
    ...(km === undefined ? {} : { after: km }),
    ...(at === undefined ? {} : { at }),
    ...(by === undefined ? {} : { by }),
    ...(byUse === undefined ? {} : { byUse }),
    ...(day === undefined ? {} : { day }),
    stands: standsAt({ at, by, day }, use),
    why,
  };
}

function standsAt(
  {
    at,
    by,
    day,
  }: { readonly at: number | undefined; readonly by: IsoDate | undefined; readonly day: IsoDate | undefined },
  { today, odometer }: CarUse,
): LookStands {
  const read = odometer?.km;
  if ((by !== undefined && by < today) || (at !== undefined && read !== undefined && read > at)) return "overdue";
  return (day !== undefined && day <= today) || (at !== undefined && read === at) ? "now" : "ahead";
}

const WORST: readonly LookStands[] = ["overdue", "now", "ahead"];

const daysOf = ({ earliest, likely, latest = "" }: ByUse): string => `${earliest ?? likely} ${likely} ${latest}`;

/** At the earliest of each figure. */
function visitOf(id: string, looks: readonly LookDue[]): LookVisit {
  const at = least(looks.flatMap((one) => one.at ?? []));
  const by = least(looks.flatMap((one) => one.by ?? []));
  const day = least(looks.flatMap((one) => one.day ?? []));
  const unread = looks
    .flatMap(({ at: known, after, from }) =>
      known === undefined && after !== undefined ? [{ km: after, from: from.on }] : [],
    )
    .sort((a, b) => a.km - b.km || (a.from < b.from ? -1 : 1))[0];
  const byUse = looks.flatMap((one) => one.byUse ?? []).sort((a, b) => (daysOf(a) < daysOf(b) ? -1 : 1))[0];
  return {
    id,
    looks,
    ...(at === undefined ? {} : { at }),
    ...(unread === undefined ? {} : { after: unread }),
    ...(by === undefined ? {} : { by }),
    ...(byUse === undefined ? {} : { byUse }),
    ...(day === undefined ? {} : { day }),
    stands: WORST.find((one) => looks.some(({ stands }) => stands === one)) ?? "ahead",
  };
}
