/** Giving the estimate, what was given, and where the work stands against the first one. */
import { freezeEstimate } from "../../core/plan/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { type Currency, moneyText } from "../state/money-words.js";
import { giveEstimate } from "../state/plan-acts.js";
import type { Estimating } from "../state/plan-estimate-view.js";
import { forecastTold, givenLines } from "../state/plan-forecast-view.js";
import { dayOf } from "../state/today.js";
import { t } from "../texts/plan-estimate.js";
import type { OnPlan } from "./on-plan.js";
import { MoneyRow } from "./plan-rows.js";

interface PlanGivenProps {
  readonly on: OnPlan;
  readonly of: Estimating;
  readonly currency: Currency;
}

function Give({ on, currency, again }: Omit<PlanGivenProps, "of"> & { readonly again: boolean }) {
  const { journal, phone } = useApp();
  const estimate = on.plan?.estimate;
  if (!estimate) return null;
  const give = (): void => {
    const today = dayOf(phone.now());
    const frozen = freezeEstimate(estimate, today);
    if (frozen.ok) void giveEstimate(journal, on.stream, { estimate: frozen.value, on: today });
  };
  const says = t("estimate.give.says", { p80: moneyText(estimate.gross.p80, currency) });
  return again ? (
    <div class="acts">
      <Tool words={t("estimate.give.again")} says={says} disabled={on.isPlanning} onPress={give} />
    </div>
  ) : (
    <NextAction words={t("estimate.give")} says={says} disabled={on.isPlanning} onPress={give} />
  );
}

function Against({ of, currency }: Omit<PlanGivenProps, "on">) {
  const told = forecastTold(of, currency);
  if (!told) return null;
  if ("trouble" in told)
    return (
      <Band heading={t("forecast.title")}>
        <p class="remark">{told.trouble}</p>
      </Band>
    );
  return (
    <Band heading={t("forecast.title")}>
      {told.mark === "within" ? (
        <p class="remark">
          {told.verdict} {told.says}
        </p>
      ) : (
        <Notice kind="plain" title={told.verdict} says={told.says} />
      )}
      {told.rows.map((row) => (
        <MoneyRow key={row.id} row={row} />
      ))}
      {told.remarks.map((line) => (
        <p key={line} class="remark small">
          {line}
        </p>
      ))}
    </Band>
  );
}

export function PlanGiven({ on, of, currency }: PlanGivenProps) {
  const given = givenLines(on.said, currency);
  if (given.length === 0) return <Give on={on} currency={currency} again={false} />;
  return (
    <>
      <Against of={of} currency={currency} />
      <Band heading={t("estimate.given")}>
        {given.map(({ id, title, figure }) => (
          <ListRow key={id} title={title} aside={figure} />
        ))}
        <p class="remark small">{t("estimate.given.says")}</p>
        <Give on={on} currency={currency} again />
      </Band>
    </>
  );
}
