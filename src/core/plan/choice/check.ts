/** What can be wrong with a choice before anything is searched: figures, names, rings, contradictions. */
import { nearest } from "../../terms/author.js";
import { type Problem, problem } from "../../terms/index.js";
import type { ChoiceProblem } from "./contract.js";
import type { Item } from "./item.js";

const isAmount = (value: number): boolean => Number.isSafeInteger(value) && value >= 0;

/** Figures that are no whole amounts, ids given twice, names nobody has. Empty when all is well. */
export function faultsOf({ budget, states, jobs, nodeCap }: ChoiceProblem): readonly Problem[] {
  const found: Problem[] = [];
  const tell = (code: string, path: string, params: Problem["params"]): void => {
    found.push(problem(`choice.${code}`, { path }, params));
  };
  const amount = (what: "cost" | "value", of: string, value: number, path: string): void => {
    if (!isAmount(value)) tell(what, `${path}.${what}`, { of, found: String(value) });
  };
  const named = (
    code: string,
    names: readonly string[],
    known: ReadonlySet<string>,
    of: string,
    path: string,
  ): void => {
    for (const name of names)
      if (!known.has(name)) tell(code, path, { of, named: name, expected: nearest(name, known) });
  };
  if (!isAmount(budget)) tell("budget", "budget", { found: String(budget) });
  if (nodeCap !== undefined && !(isAmount(nodeCap) && nodeCap > 0))
    tell("node-cap", "nodeCap", { found: String(nodeCap) });
  for (const [list, all] of [
    ["states", states],
    ["jobs", jobs],
  ] as const) {
    const seen = new Set<string>();
    for (const [i, { id }] of all.entries()) {
      if (seen.has(id)) tell("twice", `${list}[${i}].id`, { of: id });
      seen.add(id);
    }
  }
  const knownStates = new Set(states.map((s) => s.id));
  const knownJobs = new Set(jobs.map((j) => j.id));
  for (const [i, state] of states.entries()) {
    amount("cost", state.id, state.cost, `states[${i}]`);
    named("unknown-state", state.parents, knownStates, state.id, `states[${i}].parents`);
  }
  for (const [i, job] of jobs.entries()) {
    amount("cost", job.id, job.cost, `jobs[${i}]`);
    amount("value", job.id, job.value, `jobs[${i}]`);
    named("unknown-state", job.access, knownStates, job.id, `jobs[${i}].access`);
    named("unknown-job", job.needs ?? [], knownJobs, job.id, `jobs[${i}].needs`);
  }
  const total = [...states, ...jobs].reduce((sum, { cost }) => sum + cost, 0);
  const worth = jobs.reduce((sum, { value }) => sum + value, 0);
  if (found.length === 0 && !(isAmount(total) && isAmount(worth))) tell("too-large", "jobs", {});
  return found;
}

/** Items that can never be done because they, or what they need, exclude each other. */
export function contradictions(items: readonly Item[], mandatory: readonly Item[]): readonly Problem[] {
  const clash = (all: readonly Item[]): readonly string[] => {
    const set = new Set(all);
    return all.filter((one) => one.rivals.some((r) => r === one || set.has(r))).flatMap((one) => one.jobs);
  };
  const found: Problem[] = [];
  for (const item of items) {
    const jobs = clash([item, ...item.above]);
    if (jobs.length > 0) found.push(problem("choice.never", {}, { of: item.jobs, jobs }));
  }
  const must = clash(mandatory);
  if (found.length === 0 && must.length > 0) found.push(problem("choice.both-mandatory", {}, { jobs: must }));
  return found;
}
