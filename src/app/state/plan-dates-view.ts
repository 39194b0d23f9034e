/**
 * The dates of a plan in words: when it is ready and how sure that is, what holds the car up, what would be gained, until
 * when to order, how long the lift is held, what has no date. Pure; every day comes from core/plan.
 */
import type { Hold, IsoDate, LiftUse, Schedule, WorkPlan } from "../../core/plan/index.js";
import type { Problem } from "../../core/terms/index.js";
import { daysWords, dayWords, shortDay } from "../texts/days.js";
import { t } from "../texts/plan-dates.js";
import { daysBetween } from "./day-sums.js";
import { beatsWords, byWhen } from "./order-words.js";
import { last } from "./plan-input.js";
import { type PartsKnown, type PlannedPart, plannedParts } from "./plan-part-view.js";
import { minutesText, partTitle, planName, planProblem } from "./plan-words.js";

type NameOf = (id: string) => string;

const supplierName = ({ house }: PartsKnown, id: string): string | undefined => last(house?.suppliers.get(id))?.name;

/** What anything the dates name is called: jobs, openings and puttings back, parts, suppliers. */
export const dateNames =
  (known: PartsKnown): NameOf =>
  (id) =>
    supplierName(known, id) ?? planName(known.telling, known.said, id);

/** A problem of the dates in words; suppliers by their names too. */
function problemWords(known: PartsKnown, { params, ...rest }: Problem): string {
  const named = Object.entries(params).map(([name, value]) => [
    name,
    typeof value === "string" ? (supplierName(known, value) ?? value) : value,
  ]);
  return planProblem(known.telling, known.said, { ...rest, params: Object.fromEntries(named) });
}

export interface FinishTold {
  readonly title: string;
  readonly says: string;
}

/** When the car is ready; undefined where there is no date. */
export function finishTold(schedule: Schedule | undefined, assumed = 0): FinishTold | undefined {
  if (!schedule?.finish) return undefined;
  const { finish, proven, bound, leftOut } = schedule;
  const taken = assumed > 0 ? ` ${t("dates.ready.assumed", { n: assumed })}` : "";
  if (leftOut.length > 0)
    return {
      title: t("dates.ready.partly", { n: leftOut.length, date: dayWords(finish.date) }),
      says: `${t("dates.ready.partly.says")}${taken}`,
    };
  const says = proven
    ? t("dates.ready.proven")
    : bound
      ? t("dates.ready.bound", { date: dayWords(bound.date) })
      : t("dates.ready.unproven");
  return { title: t("dates.ready", { date: dayWords(finish.date) }), says: `${says}${taken}` };
}

export interface HoldTold {
  readonly id: string;
  readonly title: string;
  readonly days: string;
  readonly says?: string;
  readonly href?: string;
}

/** A cause, or a run of work that only follows on itself, with its pieces inside. */
export interface HoldsTold {
  readonly id: string;
  readonly title: string;
  readonly count: number;
  readonly inside: readonly HoldTold[];
}

/** Work waiting for work: nobody can order it sooner. A run of these is told as one. */
const WORK: ReadonlySet<Hold["cause"]> = new Set(["job", "person"]);
/** Up to so many pieces of work are told one by one. */
const ONE_BY_ONE = 2;

/** What holds the car up, from the last back to the first cause; shut days told once, work in a row as one. */
export function holdsTold(known: PartsKnown, schedule: Schedule | undefined): readonly (HoldTold | HoldsTold)[] {
  if (!schedule) return [];
  const nameOf = dateNames(known);
  const parts = new Map(plannedParts(known).map((part) => [part.id, part]));
  const all = schedule.holds.map((hold) => ({ hold, told: holdTold(hold, { known, schedule, nameOf, parts }) }));
  const once = all.filter(({ told }, i) => all.findIndex((other) => other.told.id === told.id) === i);
  const runs: (typeof once)[] = [];
  for (const one of once) {
    const run = runs.at(-1);
    const isMore = run?.at(-1) !== undefined && WORK.has(one.hold.cause) && WORK.has(run.at(-1)?.hold.cause ?? "start");
    if (isMore) run.push(one);
    else runs.push([one]);
  }
  return runs.flatMap((run): readonly (HoldTold | HoldsTold)[] => {
    const inside = run.map(({ told }) => told);
    const first = inside[0];
    if (first === undefined || inside.length <= ONE_BY_ONE) return inside;
    return [{ id: `work ${first.id}`, title: t("dates.hold.work"), count: run.length, inside }];
  });
}

