/**
 * What jobs come to with tax, each with its equal share of what is opened together, as the plan stands. Pure; every sum
 * comes from core/plan.
 */
import { estimate, type Three, type WorkInput, type WorkPlan } from "../../core/plan/index.js";
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

/** Of these jobs together; undefined while nothing is planned, or the house has said no rates that hold. */
export function pricesOf({ input, plan }: Planned, ids: readonly string[]): Priced | undefined {
  if (!plan || !input.terms) return undefined;
  const wanted = new Set(ids);
  const jobs = input.jobs.filter(({ id }) => wanted.has(id));
  const minutes = new Map(plan.jobs.map(({ id, share, added }): [string, Three] => [id, share ?? added]));
  const made = estimate({
    terms: input.terms,
    asOf: input.today,
    jobs: jobs.flatMap(({ id, rate }) => {
      const own = minutes.get(id);
      return own === undefined ? [] : [{ id, own, ...(rate === undefined ? {} : { rate }) }];
    }),
    opened: [],
    parts: jobs.flatMap(({ id, parts }) =>
      parts.flatMap((part) =>
        part.price === undefined ? [] : [{ ...part, id: `${id}/${part.id}`, price: part.price }],
      ),
    ),
  });
  if (!made.ok) return undefined;
  const { low, likely, p80, high } = made.value.gross;
  const isWhole =
    made.value.setAside.length === 0 &&
    jobs.every(({ id, parts }) => minutes.has(id) && parts.every(({ price }) => price !== undefined));
  return { low, likely, p80, high, currency: input.terms.currency, isTooLow: !isWhole };
}

/** The price as it goes into the record; none where nothing could be shown. */
export const shownPrice = (priced: Priced | undefined): PriceShown | undefined =>
  priced && { likely: priced.likely, p80: priced.p80, high: priced.high, currency: priced.currency };
