/** What a plan's steps say of time: jobs that were begun, with the minutes told of each. Pure. */
import type { MinutesTold } from "../../core/plan/index.js";
import type { PlanState } from "../../core/record/index.js";

/** Measuring again takes no time of the job's own. */
const AT_WORK: ReadonlySet<string> = new Set(["begun", "waiting", "done"]);

/** Minutes of all steps of a job together; undefined where it was begun and nobody told any. */
export function minutesTold({ jobSteps }: PlanState): MinutesTold {
  return new Map(
    [...jobSteps].flatMap(([id, steps]): readonly (readonly [string, number | undefined])[] => {
      const told = steps.flatMap(({ value }) => value.minutes ?? []);
      if (told.length > 0) return [[id, told.reduce((sum, minutes) => sum + minutes, 0)]];
      return steps.some(({ value }) => AT_WORK.has(value.step)) ? [[id, undefined]] : [];
    }),
  );
}
