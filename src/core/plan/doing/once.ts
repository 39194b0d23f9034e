/** Jobs done once for several: geometry, one bleed for all brake work. Knows no order. */
import { type Problem, problem } from "../../terms/index.js";
import type { DoingJob } from "./order.js";

/** A job to be done, with what it stands for. */
export interface Planned {
  readonly job: DoingJob;
  readonly standsFor: readonly string[];
  readonly brought: boolean;
  /** Jobs that end in this one. */
  readonly endedBy: readonly string[];
}

/**
 * Each job once: a last kind at several places is one, an after-job that several end in is one, and one that nobody
 * listed is brought along. An after-job that is not known is told; the jobs that end in it are still done.
 */
export function throughOnce(
  jobs: readonly DoingJob[],
  afterJobs: readonly DoingJob[],
): { readonly planned: readonly Planned[]; readonly problems: readonly Problem[] } {
  const problems: Problem[] = [];
  const known = new Map<string, DoingJob>();
  for (const job of jobs) {
    if (known.has(job.id)) problems.push(problem("doing.job-twice", { path: job.id }, { job: job.id }));
    else known.set(job.id, job);
  }
  const after = new Set([...known.values()].flatMap((job) => job.endsIn ?? []));
  const brought: DoingJob[] = [];
  for (const kind of after) {
    if ([...known.values()].some((job) => serves(job, kind))) continue;
    const job = afterJobs.find((one) => isKind(one, kind));
    if (job !== undefined) brought.push(job);
    else
      for (const { id } of endingIn([...known.values()], kind))
        problems.push(problem("doing.unknown-after", { path: id }, { job: id, named: kind }));
  }
  const all = [...known.values(), ...brought];
  const isOnce = (job: DoingJob) => job.last === true || after.has(job.kind ?? job.id);
  // the first of a kind done once, in urgency order, stands for the others
  const standIn = new Map<string, string>();
  for (const job of all) if (isOnce(job)) standIn.set(job.kind ?? job.id, standIn.get(job.kind ?? job.id) ?? job.id);
  const stands = (job: DoingJob) => !isOnce(job) || standIn.get(job.kind ?? job.id) === job.id;
  const planned = all.filter(stands).map((job): Planned => {
    const others = isOnce(job) ? all.filter((other) => !stands(other) && other.kind === job.kind) : [];
    // for those it stands for, too, it is opened and comes after all that they follow
    const needs = [...new Set([job, ...others].flatMap((one) => one.needs))].sort((a, b) => a.at - b.at);
    const follows = [job, ...others].flatMap((one) => one.follows ?? []);
    const served = [...after].filter((kind) => serves(job, kind));
    return {
      job: { ...job, needs, follows },
      standsFor: others.map(({ id }) => id),
      brought: brought.includes(job),
      endedBy: [...new Set(served.flatMap((kind) => endingIn(all, kind).map(({ id }) => id)))],
    };
  });
  return { planned, problems };
}

const isKind = (job: DoingJob, kind: string): boolean => job.kind === kind || job.id === kind;
const serves = (job: DoingJob, kind: string): boolean => isKind(job, kind) || job.contains?.includes(kind) === true;
const endingIn = (jobs: readonly DoingJob[], kind: string): readonly DoingJob[] =>
  jobs.filter((job) => job.endsIn?.includes(kind) === true && !serves(job, kind));
