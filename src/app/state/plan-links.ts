/** The ways from the work list to the pages of its plan, with how each stands in a few words. Pure. */
import type { WorkInput, WorkPlan } from "../../core/plan/index.js";
import type { PlanState } from "../../core/record/index.js";
import type { Audience } from "../../core/terms/index.js";
import { dayWords } from "../texts/days.js";
import { t } from "../texts/plan-work.js";
import { looseCount } from "./loose-count.js";
import { type Currency, moneyText, roundMoneyText } from "./money-words.js";
import { agreedWord } from "./owners-word.js";
import { to } from "./routes.js";

interface Planned {
  readonly param: string;
  readonly who: Audience;
  readonly said: PlanState;
  readonly input: WorkInput;
  readonly plan: WorkPlan | undefined;
  readonly currency: Currency | undefined;
}

export interface PlanLink {
  readonly id: string;
  readonly title: string;
  readonly second?: string;
  readonly href: string;
}

/** A buyer orders no parts and takes no car in. */
export function planLinks({ param, who, said, input, plan, currency }: Planned): readonly PlanLink[] {
  const page = (id: string, title: string, second?: string): PlanLink => ({
    id,
    title,
    href: to("plan", { visit: param, page: id }),
    ...(second === undefined ? {} : { second }),
  });
  const gross = plan?.estimate?.gross;
  const finish = plan?.schedule?.finish;
  const parts = input.jobs.filter(({ isDone }) => !isDone).flatMap((job) => job.parts.filter(({ inHand }) => !inHand));
  const loose = looseCount(said);
  const open = input.jobs.filter(({ id, isDone }) => !isDone && !agreedWord(said, id)).length;
  return [
    page(
      "budget",
      t("plan.to.budget"),
      input.budget === undefined || !currency ? t("plan.to.budget.none") : moneyText(input.budget, currency),
    ),
    page(
      "estimate",
      t("plan.to.estimate"),
      gross && currency
        ? `${roundMoneyText(gross.low, currency)} – ${roundMoneyText(gross.high, currency)}`
        : t("plan.to.estimate.none"),
    ),
    page(
      "dates",
      t("plan.to.dates"),
      finish && (plan?.schedule?.leftOut.length ?? 0) > 0
        ? t("plan.to.dates.partly", { n: plan?.schedule?.leftOut.length ?? 0 })
        : finish
          ? t("plan.to.dates.ready", { date: dayWords(finish.date) })
          : input.calendar
            ? undefined
            : t("plan.to.dates.none"),
    ),
    ...(who === "buyer"
      ? []
      : [
          page("decisions", t("plan.to.decisions"), open > 0 ? t("plan.to.decisions.n", { n: open }) : undefined),
          page("parts", t("plan.to.parts"), t("plan.to.parts.n", { n: parts.length })),
          page("scope", t("plan.to.scope")),
          page("intake", t("plan.to.intake")),
          page("left-loose", t("plan.to.left-loose"), loose > 0 ? String(loose) : undefined),
          page("note", t("plan.to.note")),
          page("release", t("plan.to.release"), said.release.length > 0 ? t("plan.to.release.done") : undefined),
        ]),
  ];
}
