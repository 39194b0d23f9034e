/** How long one's own record has lain on this phone alone. Pure; knows summaries and what the last copy remembered. */
import type { CopyMade, Summary } from "../../core/record/index.js";
import { DAY_MS } from "../../core/terms/index.js";

/**
 * Days without a copy after which the car list says so. Own choice: after a fortnight few people could enter anew what
 * they saw; asked for more often, such a line is no longer read.
 */
export const ASK_AFTER_DAYS = 14;

export interface CopyAge {
  /** Streams of one's own; the demo never counts. */
  readonly own: number;
  /** Of these, how many changed since the last copy. */
  readonly changed: number;
  /** Whole days since the last copy; undefined where none was handed over. */
  readonly days?: number;
  /** Days the oldest thing without a copy has lain here, as far as the summaries tell. */
  readonly alone: number;
}

export function copyAge(summaries: readonly Summary[], made: CopyMade | undefined, now: number): CopyAge {
  const own = summaries.filter((one) => !one.demo);
  const changed = own.filter(
    ({ stream, entries, last }) => made?.streams[stream]?.sum !== `${entries} ${last.wall} ${last.count}`,
  );
  const daysSince = (wall: number): number => Math.max(0, Math.floor((now - wall) / DAY_MS));
  const days = made && daysSince(made.at);
  const oldest = Math.min(now, ...changed.map(({ last }) => last.wall));
  const alone = changed.length === 0 ? 0 : (days ?? daysSince(oldest));
  return { own: own.length, changed: changed.length, alone, ...(days === undefined ? {} : { days }) };
}
