/** The day each part comes, and until when it must be ordered. Knows which job waits for it, not when that is done. */
import { fail, ok, type Problem, problem, type Result } from "../../terms/index.js";
import type { IsoDate } from "../terms.js";
import type { PartDay, PartNeed, PartOrder } from "./contract.js";
import { type Closure, type DayNumber, dateOf, dayNumber, type ShutDays } from "./days.js";
import { arrivalOf, type Lead, lastOrder, leadOf, type Supplier } from "./lead-time.js";

/** A part that comes on a day. */
export interface Coming {
  readonly need: PartNeed;
  /** Undefined: it is here. */
  readonly day: DayNumber | undefined;
  readonly told: PartDay | undefined;
  readonly confirmed: boolean;
  /** Where it is still to be ordered. */
  readonly lead: Lead | undefined;
}

export const shutDays = ({ from, to, why }: Closure): ShutDays => ({
  from: dateOf(from),
  to: dateOf(to),
  ...(why === undefined ? {} : { why }),
});

/** When a part comes: it is here, it is told to come, or its supplier's days say so. Else a problem. */
export function comingOf(need: PartNeed, suppliers: readonly Supplier[], today: DayNumber): Result<Coming> {
  const part = need.id;
  if (need.inHand === true) return ok({ need, day: undefined, told: undefined, confirmed: true, lead: undefined });
  if (need.comes !== undefined) return told(need, need.comes, today);
  if (need.supplier === undefined) return fail(problem("schedule.part-no-date", {}, { part, job: need.job }));
  const supplier = suppliers.find(({ id }) => id === need.supplier);
  if (supplier === undefined) {
    return fail(problem("schedule.supplier-unknown", {}, { part, named: need.supplier }));
  }
  const ordered = need.ordered === undefined ? today : dayNumber(need.ordered);
  if (ordered === undefined) return fail(problem("schedule.no-day", {}, { named: need.ordered ?? "" }));
  const lead = leadOf(supplier, need.leadDays);
  if (!lead.ok) return lead;
  const arrival = arrivalOf(lead.value, ordered);
  if (!arrival.ok) return arrival;
  const { arrives, through } = arrival.value;
  // The day reckoned is past and nobody has said that the part is here: it is late, and for how long is not known.
  if (arrives < today) return fail(problem("schedule.part-overdue", {}, { part, job: need.job, on: dateOf(arrives) }));
  const { leadDays, carriageDays } = lead.value;
  const day: PartDay = {
    part,
    comes: dateOf(arrives),
    supplier: supplier.id,
    ordered: dateOf(ordered),
    leadDays,
    carriageDays,
    through: through.map(shutDays),
  };
  const toOrder = need.ordered === undefined ? lead.value : undefined;
  return ok({ need, day: arrives, told: day, confirmed: false, lead: toOrder });
}

function told(need: PartNeed, comes: IsoDate, today: DayNumber): Result<Coming> {
  const day = dayNumber(comes);
  if (day === undefined) return fail(problem("schedule.no-day", {}, { named: comes }));
  if (day < today) return fail(problem("schedule.part-overdue", {}, { part: need.id, job: need.job, on: comes }));
  const known: PartDay = {
    part: need.id,
    comes,
    ...(need.supplier === undefined ? {} : { supplier: need.supplier }),
    ...(need.ordered === undefined ? {} : { ordered: need.ordered }),
  };
  return ok({ need, day, told: known, confirmed: need.confirmed === true, lead: undefined });
}

/** Until when to order a part that is needed on a day; undefined for one that is here or ordered. */
export function orderOf({ need, lead }: Coming, neededOn: DayNumber, today: DayNumber): PartOrder | undefined {
  if (lead === undefined) return undefined;
  const last = lastOrder(lead, neededOn);
  if (last === undefined) return undefined;
  const next = [...lead.closed].sort((a, b) => a.from - b.from).find(({ from }) => from > today);
  const beats = next === undefined ? undefined : lastBefore(lead, next);
  return {
    part: need.id,
    neededOn: dateOf(neededOn),
    orderBy: dateOf(last),
    // Ordered today it may still come in time: a supplier shut today counts from its next open day all the same.
    late: last < today && !isInTime(lead, today, neededOn),
    ...(beats === undefined || next === undefined ? {} : { beats: { closed: shutDays(next), orderBy: dateOf(beats) } }),
  };
}

const isInTime = (lead: Lead, ordered: DayNumber, neededOn: DayNumber): boolean => {
  const arrival = arrivalOf(lead, ordered);
  return arrival.ok && arrival.value.arrives <= neededOn;
};

const lastBefore = (lead: Lead, { from }: Closure): DayNumber | undefined =>
  lastOrder({ ...lead, carriageDays: 0 }, from - 1);

/** Parts that name no job, told. */
export const nowhere = (parts: readonly PartNeed[], jobs: ReadonlySet<string>): readonly Problem[] =>
  parts
    .filter(({ job }) => !jobs.has(job))
    .map(({ id, job }) => problem("schedule.part-nowhere", {}, { part: id, named: job }));
