/**
 * The longest chain of work: when each activity can start and must end for the whole to end as early as it can.
 * Whole units of time, so that no slack is missed by a rounding. Knows no people and no opening times.
 */
import { fail, ok, type Problem, problem, type Result } from "../../terms/index.js";
import { type Follows, sortByFollows } from "./follow.js";

export interface PathActivity extends Follows {
  /** Whole, not negative. */
  readonly duration: number;
  /** Not before this. */
  readonly release?: number | undefined;
}

/** What time does to an activity after its work: a process that needs nobody, run on the real clock. */
export interface Waits {
  /** When what follows may start, its work ending at `finish`; never before `finish`, never falling. */
  readonly ready: (id: string, finish: number) => number;
  /** The latest end of its work for which what follows may start at `start`. */
  readonly latest: (id: string, start: number) => number;
}

/** Earliest and latest start and finish, total and free float. */
export interface PathRow {
  readonly id: string;
  readonly es: number;
  readonly ef: number;
  readonly ls: number;
  readonly lf: number;
  readonly total: number;
  readonly free: number;
}

export interface CriticalPath {
  readonly finish: number;
  /** In the order they came. */
  readonly rows: readonly PathRow[];
  /** Without total float, in order of their earliest start. */
  readonly critical: readonly string[];
}

const NO_WAIT: Waits = { ready: (_, finish) => finish, latest: (_, start) => start };

/** Forward and backward pass. Faulty durations, names and circles are problems that name the activities. */
export function criticalPath(activities: readonly PathActivity[], waits: Waits = NO_WAIT): Result<CriticalPath> {
  const problems = faultsOf(activities);
  if (problems.length > 0) return fail(...problems);
  const sorted = sortByFollows(activities);
  if ("cycle" in sorted) return fail(problem("schedule.circle", {}, { jobs: sorted.cycle }));
  const byId = new Map(activities.map((activity) => [activity.id, activity]));
  const inOrder = sorted.order.flatMap((id) => byId.get(id) ?? []);

  const es = new Map<string, number>();
  const ready = new Map<string, number>();
  for (const { id, duration, preds, release } of inOrder) {
    const start = Math.max(0, release ?? 0, ...preds.map((pred) => ready.get(pred) ?? 0));
    es.set(id, start);
    ready.set(id, waits.ready(id, start + duration));
  }
  const finish = Math.max(0, ...ready.values());

  const ls = new Map<string, number>();
  const dueBy = new Map<string, number>();
  const neededBy = new Map<string, number>();
  for (const { id, duration, preds } of inOrder.toReversed()) {
    const due = dueBy.get(id) ?? finish;
    const start = waits.latest(id, due) - duration;
    ls.set(id, start);
    for (const pred of preds) {
      dueBy.set(pred, Math.min(dueBy.get(pred) ?? finish, start));
      neededBy.set(pred, Math.min(neededBy.get(pred) ?? Number.POSITIVE_INFINITY, es.get(id) ?? 0));
    }
  }
  const rows = activities.map(({ id, duration }): PathRow => {
    const [early, late] = [es.get(id) ?? 0, ls.get(id) ?? 0];
    const free = waits.latest(id, neededBy.get(id) ?? finish) - (early + duration);
    return { id, es: early, ef: early + duration, ls: late, lf: late + duration, total: late - early, free };
  });
  const critical = rows
    .filter(({ total }) => total === 0)
    .sort((a, b) => a.es - b.es || a.ef - b.ef)
    .map(({ id }) => id);
  return ok({ finish, rows, critical });
}

function faultsOf(activities: readonly PathActivity[]): readonly Problem[] {
  const ids = new Set(activities.map(({ id }) => id));
  const seen = new Set<string>();
  return activities.flatMap(({ id, duration, preds, release }) => {
    const twice = seen.has(id);
    seen.add(id);
    return [
      ...(twice ? [problem("schedule.job-twice", {}, { job: id })] : []),
      ...(isWhole(duration) ? [] : [problem("schedule.no-minutes", {}, { job: id })]),
      ...(isWhole(release ?? 0) ? [] : [problem("schedule.release", {}, { job: id })]),
      ...preds
        .filter((pred) => !ids.has(pred))
        .map((pred) => problem("schedule.unknown-job", {}, { job: id, named: pred })),
    ];
  });
}

/** A whole number of minutes or days, not below nought and exact. */
export const isWhole = (value: number): boolean => Number.isSafeInteger(value) && value >= 0;
