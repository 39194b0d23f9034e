/**
 * From chosen jobs and what they need open to pieces of work with dates: opening, job, putting back; the lift held from
 * the first opening to the last putting back; work sent out as days away. Knows no dates itself.
 */
import type { OpenState, ReachedJob } from "../access/index.js";
import type { Activity, LiftBlock, PartNeed, Supplier } from "../schedule/door.js";
import type { WorkInput, WorkJob, WorkOpening, WorkPart, WorkSupplier } from "./contract.js";

export const openingOf = (state: string): string => `open ${state}`;
export const closingOf = (state: string): string => `close ${state}`;
export const awayOf = (job: string, part: string): string => `away ${job}/${part}`;
export const partNeedOf = (job: string, part: string): string => `${job}/${part}`;

/** A supplier nobody has named, for parts of which only the days are known: at work from Monday to Friday. */
export const ANY_SUPPLIER: Supplier = { id: "", week: [1, 2, 3, 4, 5], closed: [] };

export interface Pieces {
  readonly activities: readonly Activity[];
  readonly blocks: readonly LiftBlock[];
  readonly parts: readonly PartNeed[];
  /** Parts nobody has said anything of: the dates take them to be here. */
  readonly assumed: readonly string[];
}

/** What is sent out: the car's own part, to be ground, coated or lined, and who does it. */
export interface Away {
  readonly id: string;
  readonly job: string;
  readonly part: WorkPart;
  readonly supplier: WorkSupplier;
}

/** Parts that leave this car and come back, by their activities. */
export function sentAway(jobs: readonly WorkJob[], suppliers: readonly WorkSupplier[]): readonly Away[] {
  const out = new Map(suppliers.filter(({ outwork }) => outwork === true).map((one) => [one.id, one]));
  return jobs.flatMap(({ id: job, parts }) =>
    parts.flatMap((part) => {
      // What has left already is waited for like any other part.
      const hasLeft = part.inHand || part.orderedOn !== undefined || part.promised !== undefined;
      const supplier = part.supplier === undefined || hasLeft ? undefined : out.get(part.supplier);
      return supplier ? [{ id: awayOf(job, part.id), job, part, supplier }] : [];
    }),
  );
}

/** The pieces of work of chosen jobs; `walls`: minutes each thing sent out is away. */
export function piecesOf(
  input: WorkInput,
  jobs: readonly ReachedJob[],
  away: readonly Away[],
  walls: ReadonlyMap<string, number>,
): Pieces {
  const given = new Map(input.jobs.map((job) => [job.id, job]));
  const openings = new Map(input.openings.map((opening) => [opening.id, opening]));
  const states = [...new Set(jobs.flatMap(({ needs }) => needs))];
  const chosen = new Set(jobs.map(({ id }) => id));
  const assumed: string[] = [];
  const gone = new Set(away.map(({ id }) => id));

  const opened = states.flatMap((state) => pairOf(state, states, jobs, openings.get(state.id)));
  const worked = jobs.map(({ id, own, needs }): Activity => {
    const job = given.get(id);
    const comes = (job?.parts ?? []).map((part) => awayOf(id, part.id)).filter((one) => gone.has(one));
    return {
      id,
      minutes: own[1],
      preds: [...needs.map((s) => openingOf(s.id)), ...(job?.follows ?? []).filter((f) => chosen.has(f)), ...comes],
      ...(job ? { due: job.key.due } : {}),
      ...(job?.people === undefined ? {} : { people: job.people }),
      ...(job?.standing === undefined ? {} : { wall: job.standing }),
    };
  });
  const leaving = away
    .filter(({ job }) => chosen.has(job))
    .map(({ id, job }): Activity => {
      const needs = jobs.find((one) => one.id === job)?.needs ?? [];
      return { id, minutes: 0, preds: needs.map((s) => openingOf(s.id)), wall: walls.get(id) ?? 0 };
    });
  const parts = jobs.flatMap(({ id }) =>
    (given.get(id)?.parts ?? [])
      .filter((part) => !gone.has(awayOf(id, part.id)))
      .flatMap((part) => {
        if (!isSaid(part)) assumed.push(partNeedOf(id, part.id));
        return isSaid(part) ? [needOf(id, part)] : [];
      }),
  );
  return {
    activities: [...opened, ...worked, ...leaving],
    blocks: states.filter(({ id }) => openings.get(id)?.onLift).map((lift) => blockOf(lift, states, jobs, leaving)),
    parts,
    assumed,
  };
}

/** Opening after its parents; putting back after every job in it and everything opened behind it. */
function pairOf(
  state: OpenState,
  states: readonly OpenState[],
  jobs: readonly ReachedJob[],
  given: WorkOpening | undefined,
): readonly Activity[] {
  const inside = jobs.filter(({ needs }) => needs.includes(state)).map(({ id }) => id);
  const behind = states.filter(({ parents }) => parents.includes(state));
  return [
    { id: openingOf(state.id), minutes: given?.setUp[1] ?? 0, preds: state.parents.map(({ id }) => openingOf(id)) },
    {
      id: closingOf(state.id),
      minutes: given?.putBack[1] ?? 0,
      preds: [...inside, ...behind.map(({ id }) => closingOf(id))],
    },
  ];
}

function blockOf(
  lift: OpenState,
  states: readonly OpenState[],
  jobs: readonly ReachedJob[],
  leaving: readonly Activity[],
): LiftBlock {
  const isOn = (state: OpenState): boolean => state === lift || state.parents.some(isOn);
  const on = states.filter((state) => state !== lift && isOn(state));
  const inside = jobs.filter(({ needs }) => needs.includes(lift));
  const away = leaving.filter(({ preds }) => preds.includes(openingOf(lift.id)));
  return {
    id: lift.id,
    open: openingOf(lift.id),
    close: closingOf(lift.id),
    jobs: [
      ...on.flatMap(({ id }) => [openingOf(id), closingOf(id)]),
      ...inside.map(({ id }) => id),
      ...away.map(({ id }) => id),
    ],
  };
}

const isSaid = ({ inHand, promised, orderedOn, supplier, leadDays, price }: WorkPart): boolean =>
  [inHand, promised, orderedOn, supplier, leadDays, price].some((one) => one !== undefined);

function needOf(job: string, part: WorkPart): PartNeed {
  const supplier = part.supplier ?? (part.leadDays === undefined ? undefined : ANY_SUPPLIER.id);
  return {
    id: partNeedOf(job, part.id),
    job,
    ...(part.inHand ? { inHand: true } : {}),
    ...(part.promised === undefined ? {} : { comes: part.promised, confirmed: true }),
    ...(supplier === undefined ? {} : { supplier }),
    ...(part.orderedOn === undefined ? {} : { ordered: part.orderedOn }),
    ...(part.leadDays === undefined ? {} : { leadDays: part.leadDays }),
  };
}
