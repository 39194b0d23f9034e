/** One job in its plan: its time and whose word that is, what it adds, whether it is done, how far it is. Pure. */
import {
  isMandatory,
  type JobStands,
  progressOf,
  type Three,
  type WorkInput,
  type WorkPlan,
} from "../../core/plan/index.js";
import type { PlanState } from "../../core/record/index.js";
import { offListName } from "../../core/terms/index.js";
import { dayWords } from "../texts/days.js";
import { t } from "../texts/plan-parts.js";
import { last } from "./plan-input.js";
import { idParts, minutesText, spanText } from "./plan-words.js";

interface Planned {
  readonly input: WorkInput;
  readonly said: PlanState;
  readonly plan: WorkPlan | undefined;
}

export const WANTED = ["plan", "in", "out"] as const;
export type WantedWord = (typeof WANTED)[number];

export interface JobPlanView {
  readonly minutes: Three | undefined;
  readonly time: string;
  readonly basis?: string;
  readonly isByHand: boolean;
  readonly adds?: string;
  /** Nobody is asked whether what can't wait is done. */
  readonly isMust: boolean;
  readonly wanted: WantedWord;
  readonly isIn?: string;
  readonly stands: JobStands | undefined;
  readonly standsSays: string;
}

/** Undefined for a job that is not in the plan. */
export function jobPlanView({ input, said, plan }: Planned, id: string): JobPlanView | undefined {
  const job = input.jobs.find((one) => one.id === id);
  if (!job) return undefined;
  const isByHand = last(said.minutes.get(id))?.minutes !== undefined;
  // A job of a finding off the list has its hours from whoever found it.
  const isOwn = offListName(idParts(id).what) !== undefined;
  const inPlan = plan?.jobs.find((one) => one.id === id);
  const progress = progressOf(said, input.today);
  const stands = progress.ok ? progress.value.jobs.find((one) => `${one.job}@${one.place}` === id) : undefined;
  return {
    minutes: job.minutes,
    time: job.minutes ? spanText(job.minutes) : t("job-plan.time.none"),
    ...(job.minutes ? { basis: t(isByHand || isOwn ? "job-plan.time.own" : "job-plan.time.sheet") } : {}),
    isByHand,
    ...(inPlan
      ? {
          adds: t("job-plan.adds", {
            added: minutesText(inPlan.added[1]),
            alone: minutesText(inPlan.standAlone[1]),
          }),
          isIn: t(inPlan.isChosen ? "job-plan.chosen" : "job-plan.left"),
        }
      : {}),
    isMust: isMandatory({ ...job, wanted: undefined }),
    wanted: last(said.wanted.get(id))?.wanted ?? "plan",
    stands,
    standsSays: jobStandsWords(stands, lastWords(said, id)),
  };
}

const lastWords = (said: PlanState, id: string): string | undefined => said.jobSteps.get(id)?.at(-1)?.value.words;

/** How far a job is in one line. */
export function jobStandsWords(stands: JobStands | undefined, words?: string): string {
  if (!stands) return t("job-plan.not-begun");
  const date = dayWords(stands.since);
  const took = stands.minutes === undefined ? [] : [t("job-plan.done.after", { minutes: minutesText(stands.minutes) })];
  switch (stands.stands) {
    case "begun":
      return t("job-plan.begun", { date });
    case "waiting":
      return [
        t("job-plan.waiting", { next: stands.next === undefined ? "?" : dayWords(stands.next) }),
        ...(words === undefined ? [] : [t("job-plan.waiting.why", { why: words })]),
        ...(stands.overdueDays === undefined ? [] : [t("job-plan.over", { n: stands.overdueDays })]),
      ].join(", ");
    case "done":
      return [t("job-plan.done", { date }), ...took, t("job-plan.unmeasured")].join(", ");
    case "measured-again":
      return [t("job-plan.measured", { date }), ...took].join(", ");
  }
}
