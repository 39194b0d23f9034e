/**
 * The parts of a plan's jobs with all that was said of them: what they are, where they stand, with what they are had,
 * when they come. Pure; days are counted by core/plan.
 */
import {
  arrivesOn,
  hadTogether,
  type IsoDate,
  orderBefore,
  orderTogether,
  type PartStands,
  partStands,
  type WorkInput,
  type WorkJob,
  type WorkPart,
} from "../../core/plan/index.js";
import type { Bodies, HouseState, PartAt, PartFigures, PlanState, Stands } from "../../core/record/index.js";
import type { Telling } from "./because.js";
import { last } from "./plan-input.js";
import { idParts, jobTitle, partTitle } from "./plan-words.js";
import { to } from "./routes.js";

/** What parts are read off. */
export interface PartsKnown {
  readonly telling: Telling;
  readonly input: WorkInput;
  readonly said: PlanState;
  readonly house: HouseState | undefined;
}

export type PartStep = Bodies["part.step"];
type HouseSupplier = NonNullable<ReturnType<typeof supplierOf>>;
type ShutDays = HouseSupplier["closed"][number];

export interface PlannedPart {
  readonly at: PartAt;
  /** `job@place/part`. */
  readonly id: string;
  /** `job@place`. */
  readonly jobId: string;
  readonly name: string;
  /** With how many, where it is more than one. */
  readonly title: string;
  readonly jobTitle: string;
  readonly href: string;
  readonly work: WorkPart;
  readonly figures: PartFigures | undefined;
  /** Added by hand: no sheet names it. */
  readonly isOwn: boolean;
  /** In the order of showing. */
  readonly steps: readonly Stands<PartStep>[];
  /** Undefined while nothing was done about it. */
  readonly stands: PartStands | undefined;
  readonly supplier: HouseSupplier | undefined;
}

const supplierOf = (house: HouseState | undefined, id: string | undefined) =>
  id === undefined ? undefined : last(house?.suppliers.get(id));

/** Every part of every job that is not done. */
export const plannedParts = (known: PartsKnown): readonly PlannedPart[] =>
  known.input.jobs.filter(({ isDone }) => !isDone).flatMap((job) => partsOfJob(known, job));

/** The parts of one job; none of a job that is not in the plan. */
export function partsOf(known: PartsKnown, jobId: string): readonly PlannedPart[] {
  const job = known.input.jobs.find(({ id }) => id === jobId);
  return job ? partsOfJob(known, job) : [];
}

function partsOfJob({ telling, input, said, house }: PartsKnown, job: WorkJob): readonly PlannedPart[] {
  const { what, place } = idParts(job.id);
  const named = new Set(telling.known.jobs.get(what)?.job.parts?.map(({ part }) => part));
  return job.parts.map((work): PlannedPart => {
    const at = { job: what, place, part: work.id };
    const id = `${job.id}/${work.id}`;
    const steps = said.partSteps.get(id) ?? [];
    const name = partTitle(telling, said, id);
    return {
      at,
      id,
      jobId: job.id,
      name,
      title: work.count > 1 ? `${work.count} × ${name}` : name,
      jobTitle: jobTitle(telling, job.id),
      href: to("part", { visit: telling.visit, ...at }),
      work,
      figures: last(said.parts.get(id))?.figures,
      isOwn: !named.has(work.id),
      steps,
      stands: partStands(steps, input.today)?.part,
      supplier: supplierOf(house, work.supplier),
    };
  });
}

/** When a part ordered on a day comes, and why then. */
export interface Expected {
  readonly ordered: IsoDate;
  readonly comes: IsoDate;
  readonly leadDays: number;
  /** Shut days of the supplier between the order and its coming. */
  readonly through: readonly ShutDays[];
  /** Absent where nobody is named: then Monday to Friday are counted. */
  readonly supplier: HouseSupplier | undefined;
}

const ANYBODY = { id: "", week: [1, 2, 3, 4, 5], closed: [] } as const;

/** Undefined where nobody has said how long it takes: no day is made up. */
export function expectedOf({ work, supplier }: PlannedPart, ordered: IsoDate): Expected | undefined {
  const leadDays = work.leadDays ?? supplier?.leadDays;
  if (leadDays === undefined) return undefined;
  const comes = arrivesOn({ ...(supplier ?? ANYBODY), leadDays }, ordered);
  if (!comes.ok) return undefined;
  const through = (supplier?.closed ?? []).filter(({ from, to: until }) => ordered <= until && from <= comes.value);
  return { ordered, comes: comes.value, leadDays, through, supplier };
}

/** The last day an order is still sent before the supplier's next shut days; undefined once that is past. */
export function beforeShut(
  { work, supplier }: PlannedPart,
  today: IsoDate,
): { readonly orderBy: IsoDate; readonly closed: ShutDays } | undefined {
  const leadDays = work.leadDays ?? supplier?.leadDays;
  const closed = [...(supplier?.closed ?? [])]
    .sort((a, b) => (a.from < b.from ? -1 : 1))
    .find(({ from }) => from > today);
  if (!supplier || leadDays === undefined || !closed) return undefined;
  const by = orderBefore({ ...supplier, leadDays }, closed);
  return by.ok && by.value >= today ? { orderBy: by.value, closed } : undefined;
}

/** What a part is had with. */
export interface Partners {
  /** Parts of the same job. */
  readonly listed: readonly PlannedPart[];
  /** Named as counterpart, and no part of the job yet. */
  readonly unlisted: readonly string[];
}

export function partnersOf(known: PartsKnown, part: PlannedPart): Partners {
  const others = partsOf(known, part.jobId);
  const names = setsOf(others)
    .filter((set) => set.parts.some((one) => one.part === part.at.part))
    .flatMap((set) => set.parts.map((one) => one.part))
    .filter((name) => name !== part.at.part);
  const listed = others.filter(({ at }) => names.includes(at.part));
  return { listed, unlisted: names.filter((name) => !listed.some(({ at }) => at.part === name)) };
}

const setsOf = (parts: readonly PlannedPart[]) =>
  hadTogether([
    { job: parts[0]?.jobId ?? "", parts: parts.map(({ work: { id, ...work } }) => ({ part: id, ...work })) },
  ]);

/** What is on order or here counts as had. */
const isHad = ({ stands }: PlannedPart): boolean =>
  stands !== undefined && !["failed", "sent-back"].includes(stands.stands);

/**
 * What is wanting when these parts are ordered, with what is had already: names of counterparts by the part that can't
 * be had without them. A reason given for a part lets it pass.
 */
export function refusedAlone(
  known: PartsKnown,
  ordered: readonly PlannedPart[],
  reason?: string,
): readonly { readonly part: string; readonly counterparts: readonly string[] }[] {
  const [first] = ordered;
  if (!first) return [];
  const others = partsOf(known, first.jobId);
  const order = [...ordered, ...others.filter(isHad)].map(({ at, jobId, work }) => ({
    job: jobId,
    part: at.part,
    aloneBecause: reason ?? work.aloneBecause,
  }));
  const nameOf = (id: string): string => others.find(({ at }) => at.part === id)?.name ?? id;
  return orderTogether(setsOf(others), order)
    .problems.filter(({ params }) => ordered.some(({ at }) => at.part === params["part"]))
    .map(({ params }) => {
      const without = params["counterpart"];
      return { part: nameOf(String(params["part"])), counterparts: Array.isArray(without) ? without.map(nameOf) : [] };
    });
}
