/** The same choices as text for an integer programme, so that a solver from outside can answer them too. */
import type { ChoiceProblem } from "../../src/core/plan/index.js";

/** The solver's usual leave to stop near the best is taken away. */
export const PROVEN = { mip_rel_gap: 0, mip_abs_gap: 0 } as const;

type Sum = readonly (readonly [factor: number, name: string])[];
// a few terms a line: lines of the format may not be longer than some hundred characters
const sumText = (terms: Sum): string =>
  terms.map(([factor, name]) => `${factor < 0 ? "-" : "+"} ${Math.abs(factor)} ${name}`).join("\n ");

/** What every plan of a choice keeps to, besides the budget: needs, sets, groups, mandatory jobs. */
function rules({ states, jobs }: ChoiceProblem): readonly string[] {
  const y = new Map(states.map((state, i) => [state.id, `y${i}`]));
  const x = new Map(jobs.map((job, i) => [job.id, `x${i}`]));
  const needs = (a: string | undefined, b: string | undefined): string => `${a} - ${b} <= 0`;
  const rows = states.flatMap((s) => s.parents.map((p) => needs(y.get(s.id), y.get(p))));
  const groups = new Map<string, string[]>();
  const sets = new Map<string, string>();
  for (const job of jobs) {
    const name = x.get(job.id) ?? "";
    rows.push(...job.access.map((s) => needs(name, y.get(s))), ...(job.needs ?? []).map((j) => needs(name, x.get(j))));
    if (job.mandatory === true) rows.push(`${name} = 1`);
    if (job.oneOf !== undefined) groups.set(job.oneOf, [...(groups.get(job.oneOf) ?? []), name]);
    if (job.together === undefined) continue;
    const first = sets.get(job.together);
    if (first === undefined) sets.set(job.together, name);
    else rows.push(`${name} - ${first} = 0`);
  }
  return [...rows, ...[...groups.values()].map((names) => `${names.join(" + ")} <= 1`)];
}

const costs = ({ states, jobs }: ChoiceProblem): Sum => [
  ...states.map((state, i) => [state.cost, `y${i}`] as const),
  ...jobs.map((job, i) => [job.cost, `x${i}`] as const),
];
const values = ({ jobs }: ChoiceProblem): Sum => jobs.map((job, i) => [job.value, `x${i}`] as const);

function programme(asked: ChoiceProblem, aim: string, rows: readonly string[]): string {
  const names = costs(asked).map(([, name]) => name);
  const all = [...rules(asked), ...rows].map((row, i) => ` r${i}: ${row}`);
  return `${aim}\nSubject To\n${all.join("\n")}\nBinary\n ${names.join("\n ")}\nEnd\n`;
}

/** Most worth within `budget`. */
export const mostWorthText = (asked: ChoiceProblem, budget: number): string =>
  programme(asked, `Maximize\n obj: ${sumText(values(asked))}`, [`${sumText(costs(asked))} <= ${budget}`]);

/** Least cost for a worth of at least `worth`. */
export const leastCostText = (asked: ChoiceProblem, worth: number): string =>
  programme(asked, `Minimize\n obj: ${sumText(costs(asked))}`, [`${sumText(values(asked))} >= ${worth}`]);
