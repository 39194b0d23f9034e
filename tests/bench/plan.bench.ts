/** Planning a work list of sixty jobs and more: all of it, and with its two searches apart. Judges nothing. */
import { planWork } from "../../src/core/plan/index.js";
import { sixtyJobs } from "../support/sixty-jobs.js";
import { type Bench, interleaved } from "./row.js";

const ROUNDS = 5;

export const bench: Bench = async () => {
  const { input } = await sixtyJobs();
  const { budget: _budget, ...undecided } = input;
  const { calendar: _calendar, ...undated } = input;
  const { calendar: _neither, ...plain } = undecided;
  // Also the untimed first run: nothing is measured while it is being compiled.
  const { chosen, choice, schedule } = planWork(input);
  const figures = interleaved(
    {
      "all of it": () => planWork(input),
      "with a choice, without dates": () => planWork(undated),
      "with dates, without a choice": () => planWork(undecided),
      "with neither": () => planWork(plain),
    },
    ROUNDS,
  );
  return [
    {
      what: `A work list of ${input.jobs.length} jobs and ${input.openings.length} openings planned, median of ${ROUNDS}`,
      unit: "ms",
      figures,
      note: `chosen: ${chosen.length}; steps of the search: ${choice?.nodes ?? 0}; proven: ${choice?.proven ?? false}; ready: ${schedule?.finish?.date ?? "no date"}`,
    },
  ];
};
