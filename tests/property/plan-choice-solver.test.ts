// Three hundred choices answered by the HiGHS solver too: equal in worth, and of equal worth in least cost.
import loadHighs from "highs";
import { expect, test } from "vitest";
import { type ChoiceProblem, choose, nextStep } from "../../src/core/plan/index.js";
import { type CaseKind, choiceCase, KINDS } from "../support/choice-cases.js";
import { leastCostText, mostWorthText, PROVEN } from "../support/choice-highs.js";

const highs = await loadHighs();
/** The best figure an outside solver finds; nothing when no plan is possible. */
function solved(text: string): number | undefined {
  const got = highs.solve(text, PROVEN);
  if (got.Status === "Infeasible") return undefined;
  expect(got.Status).toBe("Optimal");
  return Math.round(got.ObjectiveValue);
}

/** Small ones mostly: what goes wrong shows there as well, and the solver takes its time with large ones. */
const SIZES = [
  { jobs: 10, states: 5, count: 22 },
  { jobs: 30, states: 12, count: 3 },
  { jobs: 60, states: 25, count: 1 },
];
const told = ({ isGraph, values, hasTies }: Omit<CaseKind, "jobs" | "states">): string =>
  `${isGraph ? "graph" : "tree"}, ${values}${hasTies ? ", groups, sets and needs" : ""}`;

function drawnCases(kind: Omit<CaseKind, "jobs" | "states">): readonly ChoiceProblem[] {
  return SIZES.flatMap(({ jobs, states, count }) =>
    Array.from({ length: count }, (_, i) =>
      choiceCase({ ...kind, jobs, states, hasMandatory: i % 2 === 0 }, 1000 * jobs + i),
    ),
  );
}

test.each(KINDS.map((kind) => [told(kind), kind] as const))("[PC4] [PC5] [PC8] as the solver: %s", (_, kind) => {
  for (const [i, asked] of drawnCases(kind).entries()) {
    const got = choose(asked);
    if (!got.ok) throw new Error(JSON.stringify(got.problems));
    const { value, cost, bound, proven, overBy = 0 } = got.value;
    expect([proven, bound]).toEqual([true, value]);
    expect(value).toBe(solved(mostWorthText(asked, asked.budget + overBy)));
    // The two follow-up questions cost the solver as much again: every fourth case.
    if (i % 4 !== 0) continue;
    expect(cost).toBe(solved(leastCostText(asked, value)));
    const step = nextStep(asked, got.value);
    expect(step.ok && step.value.plan?.cost).toBe(solved(leastCostText(asked, value + 1)));
  }
});
