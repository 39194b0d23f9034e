/**
 * From jobs that are due and what the sheets say of them to jobs that can be planned: what must be open at which place
 * of this car, what comes before what, which parts. Knows no hours by hand and no prices: they are laid over later.
 */
import type { JobDue, JobOrder } from "../../assess/contract.js";
import type { Three } from "../terms.js";

/** What planning needs of a sheet's job. */
export interface SheetJob {
  readonly id: string;
  readonly access: readonly string[];
  readonly minutes: Three;
  readonly parts?: readonly SheetPart[] | undefined;
  readonly follows?: readonly string[] | undefined;
  /** The kind of place it is done at. */
  readonly place?: string | undefined;
  readonly last?: boolean | undefined;
  readonly "ends-in"?: readonly string[] | undefined;
  readonly "included-in"?: readonly string[] | undefined;
}

/** A part as a sheet names it. Parts of one `set` are had together. */
export interface SheetPart {
  readonly part: string;
  readonly set?: string | undefined;
  readonly count?: number | undefined;
  readonly reuse?: "never" | undefined;
}

/** A row of the shared access tree: a kind of opening, at places of one kind. */
export interface AccessRow {
  readonly id: string;
  readonly place: string;
  readonly needs?: readonly string[] | undefined;
  readonly setUp: Three;
  readonly putBack: Three;
}

/** The places of this car. */
export interface Places {
  readonly around: (place: string, kind: string) => string | undefined;
  readonly ofKind: (kind: string) => readonly string[];
  readonly within: (outer: string, inner: string) => boolean;
}

/** One opening at one place of this car: `hub-off@FR`. */
export interface Opening {
  readonly id: string;
  /** Row of the access tree, and where. */
  readonly access: string;
  readonly place: string;
  readonly parents: readonly string[];
  readonly setUp: Three;
  readonly putBack: Three;
}

/** A job that is due, with what the sheets say of it. */
export interface SheetWork {
  /** `job@place`. */
  readonly id: string;
  readonly due: JobDue;
  /** Absent for a job said in one's own words, until somebody gives it hours. */
  readonly minutes?: Three;
  /** Openings it needs itself; what they need is in the openings. */
  readonly access: readonly string[];
  /** Jobs of this list that come before it. */
  readonly follows: readonly string[];
  readonly parts: readonly SheetPart[];
  /** Sort of job, where the same is done at several places. */
  readonly kind: string;
  readonly last?: true;
  readonly endsIn?: readonly string[];
  /** Sorts of jobs whose work it contains. */
  readonly contains?: readonly string[];
}

const WHOLE_CAR = "car";

/** How a job at a place is named in a plan. */
export const workId = ({ job, place }: { readonly job: string; readonly place: string }): string => `${job}@${place}`;

/**
 * Everything due as work to plan, and every opening any of it needs. A job on an axle opens both its corners. An
 * access or a job no sheet knows needs nothing open: older visits may name what is gone.
 */
export function workFromSheets(
  due: readonly JobDue[],
  jobs: ReadonlyMap<string, SheetJob>,
  access: readonly AccessRow[],
  places: Places,
  orders: readonly JobOrder[] = [],
): { readonly work: readonly SheetWork[]; readonly openings: readonly Opening[] } {
  const rows = new Map(access.map((row) => [row.id, row]));
  const openings = new Map<string, Opening>();

  function open(id: string, at: string): readonly string[] {
    const row = rows.get(id);
    if (!row) return [];
    return placesFor(row.place, at, places).map((place) => {
      const name = `${id}@${place}`;
      if (!openings.has(name)) {
        // said before its parents are looked for: a tree that runs in a circle ends here and is told by the access graph
        openings.set(name, { id: name, access: id, place, parents: [], setUp: row.setUp, putBack: row.putBack });
        const parents = (row.needs ?? []).flatMap((need) => open(need, place));
        openings.set(name, { id: name, access: id, place, parents, setUp: row.setUp, putBack: row.putBack });
      }
      return name;
    });
  }

  const all = withAfterJobs(due, jobs, places);
  const containing = new Map<string, string[]>();
  for (const { id, "included-in": greater } of jobs.values())
    for (const one of greater ?? []) containing.set(one, [...(containing.get(one) ?? []), id]);
  const work = all.map((one): SheetWork => {
    const row = jobs.get(one.job);
    return {
      id: workId(one),
      due: one,
      kind: one.job,
      ...(row ? { minutes: row.minutes } : {}),
      access: [...new Set((row?.access ?? []).flatMap((id) => open(id, one.place)))],
      follows: before(one, row, all, orders, places),
      parts: row?.parts ?? [],
      ...(row?.last ? { last: true } : {}),
      ...(row?.["ends-in"] ? { endsIn: row["ends-in"] } : {}),
      ...(containing.has(one.job) ? { contains: containing.get(one.job) ?? [] } : {}),
    };
  });
  return { work, openings: [...openings.values()] };
}

/**
 * The list with what its jobs cannot do without afterwards: one bleed for all that open the hydraulics, as urgent as the
 * most urgent of them and right behind it. None where it is due anyway, or a greater job that contains it is.
 */
function withAfterJobs(due: readonly JobDue[], jobs: ReadonlyMap<string, SheetJob>, places: Places): readonly JobDue[] {
  const there = new Set(due.map(({ job }) => job));
  return due.flatMap((one) => {
    const brought = (jobs.get(one.job)?.["ends-in"] ?? []).filter((after) => {
      const row = jobs.get(after);
      return row !== undefined && ![after, ...(row["included-in"] ?? [])].some((id) => there.has(id));
    });
    return [
      one,
      ...brought.map((job): JobDue => {
        there.add(job);
        const kind = jobs.get(job)?.place ?? WHOLE_CAR;
        const why = [{ code: "brought-along", params: {} }];
        return { ...one, job, place: places.around(one.place, kind) ?? one.place, why, includes: [] };
      }),
    ];
  });
}

/** The place of a kind round this one, else every place of that kind in it, else this very place. */
function placesFor(kind: string, at: string, { around, ofKind, within }: Places): readonly string[] {
  const outer = around(at, kind);
  if (outer !== undefined) return [outer];
  const inner = ofKind(kind).filter((place) => within(at, place));
  return inner.length > 0 ? inner : [at];
}

/** What comes first: jobs the sheet names, and those a rule of this visit names, where they meet on the car. */
function before(
  one: JobDue,
  row: SheetJob | undefined,
  due: readonly JobDue[],
  orders: readonly JobOrder[],
  places: Places,
): readonly string[] {
  const named = new Set(row?.follows ?? []);
  const ruled = orders.filter(({ after, place }) => after === one.job && meet(place, one.place, places));
  return due
    .filter((other) => other !== one && meet(other.place, one.place, places))
    .filter(({ job, place }) => named.has(job) || ruled.some((o) => o.before === job && meet(o.place, place, places)))
    .map(workId);
}

/** Whether work at two places touches: one lies in the other, or both lie in one corner. */
function meet(a: string, b: string, { around, within }: Places): boolean {
  if (a === b || a === WHOLE_CAR || b === WHOLE_CAR || within(a, b) || within(b, a)) return true;
  const corner = around(a, "corner");
  return corner !== undefined && corner === around(b, "corner");
}
