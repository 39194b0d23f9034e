/**
 * The estimate: how much and how sure, what no sum holds yet, every line with what it rests on, what was told first and
 * where the work stands against it.
 */
import { NextAction } from "../parts/button.js";
import { Fold } from "../parts/fold.js";
import { ListRow } from "../parts/list-row.js";
import { EmptyState, Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { RangeScale } from "../parts/range-scale.js";
import type { Currency } from "../state/money-words.js";
import {
  type AsideLine,
  asideLines,
  type Estimating,
  estimateGroups,
  estimateProblems,
  oldPrices,
  sumRows,
  supplierNames,
} from "../state/plan-estimate-view.js";
import { idParts } from "../state/plan-words.js";
import { moneyRange } from "../state/plan-work-view.js";
import { to } from "../state/routes.js";
import { t } from "../texts/plan-estimate.js";
import { Plain } from "./frame.js";
import { lazy, Nothing } from "./lazy.js";
import { type OnPlan, OnPlan as Waiting } from "./on-plan.js";
import { MoneyBand } from "./plan-rows.js";
import { PlanUndo } from "./plan-undo.js";

// What was given and what came on top is reckoned anew: it comes behind the figures.
const PlanGiven = lazy(() => import("./plan-given.js").then((file) => file.PlanGiven), Nothing);
const PlanAdditions = lazy(() => import("./plan-additions.js").then((file) => file.PlanAdditions), Nothing);

/** The page of the job, where what is missing can be said. */
function jobPage(visit: string, job: string): string {
  const { what, place } = idParts(job);
  return to("job", { visit, job: what, place });
}

interface ListedProps {
  readonly on: OnPlan;
  readonly heading: string;
  readonly lines: readonly AsideLine[];
}

/** More than these are folded away: they are counted, and the figures stay in sight. */
const OPEN_AT_MOST = 3;

function Listed({ on, heading, lines }: ListedProps) {
  if (lines.length === 0) return null;
  return (
    <Fold title={heading} count={lines.length} open={lines.length <= OPEN_AT_MOST}>
      {lines.map(({ id, job, title, wants }) => (
        <ListRow key={id} title={title} second={wants} href={job === undefined ? undefined : jobPage(on.param, job)} />
      ))}
    </Fold>
  );
}

function Sums({ of, currency }: { readonly of: Estimating; readonly currency: Currency }) {
  const estimate = of.plan?.estimate;
  if (!estimate) return null;
  return (
    <>
      {estimateGroups(of, currency).map(({ id, heading, says, rows }) => (
        <MoneyBand key={id} heading={heading} says={says} rows={rows} />
      ))}
      <MoneyBand heading={t("estimate.sum")} rows={sumRows(estimate, currency)} />
    </>
  );
}

function Body({ on }: { readonly on: OnPlan }) {
  const { currency, plan, telling, said, input, house, who } = on;
  if (!currency)
    return (
      <>
        <Notice kind="plain" title={t("estimate.no-terms")} />
        <NextAction words={t("estimate.to-terms")} href={to("settings")} />
      </>
    );
  if (input.jobs.length === 0) return <EmptyState title={t("estimate.none")} says="" />;
  const of: Estimating = { telling, said, input, plan, suppliers: supplierNames(house) };
  const money = moneyRange(plan, input.budget, currency);
  const problems = estimateProblems(of);
  return (
    <>
      {money && <RangeScale {...money} />}
      {on.isPlanning && (
        <p class="remark small" role="status">
          {t("estimate.planning")}
        </p>
      )}
      <Listed on={on} heading={t("estimate.aside")} lines={asideLines(of)} />
      {problems.length > 0 && (
        <Band heading={t("estimate.problems")}>
          {problems.map((words) => (
            <p key={words} class="remark">
              {words}
            </p>
          ))}
        </Band>
      )}
      {who !== "buyer" && <PlanGiven on={on} of={of} currency={currency} />}
      <Sums of={of} currency={currency} />
      <Listed on={on} heading={t("estimate.old")} lines={oldPrices(of)} />
      {who !== "buyer" && <PlanAdditions on={on} of={of} currency={currency} />}
      <PlanUndo
        on={on}
        words={{
          "estimate.given": t("undo.estimate.given"),
          "estimate.addition": t("undo.estimate.addition"),
        }}
      />
    </>
  );
}

export const PlanEstimate = ({ visit }: { readonly visit: string }) => (
  <Waiting param={visit}>
    {(on) => (
      <Plain
        back={t("work.title")}
        href={to("work", { visit })}
        title={t("estimate.title")}
        second={t("estimate.second")}
      >
        <Body on={on} />
      </Plain>
    )}
  </Waiting>
);