interface Around {
  readonly known: PartsKnown;
  readonly schedule: Schedule;
  readonly nameOf: NameOf;
  readonly parts: ReadonlyMap<string, PlannedPart>;
}

function holdTold(hold: Hold, around: Around): HoldTold {
  const { schedule, nameOf } = around;
  const job = nameOf(hold.job);
  const start = schedule.activities.find(({ id }) => id === hold.job)?.start.date;
  const days = start === undefined ? "" : shortDay(start);
  const id = `${hold.cause} ${hold.job}`;
  switch (hold.cause) {
    case "part":
      return partHold(hold, around);
    case "calendar": {
      const { from, to, why } = hold.closed;
      const shut = daysWords(from, to);
      return {
        id: `calendar ${from}`,
        title:
          why === undefined ? t("dates.hold.closed", { days: shut }) : t("dates.hold.closed.why", { days: shut, why }),
        days: t("dates.days", { n: daysBetween(from, to) + 1 }),
        says: t("dates.hold.closed.says", { job }),
      };
    }
    case "start":
      return { id, title: t("dates.hold.start", { job }), days };
    case "day":
      return { id, title: t("dates.hold.day", { job, date: dayWords(hold.date) }), days };
    case "job":
    case "process":
      return { id, title: t(`dates.hold.${hold.cause}`, { job, by: nameOf(hold.by) }), days };
    default:
      return {
        id,
        title: t(`dates.hold.${hold.cause}`, { job }),
        days,
        says: t("dates.hold.by", { by: nameOf(hold.by) }),
      };
  }
}

type PartHold = Extract<Hold, { readonly cause: "part" }>;

function partHold(hold: PartHold, { known, schedule, nameOf, parts }: Around): HoldTold {
  const part = parts.get(hold.part);
  const comes = dayWords(hold.comes);
  const order = schedule.orders.find((one) => one.part === hold.part);
  const who = hold.supplier === undefined || hold.supplier === "" ? undefined : nameOf(hold.supplier);
  const orderedOn = part?.work.orderedOn;
  const from = known.input.begins ?? known.input.today;
  const says = [
    orderedOn === undefined
      ? t("dates.hold.part.says", { comes })
      : t("dates.hold.part.ordered", { date: dayWords(orderedOn), comes }),
    ...(hold.leadDays === undefined ? [] : [t("dates.hold.part.lead", { n: hold.leadDays })]),
    ...(who === undefined
      ? []
      : (hold.through ?? []).map((shut) => t("dates.hold.part.through", { who, days: daysWords(shut.from, shut.to) }))),
    ...(order === undefined || orderedOn !== undefined
      ? []
      : [t(order.late ? "dates.hold.part.late" : "dates.hold.part.order", { date: dayWords(order.orderBy) })]),
  ];
  return {
    id: `part ${hold.part}`,
    title: t("dates.hold.part", { part: part?.name ?? partTitle(known.telling, known.said, hold.part) }),
    days: t("dates.days", { n: Math.max(0, daysBetween(from, hold.comes)) }),
    says: says.join(" "),
    ...(part ? { href: part.href } : {}),
  };
}

export interface DateLine {
  readonly id: string;
  readonly title: string;
  readonly says: string;
  readonly aside?: string;
  readonly href?: string;
}

const linked = (part: PlannedPart | undefined): { readonly href?: string } => (part ? { href: part.href } : {});

/** What would be gained if one part were here today; those that gain nothing are left out. */
export function gainsTold(known: PartsKnown, schedule: Schedule | undefined): readonly DateLine[] {
  const parts = new Map(plannedParts(known).map((part) => [part.id, part]));
  return (schedule?.gained ?? [])
    .filter(({ days }) => days > 0)
    .map(({ part, finish, days }) => ({
      id: part,
      title: t("dates.gain", { part: parts.get(part)?.name ?? part }),
      says: t("dates.gain.says", { date: dayWords(finish.date), n: days }),
      ...linked(parts.get(part)),
    }));
}

