/**
 * What a job is worth in a choice, from the rank of what it mends before and after. Our own rule: by tiers, so that no
 * number of lesser jobs outbids one of a higher band; or flat, every rank step alike.
 */
import { bandOf } from "../matrix.js";

/** A job with the rank (1 worst … 20) of the most urgent fault it answers. */
export interface RankedJob {
  readonly id: string;
  readonly rank: number;
  /** Gone, or only made good enough to be watched. */
  readonly after: "gone" | "watched";
}

/** A rank better than the last of the matrix: nothing left. */
const RANK_GONE = 21;
const RANK_WATCHED = 20;
const FROM_BELOW = ["low", "medium", "serious", "high"] as const;

/** Rank steps won, 0 to 20. */
const steps = ({ rank, after }: RankedJob): number => (after === "gone" ? RANK_GONE : RANK_WATCHED) - rank;

/** Rank steps won by each job, all alike. */
export function flatValues(jobs: readonly RankedJob[]): ReadonlyMap<string, number> {
  return new Map(jobs.map((job) => [job.id, steps(job)]));
}

/**
 * Rank steps times the unit of the band: one more than all values of the bands below together. One serious job is worth
 * more than all medium ones, one medium more than all low ones.
 */
export function tieredValues(jobs: readonly RankedJob[]): ReadonlyMap<string, number> {
  const values = new Map<string, number>();
  let below = 0;
  for (const band of FROM_BELOW) {
    const unit = below + 1;
    for (const job of jobs) {
      if (bandOf(job.rank) !== band) continue;
      values.set(job.id, steps(job) * unit);
      below += steps(job) * unit;
    }
  }
  return values;
}
