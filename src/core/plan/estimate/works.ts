/**
 * Jobs and opened states as work to be charged: three sound points of minutes and a rate of the house. A job or state
 * that lacks one is set aside and told. Knows which state opens which as little as what any job is.
 */
import { type Problem, problem } from "../../terms/index.js";
import { sumThree } from "../minutes.js";
import { checkedThree, type MaybeThree, MOST_MINUTES, onlyOnce } from "./checks.js";
import type { CheckedTerms, LabourRate } from "./house-terms.js";
import type { Work } from "./labour.js";

/** A job's own minutes, without getting there. */
export interface EstimateJob {
  readonly id: string;
  readonly own?: MaybeThree;
  /** A labour rate's id; the house's first where nothing is said. */
  readonly rate?: string;
}

/** A state that is opened for these jobs, with every state it needs opened before it: each stands here once. */
export interface OpenedState {
  readonly id: string;
  readonly setUp?: MaybeThree;
  readonly putBack?: MaybeThree;
  readonly rate?: string;
}

export interface WorkGiven {
  readonly jobs: readonly EstimateJob[];
  readonly opened: readonly OpenedState[];
}

export interface Works {
  readonly works: readonly Work[];
  readonly setAside: readonly string[];
  readonly problems: readonly Problem[];
}

/** What can be charged, in the order given: jobs, then states. */
export function worksOf(given: WorkGiven, terms: CheckedTerms): Works {
  const jobs = onlyOnce(given.jobs, "jobs");
  const opened = onlyOnce(given.opened, "opened");
  const read = [
    ...jobs.rows.map(({ row, path }) => workOf(row, "job", path, { own: row.own }, terms)),
    ...opened.rows.map(({ row, path }) =>
      workOf(row, "access", path, { setUp: row.setUp, putBack: row.putBack }, terms),
    ),
  ];
  return {
    works: read.flatMap(({ work }) => work ?? []),
    setAside: read.filter(({ work }) => work === undefined).map(({ id }) => id),
    problems: [...jobs.problems, ...opened.problems, ...read.flatMap(({ problems }) => problems)],
  };
}

function workOf(
  { id, rate: named }: { readonly id: string; readonly rate?: string },
  kind: Work["kind"],
  path: string,
  minutes: Readonly<Record<string, MaybeThree | undefined>>,
  { rates, firstRate }: CheckedTerms,
): { readonly id: string; readonly work?: Work; readonly problems: readonly Problem[] } {
  const read = Object.entries(minutes).map(([field, given]) =>
    checkedThree(given, MOST_MINUTES, { id, what: "minutes", path: `${path}.${field}` }),
  );
  const rate: LabourRate | undefined = named === undefined ? firstRate : rates.get(named);
  const problems = [
    ...read.flatMap((one) => ("problems" in one ? one.problems : [])),
    ...(rate === undefined
      ? [problem("estimate.rate", { path: `${path}.rate` }, { id, found: `${named}`, expected: [...rates.keys()] })]
      : []),
  ];
  if (rate === undefined || problems.length > 0) return { id, problems };
  // opening and putting back are one piece of work: what makes the one slow makes the other slow
  const total = sumThree(read.flatMap((one) => ("three" in one ? [one.three] : [])));
  return { id, work: { id, kind, minutes: total, rate }, problems };
}
