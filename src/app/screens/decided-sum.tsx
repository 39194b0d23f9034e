/** What was said yes to and what it comes to today, beside the first estimate and the figures of the day it was decided. */
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { pricesOf } from "../state/decision-prices.js";
import type { DecisionFacts } from "../state/decisions-view.js";
import { readFirst } from "../state/first-estimate.js";
import { moneyText, roundMoneyText } from "../state/money-words.js";
import { plainDay } from "../texts/days.js";
import { t } from "../texts/decisions.js";
import type { OnPlan } from "./on-plan.js";

interface SumProps {
  readonly on: OnPlan;
  readonly facts: readonly DecisionFacts[];
}

const isYes = ({ word, differ }: DecisionFacts): boolean => !differ && (word === "yes-now" || word === "yes-by");

export function DecidedSum({ on, facts }: SumProps) {
  const { currency, said, plan } = on;
  const yes = facts.filter(isYes);
  const sum = pricesOf(
    on,
    yes.map(({ id }) => id),
  );
  const given = said.estimates[0];
  const first = readFirst(given?.value.estimate);
  const write = (minor: number): string => (currency ? roundMoneyText(minor, currency) : "");
  const then = yes.reduce((total, { price }) => total + (price?.likely ?? 0), 0);
  const allPriced =
    yes.length > 0 && yes.every(({ price }) => price !== undefined && price.currency === currency?.currency);
  return (
    <Band heading={t("decisions.sum")} aside={t("decisions.sum.n", { n: yes.length, of: facts.length })}>
      {yes.length === 0 && <p class="remark small">{t("decisions.sum.none")}</p>}
      {yes.length > 0 && sum && currency && (
        <p class="remark n">
          {t("decisions.sum.range", { likely: write(sum.likely), low: write(sum.low), high: write(sum.high) })}.{" "}
          {sum.isTooLow ? t("decisions.sum.too-low") : `${t("decisions.sum.p80", { p80: write(sum.p80) })}.`}
        </p>
      )}
      {allPriced && <ListRow title={t("decisions.sum.decided")} aside={write(then)} />}
      {given && first && currency && (
        <ListRow
          title={t("decisions.sum.first", { day: plainDay(given.value.on) })}
          aside={moneyText(first.gross[first.told], { ...currency, currency: first.currency })}
        />
      )}
      {first && plan?.estimate && currency && (
        <ListRow title={t("decisions.sum.today")} aside={moneyText(plan.estimate.gross[first.told], currency)} />
      )}
    </Band>
  );
}
