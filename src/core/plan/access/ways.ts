/** Either/or access: which way in opens least for the whole visit. */
import { likely } from "../minutes.js";
import { hours, once } from "./hours.js";
import type { OpenState, ReachedJob, Way } from "./terms.js";

/** Up to this many jobs with a choice every combination is weighed; beyond, one job after the other. */
const WEIGHED_JOBS = 12;
/** And no more combinations than a phone weighs without a pause to be felt. */
const WEIGHED_WAYS = 200_000;

export interface ChosenWay {
  readonly job: string;
  readonly way: number;
  /** Likely minutes the best other way would add to the same visit; 0: it would do as well. */
  readonly otherAdds: number;
  /** The way was taken because of what other jobs open: alone, another one would be shorter. */
  readonly forOthers: boolean;
}

export interface SettledWays {
  /** The jobs as given, each by its chosen way. */
  readonly jobs: readonly ReachedJob[];
  /** Jobs that had a choice. */
  readonly chosen: readonly ChosenWay[];
  /** False: too many choices to weigh them all; no single job's way could be bettered. */
  readonly proven: boolean;
}

/** Chooses for every job with several ways in the one with which the whole visit takes the fewest likely minutes. */
export function settleWays(jobs: readonly ReachedJob[]): SettledWays {
  const all = once(jobs);
  const open = all.filter(({ ways }) => ways.length > 1).sort((a, b) => (a.id < b.id ? -1 : 1));
  const combinations = open.reduce((product, { ways }) => product * ways.length, 1);
  const proven = open.length <= WEIGHED_JOBS && combinations <= WEIGHED_WAYS;
  const fixed = new Set(all.filter(({ ways }) => ways.length <= 1).flatMap(({ needs }) => needs));
  const ways = proven ? weighAll(open, fixed) : weighOneByOne(open, fixed);
  const settled = all.map((job) => ({ ...job, needs: ways.get(job.id)?.needs ?? job.needs }));
  return { jobs: settled, chosen: open.map((job) => told(job, settled, ways.get(job.id)?.way ?? 0)), proven };
}

type Chosen = ReadonlyMap<string, Way>;

/** Every combination, left off as soon as it opens more than the best so far; of equals the earlier ways stand. */
function weighAll(jobs: readonly ReachedJob[], fixed: ReadonlySet<OpenState>): Chosen {
  let best: { readonly minutes: number; readonly ways: readonly Way[] } | undefined;
  const step = (ways: readonly Way[], open: ReadonlySet<OpenState>, minutes: number) => {
    if (best !== undefined && minutes >= best.minutes) return;
    const job = jobs[ways.length];
    if (job === undefined) best = { minutes, ways };
    else for (const way of job.ways) step([...ways, way], new Set([...open, ...way.needs]), minutes + adds(way, open));
  };
  step([], fixed, 0);
  return new Map(jobs.flatMap((job, i) => (best?.ways[i] === undefined ? [] : [[job.id, best.ways[i]]])));
}

/** One job after the other, again and again until no single change saves a minute. */
function weighOneByOne(jobs: readonly ReachedJob[], fixed: ReadonlySet<OpenState>): Chosen {
  const chosen = new Map<string, Way>();
  for (let changed = true; changed; ) {
    changed = false;
    for (const job of jobs) {
      const others = [...chosen].flatMap(([id, way]) => (id === job.id ? [] : way.needs));
      const open = new Set([...fixed, ...others]);
      const now = chosen.get(job.id);
      const best = [...job.ways].sort((a, b) => adds(a, open) - adds(b, open))[0];
      if (best !== undefined && (now === undefined || adds(best, open) < adds(now, open))) {
        chosen.set(job.id, best);
        changed = true;
      }
    }
  }
  return chosen;
}

/** Likely minutes of what a way opens that is not open already. */
const adds = (way: Way, open: ReadonlySet<OpenState>): number =>
  way.needs.reduce((sum, state) => (open.has(state) ? sum : sum + likely(state.minutes)), 0);

function told(job: ReachedJob, settled: readonly ReachedJob[], way: number): ChosenWay {
  const minutes = (taken: Way) =>
    likely(hours(settled.map((j) => (j.id === job.id ? { ...job, needs: taken.needs } : j))));
  const now = likely(hours(settled));
  const others = job.ways.filter((w) => w.way !== way).map(minutes);
  const alone = [...job.ways].sort((a, b) => adds(a, new Set()) - adds(b, new Set()))[0];
  return { job: job.id, way, otherAdds: Math.min(...others) - now, forOthers: alone?.way !== way };
}
