/** Planning a work list of sixty jobs and more: all of it, without dates, and without a choice. Judges nothing. */
import { planWork, type WorkInput } from "../../src/core/plan/index.js";
import { sixtyJobs } from "../support/sixty-jobs.js";
import { type Bench, percentile } from "./row.js";

const TIMES = 5;

const median = (input: WorkInput): number => {
  const taken = Array.from({ length: TIMES }, () => {
    const began = performance.now();
    planWork(input);
    return performance.now() - began;
  });
  return percentile(taken, 0.5);
};

export const bench: Bench = async () => {
  const { input } = await sixtyJobs();
  const { budget: _budget, ...undecided } = input;
  const { calendar: _calendar, ...undated } = input;
  const { calendar: _neither, ...plain } = undecided;
  // Once untimed, so that nothing is measured while it is being compiled.
  const { chosen, choice, schedule } = planWork(input);
  const bare = median(plain);
  return [
    {
      what: `A work list of ${input.jobs.length} jobs and ${input.openings.length} openings planned, median of ${TIMES}`,
      unit: "ms",
      figures: {
        "all of it": median(input),
        "what choosing adds": Math.max(0, median(undated) - bare),
        "what dates add": Math.max(0, median(undecided) - bare),
      },
      goal: "beside the screen, in a worker; no figure is promised",
      note: `chosen: ${chosen.length}; steps of the search: ${choice?.nodes ?? 0}; proven: ${choice?.proven ?? false}; ready: ${schedule?.finish?.date ?? "no date"}`,
    },
  ];
};
