/** Choosing a budget: steps that fit the sum, what is done with it, and the next better plan. Pure. */
import type { WorkPlan } from "../../core/plan/index.js";
import { t } from "../texts/plan-work.js";
import type { Telling } from "./because.js";
import { type Currency, moneyText } from "./money-words.js";
import { jobTitle } from "./plan-words.js";
import { overBudget } from "./plan-work-view.js";

/** The small step is about a twentieth of the whole, the large one five of them: 100 and 500 at 2000. */
const STEPS_IN_ALL = 20;
const LARGE = 5;

/** Two steps in minor units, each a 1, 2 or 5 with noughts. */
export function budgetSteps(likely: number, { minorDigits }: Currency): readonly [small: number, large: number] {
  const unit = 10 ** minorDigits;
  const wanted = Math.max(1, likely / unit / STEPS_IN_ALL);
  const power = 10 ** Math.floor(Math.log10(wanted));
  const round = [1, 2, 5, 10].find((digit) => digit * power >= wanted) ?? 10;
  return [round * power * unit, LARGE * round * power * unit];
}

/** The budget after a step; never below nothing. */
export const stepped = (budget: number, by: number): number => Math.max(0, budget + by);

export interface ChoiceTold {
  readonly proven: string;
  readonly next: { readonly title: string; readonly lines: readonly string[]; readonly budget?: number };
}

/** What the choice rests on and the cheapest step to a better one, in words. */
export function choiceTold(
  telling: Telling,
  plan: WorkPlan | undefined,
  budget: number | undefined,
  currency: Currency,
): ChoiceTold | undefined {
  const choice = plan?.choice;
  if (!choice || budget === undefined) return undefined;
  const over = overBudget(plan, budget);
  // What is spent beyond the budget is wanted before anything better is.
  const beyond = Math.max(0, plan.spent - budget);
  const names = (ids: readonly string[]): string => ids.map((id) => jobTitle(telling, id)).join("; ");
  const step = plan?.nextStep;
  const lines =
    step?.more === undefined
      ? [step?.proven === false ? t("budget.next.not-proven") : t("budget.next.none")]
      : [
          t("budget.next.costs", { more: moneyText(step.more + beyond, currency) }),
          ...(over > 0 ? [t("budget.next.over", { over: moneyText(over, currency) })] : []),
          ...(step.added.length > 0 ? [t("budget.next.adds", { jobs: names(step.added) })] : []),
          ...(step.leftOut.length > 0 ? [t("budget.next.gives-way", { jobs: names(step.leftOut) })] : []),
          ...(step.proven ? [] : [t("budget.next.not-proven")]),
        ];
  return {
    proven: choice.proven ? t("budget.proven") : t("budget.not-proven"),
    next: {
      title: t("budget.next"),
      lines,
      ...(step?.more === undefined ? {} : { budget: budget + step.more + beyond }),
    },
  };
}
