// Choice within a budget against worked figures: eight computed cases (two independent means agree), one worked by hand.
import { expect, test } from "vitest";
import { type ChoiceProblem, type ChoiceResult, choose, nextStep } from "../../src/core/plan/index.js";
import { CHOICES, HAND, problemOf } from "./plan-choice-facts.js";

function chosen(asked: ChoiceProblem): ChoiceResult {
  const got = choose(asked);
  if (!got.ok) throw new Error(JSON.stringify(got.problems));
  return got.value;
}

test.each(CHOICES.map((facts) => [`${facts.jobs.length} jobs, ${facts.states.length} states`, facts] as const))(
  "[PC4] [PC5] most worth within the budget, and the least cost among equals: %s",
  (_, facts) => {
    const asked = problemOf(facts);
    const got = chosen(asked);
    const must = asked.jobs.reduce((sum, job) => sum + (job.mandatory === true ? job.value : 0), 0);
    const value = must + facts.worthBeyond;
    expect(got).toMatchObject({ value, cost: facts.leastCost, bound: value, proven: true });
    expect(got.chosen.join(" ")).toBe(facts.best);
    expect(got.open.join(" ")).toBe(facts.open);
    expect(got.overBy).toBeUndefined();
  },
);

test.each(CHOICES.filter((facts) => facts.mandatory > 0).map((facts) => [facts.jobs.length, facts] as const))(
  "[PC2] mandatory work alone costs what was worked out, and by that much a budget of nought is exceeded: %i jobs",
  (_, facts) => {
    const got = chosen({ ...problemOf(facts), budget: 0 });
    expect([got.cost, got.overBy, got.proven]).toEqual([facts.mandatory, facts.mandatory, true]);
  },
);

test("[PC4] opening one state for two jobs beats the job that is best for its money", () => {
  expect(chosen(HAND)).toMatchObject({ value: 18, cost: 100, chosen: ["a", "b"], open: ["g"], proven: true });
});

test("[PC8] the next better list by hand: for 30 more the dearer job stands beside one of the two", () => {
  const step = nextStep(HAND, chosen(HAND));
  expect(step).toMatchObject({
    ok: true,
    value: { more: 30, added: ["c"], leftOut: ["b"], atLeast: 130, proven: true, plan: { value: 19, cost: 130 } },
  });
});
