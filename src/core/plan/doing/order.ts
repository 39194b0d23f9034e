/**
 * The order in which jobs are done: what must come first, what is open anyway, what is most urgent. The urgency order
 * stays as it is; both are shown. Knows no hours and no people.
 */
import type { Why } from "../../assess/contract.js";
import { type Problem, problem } from "../../terms/index.js";
import { byOpening } from "../access/graph.js";
import type { OpenState } from "../access/terms.js";
import { sortByBefore } from "../circles.js";
import { nextJob } from "./next.js";
import { type Planned, throughOnce } from "./once.js";

/** A job as the doing order sees it. */
export interface DoingJob {
  readonly id: string;
  /** What sort of job it is, where the same is done at several places: `follows` and `endsIn` may name it. */
  readonly kind?: string | undefined;
  readonly needs: readonly OpenState[];
  /** Ids or kinds of jobs that come before it where they are done at all. */
  readonly follows?: readonly string[] | undefined;
  /** Once, and after everything that does not itself follow it: geometry. */
  readonly last?: boolean | undefined;
  /** Kinds of after-jobs it cannot do without: a bleed, a re-torque. Several jobs share one. */
  readonly endsIn?: readonly string[] | undefined;
  /** Kinds whose work it contains: a full change of fluid serves as the bleed. */
  readonly contains?: readonly string[] | undefined;
}

export interface DoingStep {
  readonly job: string;
  /** Further jobs given that this one stands for, because it is done once. */
  readonly standsFor: readonly string[];
  /** On no list by itself: brought along by jobs that end in it. */
  readonly brought: boolean;
  /** States opened before it, outside first. */
  readonly opens: readonly string[];
  /** States nothing further needs, put back after it, inside first. */
  readonly closes: readonly string[];
  readonly why: readonly Why[];
}

export interface Doing {
  readonly steps: readonly DoingStep[];
  readonly problems: readonly Problem[];
}

/**
 * Give the jobs in urgency order, and the after-jobs that may be brought along. Each state is opened once; jobs of one
 * opened state stay together where what must come first allows it. Jobs that wait for each other in a circle are named,
 * and done as if they did not.
 */
export function doingOrder(jobs: readonly DoingJob[], afterJobs: readonly DoingJob[] = []): Doing {
  const { planned, problems } = throughOnce(jobs, afterJobs);
  const before = waits(planned);
  const ids = planned.map(({ job }) => job.id);
  const { order, circles } = sortByBefore(ids, before);
  const told = circles.map((round) => problem("doing.circle", { path: round[0] ?? "" }, { jobs: round }));
  const at = new Map(order.map((id, i) => [id, i]));
  // what a circle asked for and did not get is not waited for either
  const kept = new Map(
    ids.map((id) => [id, (before.get(id) ?? []).filter((first) => (at.get(first) ?? 0) < (at.get(id) ?? 0))]),
  );
  return { steps: steps(planned, kept), problems: [...problems, ...told] };
}

/** What each job waits for: the jobs it follows, those that end in it, and for a last one all that need not follow it. */
function waits(planned: readonly Planned[]): ReadonlyMap<string, readonly string[]> {
  const named = (name: string) => planned.filter(({ job }) => job.id === name || job.kind === name);
  const before = new Map(
    planned.map(({ job, endedBy }) => [
      job.id,
      new Set([...endedBy, ...(job.follows ?? []).flatMap((name) => named(name).map((p) => p.job.id))]),
    ]),
  );
  for (const waiting of before) waiting[1].delete(waiting[0]);
  for (const { job } of planned.filter((p) => p.job.last === true)) {
    const after = followersOf(job.id, before);
    for (const other of planned)
      if (other.job.last !== true && !after.has(other.job.id)) before.get(job.id)?.add(other.job.id);
  }
  return new Map([...before].map(([id, waiting]) => [id, [...waiting]]));
}

/** Everything that waits for a job, directly or through others; the job itself too. */
function followersOf(id: string, before: ReadonlyMap<string, ReadonlySet<string>>): ReadonlySet<string> {
  const after = new Set([id]);
  for (const reached of after) for (const [other, waiting] of before) if (waiting.has(reached)) after.add(other);
  return after;
}

function steps(planned: readonly Planned[], before: ReadonlyMap<string, readonly string[]>): readonly DoingStep[] {
  const left = new Map(planned.map((p) => [p.job.id, p]));
  const open = new Set<OpenState>();
  const done: Planned[] = [];
  const all: DoingStep[] = [];
  while (left.size > 0) {
    const next = nextJob([...left.values()], open, (p) => (before.get(p.job.id) ?? []).filter((id) => left.has(id)));
    left.delete(next.job.id);
    const why = reasons(next, done, open, before.get(next.job.id) ?? []);
    const opens = next.job.needs.filter((state) => !open.has(state));
    for (const state of opens) open.add(state);
    done.push(next);
    const needed = new Set([...left.values()].flatMap(({ job }) => job.needs));
    const closes = [...open].filter((state) => !needed.has(state)).sort((a, b) => byOpening(b, a));
    for (const state of closes) open.delete(state);
    const { job, standsFor, brought } = next;
    all.push({ job: job.id, standsFor, brought, opens: names(opens), closes: names(closes), why });
  }
  return all;
}

const names = (states: readonly OpenState[]): readonly string[] => states.map(({ id }) => id);

/** Why a job stands here, in code and figures: what came first, what is open anyway, what is done once. */
function reasons(
  { job, standsFor, endedBy }: Planned,
  done: readonly Planned[],
  open: ReadonlySet<OpenState>,
  before: readonly string[],
): readonly Why[] {
  const why: Why[] = [];
  const first = done.filter((d) => before.includes(d.job.id)).at(-1);
  if (job.last === true) why.push({ code: "doing.last", params: {} });
  else if (first !== undefined)
    why.push({ code: "doing.after", params: { first: first.job.id, others: before.length - 1 } });
  const shared = job.needs.filter((state) => open.has(state)).sort(byDepth)[0];
  const beside = shared && done.filter((d) => d.job.needs.includes(shared)).at(-1);
  if (shared && beside) why.push({ code: "doing.with", params: { beside: beside.job.id, state: shared.id } });
  const served = Math.max(endedBy.length, standsFor.length + 1);
  if (served > 1) why.push({ code: "doing.once", params: { jobs: served } });
  return why;
}

const byDepth = (a: OpenState, b: OpenState): number => b.depth - a.depth || byOpening(a, b);
