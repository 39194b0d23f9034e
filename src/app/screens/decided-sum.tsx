/** What was said yes to and what it comes to today, beside the first estimate and the figures of the day it was decided. */
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { openingOf, sumOf } from "../state/decision-prices.js";
import type { DecisionFacts } from "../state/decisions-view.js";
import { readFirst } from "../state/first-estimate.js";
import { moneyText, roundMoneyText } from "../state/money-words.js";
import { plainDay } from "../texts/days.js";
import { t } from "../texts/decisions.js";
import { openingText, rangeText } from "./decide-price.js";
import type { OnPlan } from "./on-plan.js";

interface SumProps {
  readonly on: OnPlan;
  readonly facts: readonly DecisionFacts[];
}

const isYes = ({ word, differ }: DecisionFacts): boolean => !differ && (word === "yes-now" || word === "yes-by");

export function DecidedSum({ on, facts }: SumProps) {
  const { currency, said, plan } = on;
  const yes = facts.filter(isYes);
  const ids = yes.map(({ id }) => id);
  const sum = sumOf(on, ids);
  const opening = openingText(openingOf(on, ids), currency, "decisions.price.opening.all");
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
          {sum.isTooLow
            ? `${rangeText(sum, currency)}. ${t("decisions.sum.too-low")}`
            : t("decisions.sum.range", { price: rangeText(sum, currency) })}
        </p>
      )}
      {opening !== undefined && <p class="remark small n">{opening}</p>}
      <p class="remark small">{t("decisions.price.says")}</p>
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
