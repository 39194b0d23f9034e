/** What was decided on one job, told in full: every word that stands, its price, what was shown, who signed, what was said before. */
import { Fold } from "../parts/fold.js";
import { Notice } from "../parts/notice.js";
import { pricesOf } from "../state/decision-prices.js";
import { decisionText, priceText, signedText, toldText } from "../state/decision-words.js";
import type { DecisionFacts } from "../state/decisions-view.js";
import { roundMoneyText } from "../state/money-words.js";
import { plainDay } from "../texts/days.js";
import { t } from "../texts/decisions.js";
import { clock, day } from "../texts/index.js";
import type { OnPlan } from "./on-plan.js";

interface FactsProps {
  readonly on: OnPlan;
  readonly facts: DecisionFacts;
}

/** The figure of then against today's. */
function Price({ on, facts }: FactsProps) {
  const { currency } = on;
  const then = facts.said && priceText(facts.said, currency);
  const now = then === undefined || !currency ? undefined : pricesOf(on, [facts.id]);
  if (then === undefined) return null;
  const write = (minor: number): string => (currency ? roundMoneyText(minor, currency) : "");
  return (
    <p class="small n">
      {then}
      {now &&
        `; ${
          now.isTooLow
            ? t("owner.price-now.too-low", { likely: write(now.likely) })
            : t("owner.price-now", { likely: write(now.likely), p80: write(now.p80) })
        }`}
    </p>
  );
}

function Warned({ facts }: Pick<FactsProps, "facts">) {
  const { warning } = facts;
  if (!warning) return null;
  const at = Date.parse(warning.acknowledged);
  return (
    <>
      <p class="small n">{t("owner.warned", { when: `${day(at)}, ${clock(at)}` })}</p>
      <ul class="small">
        {warning.shown.map(({ id, words }) => (
          <li key={id}>{words}</li>
        ))}
      </ul>
    </>
  );
}

function History({ facts }: Pick<FactsProps, "facts">) {
  const earlier = facts.line.filter(({ is }) => is !== "stands");
  if (earlier.length === 0) return null;
  return (
    <Fold title={t("decisions.history")} count={earlier.length} open={false}>
      {earlier.map(({ id, said, is }) => {
        const word = said ? decisionText(said) : t("decisions.history.back");
        return (
          <p key={id} class="remark small n">
            {is === "undone" ? t("decisions.history.undone", { word }) : word}
            {said && ` · ${toldText(said)}`}
          </p>
        );
      })}
    </Fold>
  );
}

export function DecisionRows({ on, facts }: FactsProps) {
  return (
    <>
      {facts.differ && <Notice kind="plain" title={t("owner.brief.differ")} says={t("decisions.differ.says")} />}
      <div class="remark">
        {facts.standing.map(({ id, value }) => (
          <p key={id} class="n">
            {facts.differ && <b>{`${decisionText(value)} · `}</b>}
            <span class="small">{toldText(value)}</span>
          </p>
        ))}
        <Price on={on} facts={facts} />
        {facts.lateBy && (
          <p class="small n">
            {t("owner.later-than", {
              planned: plainDay(facts.lateBy.planned),
              wanted: plainDay(facts.lateBy.wanted),
            })}
          </p>
        )}
        {facts.word === "tell-me-more" && (
          <p class="small n">
            {facts.answer
              ? t("owner.answer", { day: plainDay(facts.answer.on), words: facts.answer.words })
              : t("owner.no-answer")}
          </p>
        )}
        <Warned facts={facts} />
        {facts.signatures.map((one) => (
          <p key={one.signed.id} class="small n">
            {signedText(one)}
          </p>
        ))}
      </div>
      <History facts={facts} />
    </>
  );
}
