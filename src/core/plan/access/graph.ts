/** From states and jobs as written to a graph that can be reckoned with. Faulty ones are named and set aside. */
import { type Problem, problem } from "../../terms/index.js";
import { sortByBefore } from "../circles.js";
import { addThree, isThree, likely, sumThree } from "../minutes.js";
import type { Three } from "../terms.js";
import type { Access, AccessJob, AccessState, OpenState, ReachedJob, Way } from "./terms.js";

/**
 * Every job with everything it needs open. A state or job that is faulty is told by name and left out together with
 * what hangs on it; the rest is worked out. A job with several ways in stands by the shortest until they are chosen
 * together (`settleWays`).
 */
export function accessOf(states: readonly AccessState[], jobs: readonly AccessJob[]): Access {
  const problems: Problem[] = [];
  const open = openStates(states, problems);
  const reached: ReachedJob[] = [];
  const setAside: string[] = [];
  const taken = new Set<string>();
  for (const job of jobs) {
    if (taken.has(job.id)) {
      problems.push(problem("access.job-twice", { path: job.id }, { job: job.id }));
      continue;
    }
    taken.add(job.id);
    const got = reach(job, open, problems);
    if (got === undefined) setAside.push(job.id);
    else reached.push(got);
  }
  return { states: [...open.values()].sort(byOpening), jobs: reached, setAside, problems };
}

/** Opening order: parents first. */
export const byOpening = (a: OpenState, b: OpenState): number => a.at - b.at;

/** The states that can be opened, parents before children; equals by id, so that the order given plays no part. */
function openStates(states: readonly AccessState[], problems: Problem[]): Map<string, OpenState> {
  const known = new Map<string, AccessState>();
  for (const state of states) {
    if (known.has(state.id)) problems.push(problem("access.state-twice", { path: state.id }, { state: state.id }));
    else known.set(state.id, state);
  }
  const ids = [...known.keys()].sort();
  const { order, circles } = sortByBefore(ids, new Map([...known].map(([id, s]) => [id, s.parents])));
  for (const round of circles)
    problems.push(problem("access.circle", { path: round[0] ?? "" }, { chain: round.join(" → ") }));
  const turning = new Set(circles.flat());
  const open = new Map<string, OpenState>();
  for (const id of order) {
    const state = known.get(id);
    if (state === undefined || turning.has(id) || !isSound(state, known, problems)) continue;
    const parents = state.parents.flatMap((p) => open.get(p) ?? []);
    // a parent that was faulty takes along what lies behind it; its own fault is told where it is
    if (parents.length < state.parents.length) continue;
    const depth = Math.max(-1, ...parents.map((p) => p.depth)) + 1;
    open.set(id, { id, parents, minutes: addThree(state.setUp, state.putBack), depth, at: open.size });
  }
  return open;
}

function isSound(state: AccessState, known: ReadonlyMap<string, AccessState>, problems: Problem[]): boolean {
  const before = problems.length;
  for (const parent of state.parents)
    if (!known.has(parent))
      problems.push(problem("access.unknown-state", { path: state.id }, { of: state.id, state: parent }));
  for (const minutes of [state.setUp, state.putBack])
    if (!isThree(minutes)) problems.push(badMinutes(state.id, minutes));
  return problems.length === before;
}

const badMinutes = (of: string, minutes: Three): Problem =>
  problem("access.minutes", { path: of }, { of, found: minutes.join(", ") });

function reach(job: AccessJob, open: ReadonlyMap<string, OpenState>, problems: Problem[]): ReachedJob | undefined {
  const { id, own } = job;
  if (own === undefined) problems.push(problem("access.no-minutes", { path: id }, { job: id }));
  else if (!isThree(own)) problems.push(badMinutes(id, own));
  const missing = (ids: readonly string[]) => [...new Set(ids)].filter((state) => !open.has(state));
  const closed = missing(job.access);
  for (const state of closed) problems.push(problem("access.closed-state", { path: id }, { job: id, state }));
  const ways = (job.ways === undefined || job.ways.length === 0 ? [[]] : job.ways).flatMap((states, way): Way[] => {
    const lost = missing(states);
    for (const state of lost)
      problems.push(problem("access.closed-way", { path: id }, { job: id, way: way + 1, state }));
    return lost.length > 0
      ? []
      : [{ way, needs: closure([...job.access, ...states].flatMap((s) => open.get(s) ?? [])) }];
  });
  const shortest = [...ways].sort((a, b) => minutesOf(a.needs) - minutesOf(b.needs) || a.way - b.way)[0];
  if (own === undefined || !isThree(own) || closed.length > 0 || shortest === undefined) return undefined;
  return { id, own, needs: shortest.needs, ways };
}

/** The states and everything that must be open before them, parents first. */
export function closure(states: Iterable<OpenState>): readonly OpenState[] {
  const all = new Set<OpenState>();
  const add = (state: OpenState) => {
    if (all.has(state)) return;
    all.add(state);
    state.parents.forEach(add);
  };
  for (const state of states) add(state);
  return [...all].sort(byOpening);
}

const minutesOf = (states: readonly OpenState[]): number => likely(sumThree(states.map((s) => s.minutes)));