/** Until when each part must be ordered: late ones first, then by the day. */
export function ordersTold(known: PartsKnown, schedule: Schedule | undefined): readonly DateLine[] {
  const parts = new Map(plannedParts(known).map((part) => [part.id, part]));
  return [...(schedule?.orders ?? [])]
    .filter(({ part }) => parts.get(part)?.work.orderedOn === undefined)
    .sort((a, b) => Number(b.late) - Number(a.late) || (a.orderBy < b.orderBy ? -1 : a.orderBy > b.orderBy ? 1 : 0))
    .map((order) => {
      const part = parts.get(order.part);
      return {
        id: order.part,
        title: part?.title ?? order.part,
        says: [byWhen(order), ...(part ? beatsWords(part, known.input.today) : [])].join(" · "),
        ...(order.late ? { aside: t("all-parts.late") } : {}),
        ...linked(part),
      };
    });
}

/** Several parts that come on the same day hold the car up together: told, since one alone gains nothing. */
export const isHeldByMany = (schedule: Schedule | undefined): boolean =>
  schedule !== undefined &&
  schedule.gained.length > 1 &&
  schedule.gained.every(({ days }) => days === 0) &&
  schedule.holds.some(({ cause }) => cause === "part");

export interface LiftTold {
  readonly id: string;
  readonly says: readonly string[];
}

/** How long the lift is held, and how much of it nobody works on the car. */
export function liftsTold(known: PartsKnown, schedule: Schedule | undefined): readonly LiftTold[] {
  const nameOf = dateNames(known);
  return (schedule?.lifts ?? []).map((use) => ({ id: use.by, says: liftWords(use, schedule, nameOf) }));
}

function liftWords({ by, from, to, idle, gate }: LiftUse, schedule: Schedule | undefined, nameOf: NameOf) {
  const n = daysBetween(from.date, to.date) + 1;
  const waits = (schedule?.holds ?? []).flatMap((hold) =>
    hold.cause === "part" && hold.block === by ? hold.part : [],
  );
  return [
    t("dates.lift.says", { n, from: shortDay(from.date), to: dayWords(to.date) }),
    ...(idle > 0 ? [t("dates.lift.idle", { idle: minutesText(idle) })] : []),
    ...(gate === "parts-in-hand" ? [t("dates.lift.gate")] : []),
    ...(waits.length > 0 ? [t("dates.lift.while", { parts: waits.map(nameOf).join(", ") })] : []),
  ];
}

const ASSUMED = "plan.parts-assumed";
/** More names than this nobody reads: the list of parts has them all. */
const NAMED = 5;

/** How many parts the dates take to be here because nobody has said anything of them. */
export const assumedIn = (plan: WorkPlan | undefined): number =>
  (plan?.remarks ?? []).reduce((sum, { code, params }) => sum + (code === ASSUMED ? Number(params["n"]) : 0), 0);

/** Jobs without a date and why, calendars and suppliers that don't read, parts the dates take to be here. */
export function undatedTold(known: PartsKnown, plan: WorkPlan | undefined): readonly string[] {
  if (!plan) return [];
  const nameOf = dateNames(known);
  const assumed = plan.remarks.flatMap(({ code, params }) => {
    const parts = params["parts"];
    return code === ASSUMED && Array.isArray(parts)
      ? [
          parts.length > NAMED
            ? t("dates.assumed.many", { n: parts.length })
            : t("dates.assumed", { parts: parts.map(nameOf).join(", ") }),
        ]
      : [];
  });
  const told = plan.problems.filter(({ code }) => code.startsWith("schedule.")).map((one) => problemWords(known, one));
  return [...new Set([...told, ...assumed])];
}

/** The first day shown: the car is there, or today. */
export const firstDay = ({ input }: PartsKnown): IsoDate => input.begins ?? input.today;
