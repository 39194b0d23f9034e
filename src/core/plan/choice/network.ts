/**
 * From a choice as asked to linked items: sets that go together folded into one, needs before what needs them, needs
 * that follow from others left away, mandatory jobs decided with all they need.
 */
import { fail, ok, problem, type Result } from "../../terms/index.js";
import { contradictions, faultsOf } from "./check.js";
import type { ChoiceJob, ChoiceProblem, ChosenSet } from "./contract.js";
import { type Item, newItem } from "./item.js";

const byCodeUnit = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Items with needs first, ready to be searched once; or what is wrong with the choice. */
export function networkOf(asked: ChoiceProblem): Result<readonly Item[]> {
  const faults = faultsOf(asked);
  if (faults.length > 0) return fail(...faults);
  const states = new Map(
    asked.states.map(({ id, cost }) => [id, newItem({ name: id, isState: true, jobs: [], cost, value: 0 })]),
  );
  const sets = [...foldTogether(asked.jobs)];
  const items = new Map<Item, readonly ChoiceJob[]>(sets.map((jobs) => [setItem(jobs), jobs]));
  const itemOf = new Map([...items].flatMap(([item, jobs]) => jobs.map((job) => [job.id, item] as const)));
  const pick = (of: ReadonlyMap<string, Item>, ids: readonly string[]): Item[] =>
    [...new Set(ids)].sort(byCodeUnit).flatMap((id) => of.get(id) ?? []);

  for (const { id, parents } of asked.states) {
    const state = states.get(id);
    if (state !== undefined) state.needs = pick(states, parents);
  }
  for (const [item, jobs] of items) {
    const wanted = pick(
      itemOf,
      jobs.flatMap((job) => job.needs ?? []),
    );
    item.needs = [
      ...pick(
        states,
        jobs.flatMap((job) => job.access),
      ),
      // a set needs nothing of itself; a job alone that needs itself is a ring and told
      ...new Set(wanted.filter((other) => other !== item || jobs.length === 1)),
    ];
  }
  linkRivals(items);
  const all = [...states.values(), ...items.keys()].sort((a, b) => byCodeUnit(a.name, b.name));
  const order = needsFirst(all);
  if (!Array.isArray(order)) return fail(problem(`choice.${order.kind}-circle`, {}, { chain: order.ring }));
  linkFar(order);
  const mandatory = new Set<Item>();
  for (const [item, jobs] of items)
    if (jobs.some((job) => job.mandatory === true)) for (const one of [item, ...item.above]) mandatory.add(one);
  const wrong = contradictions(order, [...mandatory]);
  if (wrong.length > 0) return fail(...wrong);
  for (const item of mandatory) {
    item.mark = "in";
    for (const rival of item.rivals) for (const out of [rival, ...rival.below]) out.mark = "out";
  }
  return ok(order);
}

/** Jobs by set; a job without one is a set of its own. */
function foldTogether(jobs: readonly ChoiceJob[]): Iterable<ChoiceJob[]> {
  const sets = new Map<string, ChoiceJob[]>();
  for (const job of [...jobs].sort((a, b) => byCodeUnit(a.id, b.id))) {
    const name = job.together === undefined ? `job ${job.id}` : `set ${job.together}`;
    sets.set(name, [...(sets.get(name) ?? []), job]);
  }
  return sets.values();
}

function setItem(jobs: readonly ChoiceJob[]): Item {
  const sum = (of: (job: ChoiceJob) => number): number => jobs.reduce((total, job) => total + of(job), 0);
  const ids = jobs.map((job) => job.id);
  return newItem({
    name: ids.join(" "),
    isState: false,
    jobs: ids,
    cost: sum((j) => j.cost),
    value: sum((j) => j.value),
  });
}

/** A set that holds two of one group is its own rival: told as a contradiction. */
function linkRivals(items: ReadonlyMap<Item, readonly ChoiceJob[]>): void {
  const groups = new Map<string, Item[]>();
  for (const [item, jobs] of items)
    for (const { oneOf } of jobs) if (oneOf !== undefined) groups.set(oneOf, [...(groups.get(oneOf) ?? []), item]);
  for (const group of groups.values())
    for (const [i, item] of group.entries())
      item.rivals = [...new Set([...item.rivals, ...group.filter((_, other) => other !== i)])];
}

/** What is needed before what needs it; or the ring that prevents it. */
function needsFirst(
  all: readonly Item[],
): Item[] | { readonly kind: "state" | "job"; readonly ring: readonly string[] } {
  const done = new Set<Item>();
  const way: Item[] = [];
  const visit = (item: Item): Item | undefined => {
    if (done.has(item)) return undefined;
    if (way.includes(item)) return item;
    way.push(item);
    for (const need of item.needs) {
      const met = visit(need);
      if (met !== undefined) return met;
    }
    way.pop();
    done.add(item);
    return undefined;
  };
  for (const item of all) {
    const met = visit(item);
    if (met !== undefined)
      return { kind: met.isState ? "state" : "job", ring: way.slice(way.indexOf(met)).map((one) => one.name) };
  }
  return [...done];
}

function linkFar(order: readonly Item[]): void {
  const below = new Map<Item, Item[]>(order.map((item) => [item, []]));
  for (const item of order) {
    const above = new Set(item.needs.flatMap((need) => [need, ...need.above]));
    item.needs = item.needs.filter((need) => !item.needs.some((other) => other.above.includes(need)));
    item.above = order.filter((one) => above.has(one));
    for (const one of above) below.get(one)?.push(item);
  }
  for (const [item, all] of below) item.below = all;
}

/** A set of items as jobs and exactly the states they need. */
export function planOf(items: readonly Item[]): ChosenSet {
  const done = items.filter((item) => !item.isState);
  const all = new Set(done.flatMap((item) => [item, ...item.above]));
  const sum = (of: (item: Item) => number): number => [...all].reduce((total, item) => total + of(item), 0);
  return {
    value: sum((item) => item.value),
    cost: sum((item) => item.cost),
    chosen: [...all].flatMap((item) => item.jobs).sort(byCodeUnit),
    open: [...all].flatMap((item) => (item.isState ? item.name : [])).sort(byCodeUnit),
  };
}
