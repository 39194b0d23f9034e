/** Choosing by trying every set of jobs: for small choices, and written without a thought of speed. */
import type { ChoiceJob, ChoiceProblem } from "../../src/core/plan/index.js";

/** The states these jobs need, near and far. */
export function needed({ states }: ChoiceProblem, jobs: readonly ChoiceJob[]): ReadonlySet<string> {
  const open = new Set<string>();
  const add = (id: string): void => {
    if (open.has(id)) return;
    open.add(id);
    for (const parent of states.find((state) => state.id === id)?.parents ?? []) add(parent);
  };
  for (const job of jobs) for (const id of job.access) add(id);
  return open;
}

/** Worth and cost of every set of jobs that keeps to needs, groups, sets and musts; budgets not looked at. */
export function everyPlan(asked: ChoiceProblem): readonly { readonly value: number; readonly cost: number }[] {
  const { jobs, states } = asked;
  const plans: { value: number; cost: number }[] = [];
  // A job that a must needs is a must as well; here that follows from trying only sets that hold together.
  for (let set = 0; set < 2 ** jobs.length; set += 1) {
    const done = jobs.filter((_, i) => (set >> i) % 2 === 1);
    if (!holds(jobs, done)) continue;
    const open = needed(asked, done);
    const paid = [...done, ...states.filter((state) => open.has(state.id))];
    plans.push({
      value: done.reduce((sum, job) => sum + job.value, 0),
      cost: paid.reduce((sum, { cost }) => sum + cost, 0),
    });
  }
  return plans;
}

function holds(jobs: readonly ChoiceJob[], done: readonly ChoiceJob[]): boolean {
  const ids = new Set(done.map((job) => job.id));
  const groups = done.flatMap((job) => job.oneOf ?? []);
  const sets = new Set(done.flatMap((job) => job.together ?? []));
  return (
    new Set(groups).size === groups.length &&
    done.every((job) => (job.needs ?? []).every((id) => ids.has(id))) &&
    jobs.every((job) => ids.has(job.id) || (job.mandatory !== true && !(job.together && sets.has(job.together))))
  );
}
