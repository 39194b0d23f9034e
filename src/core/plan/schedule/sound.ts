/**
 * Which activities can be planned: faulty ones are told, what waits for them is left out with them, and so is all of a
 * block of which one is left out, for it could be opened and not closed. Knows no times.
 */
import { type Problem, problem } from "../../terms/index.js";
import { type Spell, spellsOf } from "./blocks.js";
import type { Activity, ScheduleInput } from "./contract.js";
import { isWhole } from "./critical-path.js";
import { dayNumber } from "./days.js";
import { followersOf, sortByFollows } from "./follow.js";

export interface Sound {
  readonly activities: readonly Activity[];
  readonly spells: readonly Spell[];
  readonly leftOut: readonly string[];
  readonly problems: readonly Problem[];
}

/** People an activity takes: one unless said, nobody without work. */
export const peopleOf = ({ minutes, people = 1 }: Activity): number => (minutes === 0 ? 0 : people);

/** What can be planned. `without`: jobs that are known already to have no date, and were told. */
export function soundOf(input: ScheduleInput, without: ReadonlySet<string>): Sound {
  const seen = new Set<string>();
  const problems: Problem[] = [];
  const single = input.activities.filter(({ id }) => {
    if (!seen.has(id)) return seen.add(id);
    problems.push(problem("schedule.job-twice", {}, { job: id }));
    return false;
  });
  const roots = new Set([...without].filter((id) => seen.has(id)));
  for (const activity of single) {
    const faults = faultsOf(activity, input, seen);
    problems.push(...faults);
    if (faults.length > 0) roots.add(activity.id);
  }
  const over = spellsOf(input.blocks ?? [], single);
  problems.push(...over.problems);
  if (input.calendar.lifts === 0) {
    for (const { id, open } of over.spells) {
      roots.add(open);
      problems.push(problem("schedule.not-enough", {}, { job: id, needs: 1, what: "lifts", has: 0 }));
    }
  }
  let left = withWaiting(over.activities, over.spells, roots);
  for (;;) {
    const kept = over.activities.filter(({ id }) => !left.has(id));
    const sorted = sortByFollows(kept);
    if ("order" in sorted) break;
    problems.push(problem("schedule.circle", {}, { jobs: sorted.cycle }));
    for (const id of sorted.cycle) roots.add(id);
    left = withWaiting(over.activities, over.spells, roots);
  }
  const kept = over.activities.filter(({ id }) => !left.has(id));
  const waiting = [...left].filter((id) => !roots.has(id));
  for (const job of waiting) {
    const waits = [...roots].filter((root) => withWaiting(over.activities, over.spells, new Set([root])).has(job));
    problems.push(problem("schedule.left-out", {}, { job, waits }));
  }
  const spells = over.spells.filter(({ open }) => !left.has(open));
  return { activities: kept, spells, leftOut: [...left], problems };
}

function withWaiting(
  activities: readonly Activity[],
  spells: readonly Spell[],
  roots: ReadonlySet<string>,
): ReadonlySet<string> {
  let left = roots;
  for (;;) {
    const touched = spells.filter(({ members }) => [...members].some((id) => left.has(id)));
    const next = new Set([
      ...left,
      ...followersOf(activities, left),
      ...touched.flatMap(({ members }) => [...members]),
    ]);
    if (next.size === left.size) return next;
    left = next;
  }
}

function faultsOf(activity: Activity, { calendar }: ScheduleInput, known: ReadonlySet<string>): readonly Problem[] {
  const { id: job, minutes, preds, lift, release, wall = 0, due = 0 } = activity;
  const people = peopleOf(activity);
  const lacks = (what: string, needs: number, has: number): readonly Problem[] =>
    needs <= has ? [] : [problem("schedule.not-enough", {}, { job, needs, what, has })];
  return [
    ...(isWhole(minutes) && isWhole(wall) && Number.isFinite(due) ? [] : [problem("schedule.no-minutes", {}, { job })]),
    ...(isWhole(people) ? lacks("people", people, calendar.people) : [problem("schedule.no-minutes", {}, { job })]),
    ...lacks("lifts", lift === true ? 1 : 0, calendar.lifts),
    ...(release === undefined || dayNumber(release) !== undefined ? [] : [problem("schedule.release", {}, { job })]),
    ...preds.filter((named) => !known.has(named)).map((named) => problem("schedule.unknown-job", {}, { job, named })),
  ];
}
