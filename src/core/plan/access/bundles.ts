/** Jobs shown together under what they share. For showing only: the minutes are those of `hours`. */
import { addThree, likely, sumThree } from "../minutes.js";
import type { Three } from "../terms.js";
import { once, opened } from "./hours.js";
import type { OpenState, ReachedJob } from "./terms.js";

/** One job's line: its own minutes and what only it opens. */
export interface BundleJob {
  readonly kind: "job";
  readonly job: string;
  readonly own: Three;
  /** Opened for this job alone, in opening order. */
  readonly alone: readonly StateLine[];
  /** Shared states it needs that stand in another bundle. */
  readonly also: readonly string[];
}

/** A shared state's minutes stand as a line of their own, paid once. */
export interface StateLine {
  readonly state: string;
  readonly minutes: Three;
}

/** States opened once for everything beneath them. */
export interface Bundle {
  readonly kind: "bundle";
  /** In opening order; several where they serve the very same jobs. */
  readonly states: readonly StateLine[];
  /** Its most urgent job: the bundle stands where that job would. */
  readonly first: string;
  /** Empty only where every job that needs it stands under something it shares with fewer. */
  readonly parts: readonly BundlePart[];
  /** Shared minutes, and all minutes beneath. */
  readonly minutes: Three;
}
export type BundlePart = Bundle | BundleJob;

/**
 * A forest: every job under what the fewest others share with it, each shared state once. States that serve the very
 * same jobs stand together. Give the jobs in urgency order: bundles and jobs stand where their most urgent job would.
 */
export function bundlesOf(jobs: readonly ReachedJob[]): readonly BundlePart[] {
  const all = once(jobs);
  const groups = sharedGroups(all);
  const under = new Map<Group | undefined, Placed[]>();
  const put = (at: Group | undefined, part: Placed) => under.set(at, [...(under.get(at) ?? []), part]);
  all.forEach((job, at) => {
    const home = groups.find(({ users }) => users.has(job));
    put(home, { at, part: jobLine(job, home, groups) });
  });
  // fewest users first, so that a bundle is whole before it is put under what holds it
  for (const group of groups) {
    const parts = inOrder(under.get(group) ?? []);
    const at = all.findIndex((job) => group.users.has(job));
    put(parentOf(group, groups), { at, part: bundle(group, all[at]?.id ?? "", parts) });
  }
  return inOrder(under.get(undefined) ?? []);
}

/** States that serve the same jobs, more than one. */
interface Group {
  readonly states: OpenState[];
  readonly users: ReadonlySet<ReachedJob>;
}

/** A part and the place of its most urgent job. */
interface Placed {
  readonly at: number;
  readonly part: BundlePart;
}

const inOrder = (parts: readonly Placed[]): readonly BundlePart[] =>
  [...parts].sort((a, b) => a.at - b.at).map(({ part }) => part);

/** Fewest users first; of equals the one that takes longest, then the one opened first. */
function sharedGroups(jobs: readonly ReachedJob[]): readonly Group[] {
  const groups = new Map<string, Group>();
  for (const state of opened(jobs)) {
    const users = jobs.flatMap((job, i) => (job.needs.includes(state) ? [i] : []));
    if (users.length < 2) continue;
    const group = groups.get(users.join()) ?? { states: [], users: new Set(users.flatMap((i) => jobs[i] ?? [])) };
    group.states.push(state);
    groups.set(users.join(), group);
  }
  const takes = ({ states }: Group) => likely(sumThree(states.map(({ minutes }) => minutes)));
  return [...groups.values()].sort(
    (a, b) => a.users.size - b.users.size || takes(b) - takes(a) || (a.states[0]?.at ?? 0) - (b.states[0]?.at ?? 0),
  );
}

/** The nearest group that serves all its jobs and more. */
function parentOf(group: Group, groups: readonly Group[]): Group | undefined {
  return groups.find(({ users }) => users.size > group.users.size && [...group.users].every((job) => users.has(job)));
}

function jobLine(job: ReachedJob, home: Group | undefined, groups: readonly Group[]): BundleJob {
  const above = new Set<OpenState>();
  for (let at = home; at !== undefined; at = parentOf(at, groups)) for (const state of at.states) above.add(state);
  const shared = new Set(groups.flatMap(({ states }) => states));
  return {
    kind: "job",
    job: job.id,
    own: job.own,
    alone: job.needs.filter((state) => !shared.has(state)).map(line),
    also: job.needs.filter((state) => shared.has(state) && !above.has(state)).map(({ id }) => id),
  };
}

const line = ({ id, minutes }: OpenState): StateLine => ({ state: id, minutes });

function bundle(group: Group, first: string, parts: readonly BundlePart[]): Bundle {
  const states = group.states.map(line);
  const minutes = sumThree([...states.map((state) => state.minutes), ...parts.map(minutesOf)]);
  return { kind: "bundle", states, first, parts, minutes };
}

/** All minutes of a part of the forest, shared ones once. */
export function minutesOf(part: BundlePart): Three {
  return part.kind === "bundle" ? part.minutes : addThree(part.own, sumThree(part.alone.map(({ minutes }) => minutes)));
}
