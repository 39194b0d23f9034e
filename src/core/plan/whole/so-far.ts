/**
 * What the work has taken so far, and what the work that is done comes to. Takes only minutes somebody told: a job
 * nobody timed is named, never counted as nothing. Knows no cap and no first estimate.
 */
import type { Problem } from "../../terms/index.js";
import { type Estimate, estimate, type HouseTerms } from "../estimate/index.js";
import type { IsoDate, Three } from "../terms.js";
import type { WorkInput, WorkJob, WorkOpening, WorkPart } from "./contract.js";

/** Jobs that were begun, with the minutes told of each; undefined: nobody has told any. */
export type MinutesTold = ReadonlyMap<string, number | undefined>;

export interface SpentSoFar {
  /** Of those told; with a job in `untimed` more is spent than this. */
  readonly minutes: number;
  /** Minor units with tax, likely; undefined where the house has no terms that hold. */
  readonly money?: number | undefined;
  /** Begun or done, and nobody told how long it took. */
  readonly untimed: readonly string[];
  /** `job@place/part`: ordered or here, and nobody told its price. */
  readonly unpriced: readonly string[];
  readonly problems: readonly Problem[];
}

/** Minutes told and parts had, at the house's rates. */
export function spentSoFar(input: WorkInput, told: MinutesTold): SpentSoFar {
  const timed = [...told].flatMap(([id, minutes]) => (minutes === undefined ? [] : [{ id, minutes }]));
  const had = input.jobs.flatMap((job) => job.parts.filter(isHad).map((part) => ({ id: partId(job, part), part })));
  const rates = new Map(input.jobs.map(({ id, rate }) => [id, rate]));
  const made = costed(input, {
    jobs: timed.map(({ id, minutes }) => ({ id, own: exactly(minutes), rate: rates.get(id) })),
    opened: [],
    parts: had.flatMap(({ id, part }) => (part.price ? [{ id, part, price: exactly(part.price[1]) }] : [])),
  });
  return {
    minutes: timed.reduce((sum, { minutes }) => sum + minutes, 0),
    money: made?.estimate?.gross.likely,
    untimed: [...told].filter(([, minutes]) => minutes === undefined).map(([id]) => id),
    unpriced: had.filter(({ part }) => part.price === undefined).map(({ id }) => id),
    problems: made?.problems ?? [],
  };
}

export interface DoneWork {
  /** Undefined where nothing is done, or the house has no terms that hold. */
  readonly estimate?: Estimate | undefined;
  /** Done, and counted with the planned minutes because nobody told how long it took. */
  readonly untimed: readonly string[];
  readonly problems: readonly Problem[];
}

/**
 * What the jobs that are done come to, beside an estimate of the rest. Told minutes hold the way in; for a job nobody
 * timed the planned minutes stand, with what it needed open where the rest does not pay for that already.
 */
export function doneWork(input: WorkInput, told: MinutesTold, paidFor: ReadonlySet<string>): DoneWork {
  const done = input.jobs.filter(({ isDone }) => isDone);
  const untimed = done.filter(({ id }) => told.get(id) === undefined);
  if (done.length === 0) return { untimed: [], problems: [] };
  const needed = withParents(
    untimed.flatMap(({ access }) => access),
    input.openings,
  );
  const made = costed(input, {
    jobs: done.map(({ id, minutes, rate }) => {
      const own = told.get(id);
      return { id, own: own === undefined ? minutes : exactly(own), rate };
    }),
    opened: input.openings.filter(({ id }) => needed.has(id) && !paidFor.has(id)),
    parts: done.flatMap((job) =>
      job.parts.flatMap((part) => (part.price ? [{ id: partId(job, part), part, price: part.price }] : [])),
    ),
  });
  return { estimate: made?.estimate, untimed: untimed.map(({ id }) => id), problems: made?.problems ?? [] };
}

/** Work nobody listed before: told in words, with its minutes and its price. */
export function addedWork(
  terms: HouseTerms,
  asOf: IsoDate,
  { id, minutes, price }: { readonly id: string; readonly minutes: Three; readonly price: Three },
): Estimate | undefined {
  const made = estimate({ terms, asOf, jobs: [{ id, own: minutes }], opened: [], parts: [{ id, count: 1, price }] });
  return made.ok ? made.value : undefined;
}

interface Costing {
  readonly jobs: readonly { readonly id: string; readonly own: Three | undefined; readonly rate: string | undefined }[];
  readonly opened: readonly WorkOpening[];
  readonly parts: readonly { readonly id: string; readonly part: WorkPart; readonly price: Three }[];
}

function costed(
  { terms, today }: WorkInput,
  { jobs, opened, parts }: Costing,
): { readonly estimate?: Estimate; readonly problems: readonly Problem[] } | undefined {
  if (!terms) return undefined;
  const made = estimate({
    terms,
    asOf: today,
    jobs: jobs.map(({ id, own, rate }) => ({ id, ...(own ? { own } : {}), ...(rate === undefined ? {} : { rate }) })),
    opened,
    parts: parts.map(({ id, part, price }) => ({ ...part, id, price })),
  });
  return made.ok ? { estimate: made.value, problems: made.value.problems } : { problems: made.problems };
}

const exactly = (figure: number): Three => [figure, figure, figure];
const partId = (job: WorkJob, part: WorkPart): string => `${job.id}/${part.id}`;

/** Ordered, promised or here: the money is spent. */
const isHad = ({ inHand, orderedOn, promised }: WorkPart): boolean =>
  inHand === true || orderedOn !== undefined || promised !== undefined;

/** These and all that must be open before them. */
function withParents(ids: readonly string[], openings: readonly WorkOpening[]): ReadonlySet<string> {
  const known = new Map(openings.map((opening) => [opening.id, opening]));
  const all = new Set<string>();
  const add = (id: string): void => {
    if (all.has(id)) return;
    all.add(id);
    for (const parent of known.get(id)?.parents ?? []) add(parent);
  };
  for (const id of ids) add(id);
  return all;
}
