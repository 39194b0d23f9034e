/**
 * What a job and an opening cost with tax, for choosing within a budget. Tax is rounded up on each, so that what is
 * chosen never comes to more on the invoice than it was weighed with.
 */
import { minorOf, money, share } from "../../units/index.js";
import type { OpenState, ReachedJob } from "../access/index.js";
import type { HouseTerms } from "../estimate/index.js";
import type { WorkJob } from "./contract.js";

const MINUTES_AN_HOUR = 60;
const BASIS_POINTS = 10_000;

export interface Costs {
  readonly job: (reached: ReachedJob, given: WorkJob | undefined) => number;
  /** A job that is done: its own minutes and parts; what was opened for it, the rest may still use. */
  readonly done: (given: WorkJob) => number;
  readonly opening: (state: OpenState) => number;
}

/** Likely figures at the house's rates. A price nobody has said counts for nothing here, and is told elsewhere. */
export function costsBy({ labourRates, tax: profile }: HouseTerms): Costs {
  const tax = (group: string) => profile.groups.find(({ id }) => id === group)?.basisPoints ?? 0;
  const [labourTax, partsTax] = [tax(profile.labourGroup), tax(profile.partsGroup)];
  const labour = (minutes: number, rate: string | undefined): number => {
    const perHour = (labourRates.find(({ id }) => id === rate) ?? labourRates[0])?.perHour ?? 0;
    return withTax(minorOf(share(money(perHour), minutes, MINUTES_AN_HOUR)), labourTax);
  };
  const partsOf = (given: WorkJob | undefined): number =>
    (given?.parts ?? []).reduce(
      (sum, { count, price, carriage }) => sum + withTax(count * (price?.[1] ?? 0) + (carriage ?? 0), partsTax),
      0,
    );
  return {
    job: (reached, given) => labour(reached.own[1], given?.rate) + partsOf(given),
    done: (given) => labour(given.minutes?.[1] ?? 0, given.rate) + partsOf(given),
    opening: ({ minutes }) => labour(minutes[1], undefined),
  };
}

const withTax = (net: number, basisPoints: number): number => net + Math.ceil((net * basisPoints) / BASIS_POINTS);
