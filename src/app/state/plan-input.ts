/**
 * From a judged visit, what was said of its plan, and the house's terms to what planning takes. Where people differ
 * what was said last counts; of the owner's word nothing counts until they agree. Knows no screen; plans nothing.
 */
import type { JobDue, JobOrder } from "../../core/assess/contract.js";
import {
  type AccessRow,
  type HouseTerms,
  type IsoDate,
  type PartPlace,
  partStands,
  type SheetJob,
  type SheetWork,
  type Three,
  type WorkInput,
  type WorkJob,
  type WorkPart,
  workFromSheets,
} from "../../core/plan/index.js";
import {
  type HouseState,
  jobKey,
  type PartFigures,
  type PlanState,
  partKey,
  type Stands,
} from "../../core/record/index.js";
import type { PlaceTree } from "../../core/sheet/run.js";
import type { Knowledge } from "./knowledge.js";
import { agreedWord, isDeclined, isWantedNow } from "./owners-word.js";

/** Row of the access tree that puts the car on the lift. */
const LIFT = "lift";
const MINUTES_AN_HOUR = 60;

/** A judged visit, as far as its work goes. */
export interface Judged {
  readonly known: {
    readonly jobs: ReadonlyMap<string, { readonly job: SheetJob }>;
    readonly common: { readonly access: readonly AccessRow[] };
  };
  readonly tree: PlaceTree;
  readonly jobs: readonly JobDue[];
  readonly orders: readonly JobOrder[];
}

export const last = <T>(standing: readonly Stands<T>[] | undefined): T | undefined => standing?.at(-1)?.value;

/** The house's terms; none until they are said. */
export const termsOf = (house: HouseState | undefined): HouseTerms | undefined => last(house?.terms);

/** Everything due, with what the sheets say of it and what it brings along. */
export type LaidWork = ReturnType<typeof workFromSheets>;

export function layWork({ known, tree, jobs, orders }: Judged): LaidWork {
  const sheetJobs = new Map([...known.jobs].map(([id, { job }]) => [id, job]));
  return workFromSheets(jobs, sheetJobs, known.common.access, tree, orders);
}

/** Everything due as planning takes it, on a day. */
export function workInput(
  { work, openings }: LaidWork,
  { ownJobs }: Pick<Knowledge, "ownJobs">,
  plan: PlanState,
  house: HouseState | undefined,
  today: IsoDate,
): WorkInput {
  const terms = termsOf(house);
  const calendar = last(house?.calendar);
  const budget = last(plan.budget);
  const begins = last(plan.begins);
  return {
    today,
    ...(begins === undefined ? {} : { begins }),
    jobs: work.map((one) => jobOf(one, ownJobs, plan, today, isLeftOut(one, work, plan))),
    openings: openings.map((opening) => ({ ...opening, onLift: opening.access === LIFT })),
    ...(budget === undefined ? {} : { budget: budget.minor }),
    ...(terms === undefined ? {} : { terms }),
    ...(calendar === undefined ? {} : { calendar }),
    suppliers: [...(house?.suppliers.values() ?? [])].flatMap((standing) => last(standing) ?? []),
  };
}

/** Why a job is due that others bring along: a bleed after the calipers. */
const BROUGHT = "brought-along";

/** Declined by the owner, or brought along by nothing but what is. */
function isLeftOut(one: SheetWork, work: readonly SheetWork[], plan: PlanState): boolean {
  if (isDeclined(plan, one.id)) return true;
  if (one.due.why[0]?.code !== BROUGHT || agreedWord(plan, one.id)) return false;
  const bringing = work.filter(({ endsIn }) => endsIn?.includes(one.due.job));
  return bringing.length > 0 && bringing.every(({ id }) => isDeclined(plan, id));
}

function jobOf(
  work: SheetWork,
  ownJobs: Knowledge["ownJobs"],
  plan: PlanState,
  today: IsoDate,
  declined: boolean,
): WorkJob {
  const { job, place, key, grade } = work.due;
  const at = jobKey({ job, place });
  const minutes = last(plan.minutes.get(at))?.minutes ?? work.minutes ?? typedHours(ownJobs?.get(job)?.hours);
  const wanted = isWantedNow(plan, at) ? "in" : last(plan.wanted.get(at))?.wanted;
  // Begun again, it is work again; measuring it again changes nothing.
  const isDone = plan.jobSteps.get(at)?.findLast(({ value }) => value.step !== "measured-again")?.value.step === "done";
  return {
    id: work.id,
    key,
    grade,
    ...(minutes === undefined ? {} : { minutes }),
    access: work.access,
    follows: work.follows,
    kind: work.kind,
    ...(work.last ? { last: true } : {}),
    ...(work.endsIn ? { endsIn: work.endsIn } : {}),
    ...(work.contains ? { contains: work.contains } : {}),
    parts: partsOf(work, plan, today),
    ...(wanted === undefined ? {} : { wanted }),
    ...(isDone ? { isDone } : {}),
    ...(declined ? { declined } : {}),
  };
}

/** Hours as typed by hand (`1.5`) are one figure: nobody has said how far it may be off. */
function typedHours(typed: string | undefined): Three | undefined {
  if (typed === undefined) return undefined;
  const minutes = Math.round(Number(typed) * MINUTES_AN_HOUR);
  return Number.isSafeInteger(minutes) && minutes > 0 ? [minutes, minutes, minutes] : undefined;
}

/** The sheet's parts with what was said of them, then those added by hand. */
function partsOf({ due, parts, id }: SheetWork, plan: PlanState, today: IsoDate): readonly WorkPart[] {
  const own = parts.map(({ part, set, count }) => ({ part, set, count: count ?? 1 }));
  const named = new Set(own.map(({ part }) => part));
  const added = [...plan.parts.keys()].flatMap((key) => {
    const part = key.startsWith(`${id}/`) ? key.slice(id.length + 1) : undefined;
    return part === undefined || named.has(part) ? [] : [{ part, set: undefined, count: 1 }];
  });
  return [...own, ...added].map(({ part, set, count }): WorkPart => {
    const key = partKey({ job: due.job, place: due.place, part });
    const figures: PartFigures | undefined = last(plan.parts.get(key))?.figures;
    const { name: _, ...said } = figures ?? { count };
    return { id: part, ...(set === undefined ? {} : { set }), ...said, ...whereItIs(plan, key, today) };
  });
}

/** On the shelf: come, and not found wanting. */
const HERE: ReadonlySet<PartPlace> = new Set(["arrived", "passed", "fitted"]);

function whereItIs(plan: PlanState, key: string, today: IsoDate): Pick<WorkPart, "inHand" | "orderedOn" | "promised"> {
  const part = partStands(plan.partSteps.get(key) ?? [], today)?.part;
  if (!part) return {};
  if (HERE.has(part.stands)) return { inHand: true };
  // What was sent back is to be ordered anew.
  if (part.stands !== "ordered" && part.stands !== "promised") return {};
  const orderedOn = plan.partSteps.get(key)?.findLast(({ value }) => value.step === "ordered")?.value.on;
  return {
    ...(orderedOn === undefined ? {} : { orderedOn }),
    ...(part.promised === undefined ? {} : { promised: part.promised }),
  };
}
