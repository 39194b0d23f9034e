/** Which job is done next: stay with what is open, go in only when nothing further must come first, then urgency. */
import type { OpenState } from "../access/terms.js";
import { likely } from "../minutes.js";
import type { Planned } from "./once.js";

/**
 * The next of the jobs left (given in urgency order), none of which waits in a circle. Compared in turn: most minutes
 * of open states used, fewest jobs behind the same new states that still wait for something outside, urgency.
 */
export function nextJob(
  left: readonly Planned[],
  open: ReadonlySet<OpenState>,
  waitsFor: (job: Planned) => readonly string[],
): Planned {
  const ready = left.filter((job) => waitsFor(job).length === 0);
  const marks = ready.map((job, urgency) => ({
    job,
    inside: minutes(job.job.needs.filter((state) => open.has(state))),
    early: tooEarly(job, left, open, waitsFor),
    urgency,
  }));
  marks.sort((a, b) => b.inside - a.inside || a.early - b.early || a.urgency - b.urgency);
  const best = marks[0];
  if (best === undefined) throw new Error("every job left waits for another");
  return best.job;
}

const minutes = (states: readonly OpenState[]): number => states.reduce((sum, s) => sum + likely(s.minutes), 0);

/**
 * How many jobs of the states it would newly open wait for a job that does not need those states. A last job waits for
 * everything and holds nobody up.
 */
function tooEarly(
  { job }: Planned,
  left: readonly Planned[],
  open: ReadonlySet<OpenState>,
  waitsFor: (job: Planned) => readonly string[],
): number {
  const opens = job.needs.filter((state) => !open.has(state));
  const inside = left.filter(
    (other) => other.job.last !== true && other.job.needs.some((state) => opens.includes(state)),
  );
  const ids = new Set(inside.map((other) => other.job.id));
  return inside.filter((other) => waitsFor(other).some((id) => !ids.has(id))).length;
}
