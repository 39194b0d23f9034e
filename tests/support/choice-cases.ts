/** Choices drawn by seed: trees and graphs of access, plain, tiered and hard values, sets, needs, either-or groups. */
import { type ChoiceJob, type ChoiceProblem, tieredValues } from "../../src/core/plan/index.js";
import { chance } from "./chance.js";

export interface CaseKind {
  readonly jobs: number;
  readonly states: number;
  /** States and jobs need several at once; else at most one. */
  readonly isGraph: boolean;
  /** 1–20, by tiers of rank, or as large as the cost: the hard kind. */
  readonly values: "plain" | "tiered" | "hard";
  /** With jobs that need jobs, either-or groups and sets done together. */
  readonly hasTies: boolean;
  readonly hasMandatory: boolean;
}

/** Every mixture of what the generator can draw. */
export const KINDS = [false, true].flatMap((isGraph) =>
  (["plain", "tiered", "hard"] as const).flatMap((values) =>
    [false, true].map((hasTies) => ({ isGraph, values, hasTies, hasMandatory: false })),
  ),
);

/** One choice of a kind. Budgets are 15–70 % of all work; some leave the mandatory jobs unpaid. */
export function choiceCase(kind: CaseKind, seed: number): ChoiceProblem {
  const { whole } = chance(seed);
  const upTo = (n: number): number => whole(0, n);
  const states = Array.from({ length: kind.states }, (_, i) => {
    const count = i === 0 ? 0 : kind.isGraph ? upTo(3) : upTo(4) > 0 ? 1 : 0;
    return {
      id: `s${i}`,
      cost: 500 * (1 + upTo(120)),
      parents: [...new Set(Array.from({ length: count }, () => `s${upTo(i)}`))],
    };
  });
  const plain = Array.from({ length: kind.jobs }, (_, i): ChoiceJob => {
    const count = kind.isGraph ? upTo(3) : upTo(8) > 0 ? 1 : 0;
    const cost = 1000 + upTo(90_000);
    const access = [...new Set(Array.from({ length: count }, () => `s${upTo(kind.states)}`))];
    const value = kind.values === "hard" ? Math.max(1, Math.round(cost / 1000) + upTo(7) - 3) : 1 + upTo(20);
    return { id: `j${i}`, cost, value, access, mandatory: kind.hasMandatory && upTo(10) === 0 };
  });
  const ties = kind.hasTies ? plain.map((job, i) => tied(job, i, kind.jobs, upTo)) : plain;
  const tiers = tieredValues(
    ties.map(({ id }) => ({ id, rank: 6 + upTo(15), after: upTo(3) > 0 ? "gone" : "watched" })),
  );
  const jobs = kind.values === "tiered" ? ties.map((job) => ({ ...job, value: tiers.get(job.id) ?? 0 })) : ties;
  const all = [...states, ...jobs].reduce((sum, { cost }) => sum + cost, 0);
  return { budget: Math.floor((all * whole(15, 71)) / 100), states, jobs };
}

/** Groups, sets and needs that can't contradict: each takes jobs of its own part of the list. */
function tied(job: ChoiceJob, i: number, all: number, upTo: (n: number) => number): ChoiceJob {
  const part = i / all;
  if (part < 0.3) return { ...job, oneOf: `way ${Math.floor(i / 2)}`, mandatory: false };
  if (part < 0.5) return { ...job, together: `set ${Math.floor(i / 2)}` };
  // A must needs jobs outside the groups: two of them never meet in one.
  const from = job.mandatory === true ? Math.floor(0.3 * all) : 0;
  const among = job.mandatory === true ? Math.max(1, Math.floor(0.2 * all)) : i;
  return i % 2 === 0 ? { ...job, needs: [`j${from + upTo(among)}`] } : job;
}
