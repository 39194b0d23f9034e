/** Minutes of jobs done together: shared access is paid once. Knows no money. */
import { addThree, likely, sumThree } from "../minutes.js";
import type { Three } from "../terms.js";
import { byOpening } from "./graph.js";
import type { OpenState, ReachedJob } from "./terms.js";

/** Everything that must be open for these jobs, in opening order (parents first). */
export function opened(jobs: readonly ReachedJob[]): readonly OpenState[] {
  return [...new Set(jobs.flatMap((job) => job.needs))].sort(byOpening);
}

/** Minutes of these jobs in one visit: each job's own, and each opened state once. A job named twice is one. */
export function hours(jobs: readonly ReachedJob[]): Three {
  return addThree(sumThree(once(jobs).map((job) => job.own)), sumThree(opened(jobs).map((state) => state.minutes)));
}

/** What a job adds to a visit in which the others are done anyway. */
export interface Marginal {
  readonly added: Three;
  /** What it would take on a visit of its own. */
  readonly standAlone: Three;
  /** Likely minutes added ÷ likely minutes alone: 1 nothing is shared; near 0 nearly all of it is open already. */
  readonly ratio: number;
  /** States it would open that the others do not, in opening order. */
  readonly opens: readonly OpenState[];
}

/** What `job` adds to `given`. A job that is among them already adds nothing. */
export function marginal(job: ReachedJob, given: readonly ReachedJob[]): Marginal {
  const standAlone = hours([job]);
  const open = new Set(opened(given));
  const isDone = given.some(({ id }) => id === job.id);
  const opens = job.needs.filter((state) => !open.has(state));
  const added: Three = isDone ? [0, 0, 0] : addThree(job.own, sumThree(opens.map((state) => state.minutes)));
  // a job that takes no time at all saves none by company
  return { added, standAlone, ratio: likely(standAlone) === 0 ? 1 : likely(added) / likely(standAlone), opens };
}

/** Each job once, in the order given. */
export const once = (jobs: readonly ReachedJob[]): readonly ReachedJob[] => [
  ...new Map(jobs.map((job) => [job.id, job])).values(),
];
