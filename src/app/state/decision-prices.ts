/**
 * What jobs come to with tax, as the plan stands: each by its own work and parts; what has to be opened for them, once
 * however many use it; both together. Pure; every sum comes from core/plan.
 */
import {
  accessOf,
  type Estimate,
  estimate,
  opened,
  settleWays,
  type WorkInput,
  type WorkJob,
  type WorkPlan,
} from "../../core/plan/index.js";
import type { PriceShown } from "../../core/record/index.js";

export interface Priced extends PriceShown {
  readonly low: number;
  /** Hours or prices are missing: it can only be more. */
  readonly isTooLow: boolean;
}

interface Planned {
  readonly input: WorkInput;
  readonly plan: WorkPlan | undefined;
}

const some = ({ input }: Planned, ids: readonly string[]): readonly WorkJob[] => {
  const wanted = new Set(ids);
  return input.jobs.filter(({ id }) => wanted.has(id));
};

/** What must be open for these jobs, each once, by the way that takes the fewest minutes. */
function openedFor({ input }: Planned, jobs: readonly WorkJob[]): WorkInput["openings"] {
  const asked = jobs.map(({ id, minutes: own, access, ways }) => ({
    id,
    access,
    ...(own === undefined ? {} : { own }),
    ...(ways === undefined ? {} : { ways }),
  }));
  const open = new Set(opened(settleWays(accessOf(input.openings, asked).jobs).jobs).map(({ id }) => id));
  return input.openings.filter(({ id }) => open.has(id));
}

function priced(
  { input, plan }: Planned,
  jobs: readonly WorkJob[],
  openings: WorkInput["openings"],
): Priced | undefined {
  if (!plan || !input.terms) return undefined;
  const made = estimate({
    terms: input.terms,
    asOf: input.today,
    jobs: jobs.flatMap(({ id, minutes: own, rate }) =>
      own === undefined ? [] : [{ id, own, ...(rate === undefined ? {} : { rate }) }],
    ),
    opened: openings,
    parts: jobs.flatMap(({ id, parts }) =>
      parts.flatMap((part) =>
        part.price === undefined ? [] : [{ ...part, id: `${id}/${part.id}`, price: part.price }],
      ),
    ),
    ...(input.condition === undefined ? {} : { condition: input.condition }),
  });
  return made.ok ? asShown(made.value, input.terms.currency, jobs) : undefined;
}

function asShown({ gross, setAside }: Estimate, currency: string, jobs: readonly WorkJob[]): Priced {
  const { low, likely, p80, high } = gross;
  const isWhole =
    setAside.length === 0 &&
    jobs.every(({ minutes, parts }) => minutes !== undefined && parts.every(({ price }) => price !== undefined));
  return { low, likely, p80, high, currency, isTooLow: !isWhole };
}

/**
 * The own work and parts of these jobs; undefined while nothing is planned, or the house has said no rates that hold.
 */
export const pricesOf = (on: Planned, ids: readonly string[]): Priced | undefined => priced(on, some(on, ids), []);

/** What must be opened for these jobs, paid once; undefined where nothing must be. */
export function openingOf(on: Planned, ids: readonly string[]): Priced | undefined {
  const openings = openedFor(on, some(on, ids));
  return openings.length === 0 ? undefined : priced(on, [], openings);
}

/** These jobs with all that must be opened for them. */
export function sumOf(on: Planned, ids: readonly string[]): Priced | undefined {
  const jobs = some(on, ids);
  return priced(on, jobs, openedFor(on, jobs));
}

/** The price as it goes into the record; none where nothing could be shown. */
export const shownPrice = (priced: Priced | undefined): PriceShown | undefined =>
  priced && { likely: priced.likely, p80: priced.p80, high: priced.high, currency: priced.currency };
