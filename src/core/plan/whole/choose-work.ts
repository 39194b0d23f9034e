/** Which jobs the budget reaches, and the cheapest step to a better plan. Asks for a budget and the house's terms. */
import type { Problem } from "../../terms/index.js";
import { opened, type ReachedJob } from "../access/index.js";
import {
  type ChoiceProblem,
  type ChoiceResult,
  choose,
  type NextStep,
  nextStep,
  tieredValues,
} from "../choice/door.js";
import type { WorkInput, WorkJob } from "./contract.js";
import { costsBy } from "./costs.js";
import { isMandatory } from "./mandatory.js";

export interface Chosen {
  readonly result?: ChoiceResult;
  readonly next?: NextStep;
  /** What the jobs that are done took of the budget. */
  readonly spent: number;
  readonly problems: readonly Problem[];
}

/** The best choice within the budget; nothing is chosen from where there is no budget, or no rate to weigh hours by. */
export function chosenWithin(
  input: WorkInput,
  jobs: readonly ReachedJob[],
  given: ReadonlyMap<string, WorkJob>,
  goOn?: () => boolean,
): Chosen {
  const { budget, terms } = input;
  if (budget === undefined || terms === undefined) return { spent: 0, problems: [] };
  const costs = costsBy(terms);
  const values = tieredValues(
    jobs.map(({ id }) => ({ id, rank: given.get(id)?.key.rank ?? LEAST_RANK, after: "gone" })),
  );
  const spent = input.jobs.filter(({ isDone }) => isDone).reduce((sum, job) => sum + costs.done(job), 0);
  const asked: ChoiceProblem = {
    budget: Math.max(0, budget - spent),
    states: opened(jobs).map((state) => ({
      id: state.id,
      cost: costs.opening(state),
      parents: state.parents.map(({ id }) => id),
    })),
    jobs: jobs.map((reached) => {
      const job = given.get(reached.id);
      return {
        id: reached.id,
        value: values.get(reached.id) ?? 0,
        cost: costs.job(reached, job),
        access: reached.needs.map(({ id }) => id),
        ...(job !== undefined && isMandatory(job) ? { mandatory: true } : {}),
      };
    }),
  };
  const result = choose(asked, goOn);
  if (!result.ok) return { spent, problems: result.problems };
  const next = nextStep(asked, result.value, goOn);
  return { result: result.value, spent, ...(next.ok ? { next: next.value } : {}), problems: [] };
}

/** The mildest cell of the matrix. */
const LEAST_RANK = 20;
