/** Waits until the plan of a visit is laid out, then draws what is inside with the newest plan there is. */
import type { ComponentChildren } from "preact";
import type { JobDue } from "../../core/assess/contract.js";
import type { WorkInput, WorkPlan } from "../../core/plan/index.js";
import type { HouseState, PlanState } from "../../core/record/index.js";
import { useApp } from "../state/app.js";
import type { Currency } from "../state/money-words.js";
import { planDeskOf } from "../state/plan-desk.js";
import { termsOf } from "../state/plan-input.js";
import { currencyOf } from "../state/plan-money.js";
import { t } from "../texts/index.js";
import { Covered } from "./covered.js";
import { lazy, OpeningScreen } from "./lazy.js";
import { type OnDesk, OnVisit } from "./on-visit.js";

const NotOpened = lazy(() => import("./not-opened.js").then((file) => file.NotOpened));

/** A visit with its plan, ready to be drawn. */
export interface OnPlan extends OnDesk {
  /** What was said of the plan; what is not kept yet is in it. */
  readonly said: PlanState;
  readonly house: HouseState | undefined;
  readonly input: WorkInput;
  /** The work list with what its jobs bring along, in urgency order. */
  readonly due: readonly JobDue[];
  /** The newest plan there is; one is there a moment after the screen. */
  readonly plan: WorkPlan | undefined;
  /** A newer one is being worked out. */
  readonly isPlanning: boolean;
  /** Absent until the house has said its rates. */
  readonly currency: Currency | undefined;
}

/** The plan inside a visit that is laid out already. */
export function WithPlan({
  on,
  children,
}: {
  readonly on: OnDesk;
  readonly children: (on: OnPlan) => ComponentChildren;
}) {
  const desk = planDeskOf(useApp(), on.stream);
  const [said, input, house] = [desk.said.value, desk.input.value, desk.house.value];
  if (desk.trouble.value) return <NotOpened problem={desk.trouble.value} />;
  if (said.is !== "open" || !input) return <OpeningScreen />;
  const currency = currencyOf(termsOf(house));
  const [plan, isPlanning] = [desk.plan.value, desk.isPlanning.value];
  return <>{children({ ...on, said: said.state, house, input, due: desk.due.value, plan, isPlanning, currency })}</>;
}

/** A plan is made of findings: it is covered where they are. */
export const OnPlan = ({
  param,
  children,
}: {
  readonly param: string;
  readonly children: (on: OnPlan) => ComponentChildren;
}) => (
  <OnVisit param={param}>
    {(on) => (
      <Covered on={on} title={t("work.title")} section="work">
        <WithPlan on={on}>{children}</WithPlan>
      </Covered>
    )}
  </OnVisit>
);
