/** Choice within a budget: the set worth most, what it opens and costs, and whether nothing is better for certain. */
import { type ChoiceProblem, choose } from "../../core/plan/index.js";
import { caseOf, eachOf, firstOf, has, remarks, type Section, tellAll } from "./section.js";
import { asFields, fields, inside, list, name, optional, whole, yesNo } from "./shape.js";

const asked = fields({
  budget: whole,
  states: list(fields({ id: name, cost: whole, parents: optional(list(name), []) })),
  jobs: list(
    fields({
      id: name,
      value: whole,
      cost: whole,
      access: optional(list(name), []),
      mandatory: optional(yesNo, false),
      needs: optional(list(name), []),
    }),
  ),
});

/** What the jobs that must be done cost with all they need: nothing else is paid by a budget of nought. */
function mandatoryCost(problem: ChoiceProblem): number {
  const musts = problem.jobs.filter(({ mandatory }) => mandatory === true);
  const alone = musts.length === 0 ? undefined : choose({ ...problem, budget: 0 });
  return alone?.ok === true ? alone.value.cost : 0;
}

const choice = caseOf(asked, (problem, at, raw) => {
  const got = choose(problem);
  if (!got.ok) {
    tellAll(got.problems, at);
    return undefined;
  }
  const { value, cost, chosen, open, proven, bound, overBy } = got.value;
  const must = problem.jobs.reduce((sum, job) => sum + (job.mandatory ? job.value : 0), 0);
  const isHand = has(raw["expected"], "set");
  return {
    budget: problem.budget,
    states: raw["states"],
    jobs: raw["jobs"],
    expected: {
      ...remarks(asFields(raw["expected"]) ?? {}),
      // what must be done is no choice: its worth is not counted
      value: value - must,
      ...(isHand
        ? { set: chosen, cost }
        : { minCost: cost, oneBestSet: chosen, mandatoryCost: mandatoryCost(problem) }),
      open,
      proven,
      ...(proven ? {} : { atMost: bound - must }),
      ...(overBy === undefined ? {} : { overBy }),
    },
  };
});

const isChoice = (value: unknown): boolean => has(value, "budget", "states", "jobs") && !has(value, "faults");

export const choiceSection: Section = {
  name: "choice",
  isSection: (value) => isChoice(asFields(value)?.["hand"]) || isChoice(firstOf(value, "cases")),
  answer: (value, at) => {
    const given = asFields(value) ?? {};
    return {
      ...remarks(given),
      ...(given["cases"] === undefined ? {} : { cases: eachOf(given["cases"], inside(at, "cases"), choice) }),
      ...(given["hand"] === undefined ? {} : { hand: choice(given["hand"], inside(at, "hand")) }),
    };
  },
  isCase: isChoice,
  answerCase: choice,
};
