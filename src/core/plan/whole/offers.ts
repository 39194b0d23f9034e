/** Jobs that are left out and would pay while it is apart anyway, by the evidence rule. Adds none of them by itself. */
import { marginal, type Opportunity, opportunity, type ReachedJob } from "../access/index.js";
import type { WorkInput } from "./contract.js";

/** Those worth it first, then by what they save. Jobs left out by hand or declined are not offered again. */
export function offersBeside(
  input: WorkInput,
  jobs: readonly ReachedJob[],
  chosen: readonly ReachedJob[],
): readonly Opportunity[] {
  const isIn = new Set(chosen.map(({ id }) => id));
  const given = new Map(input.jobs.map((job) => [job.id, job]));
  const perHour = input.terms?.labourRates[0]?.perHour;
  return jobs
    .filter(({ id }) => !isIn.has(id) && given.get(id)?.wanted !== "out" && !given.get(id)?.declined)
    .flatMap((job) => {
      const prices = given.get(job.id)?.parts.map(({ count, price }) => (price ? count * price[1] : undefined)) ?? [];
      const isPriced = prices.every((price) => price !== undefined);
      const made = opportunity({
        job: job.id,
        marginal: marginal(job, chosen),
        ...(perHour === undefined ? {} : { rate: perHour }),
        // A part that is worn out is thrown away with no life left; how much is left of one that is not, nobody has said.
        ...(isPriced ? { partPrice: prices.reduce((sum: number, price) => sum + (price ?? 0), 0), lifeLeft: 100 } : {}),
      });
      return made.ok ? [made.value] : [];
    })
    .filter(({ why }) => why !== "little-shared")
    .sort(
      (a, b) => Number(b.suggest) - Number(a.suggest) || b.minutesSaved - a.minutesSaved || (a.job < b.job ? -1 : 1),
    );
}
