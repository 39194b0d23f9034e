/** The budget: big steps or a typed sum, and at once what is done with it, what waits, and the next better plan. */
import { useState } from "preact/hooks";
import { BudgetChooser } from "../parts/budget-chooser.js";
import { NextAction, Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { RangeScale } from "../parts/range-scale.js";
import { ReachLine } from "../parts/work-bundle.js";
import { useApp } from "../state/app.js";
import { type Currency, moneyText, typedMoney } from "../state/money-words.js";
import { planBudget } from "../state/plan-acts.js";
import { budgetSteps, choiceTold, stepped } from "../state/plan-budget-view.js";
import { moneyRange, type PlanLine, plannedList, reachOf } from "../state/plan-work-view.js";
import { to } from "../state/routes.js";
import { decimalComma } from "../texts/index.js";
import { t } from "../texts/plan-work.js";
import { Plain } from "./frame.js";
import { type OnPlan, OnPlan as Waiting } from "./on-plan.js";

const figureOf = (minor: number | undefined, { minorDigits }: Currency): string => {
  if (minor === undefined) return "";
  const text = (minor / 10 ** minorDigits).toFixed(minor % 10 ** minorDigits === 0 ? 0 : minorDigits);
  return decimalComma.value ? text.replace(".", ",") : text;
};

function Chooser({ on, currency }: { readonly on: OnPlan; readonly currency: Currency }) {
  const { journal } = useApp();
  const { budget } = on.input;
  const [typed, setTyped] = useState<string>();
  const keep = (minor: number): void => {
    setTyped(undefined);
    void planBudget(journal, on.stream, { minor, gross: true });
  };
  const commit = (text: string): void => {
    const minor = typedMoney(text, currency.minorDigits);
    if (minor !== undefined) keep(minor);
  };
  const likely = on.plan?.estimate?.gross.likely ?? 0;
  const steps = budgetSteps(Math.max(likely, budget ?? 0), currency);
  const step = (by: number) => {
    const amount = moneyText(Math.abs(by), currency);
    return {
      id: String(by),
      words: `${by < 0 ? "\u2212" : "+"}${figureOf(Math.abs(by), currency)}`,
      name: by < 0 ? t("budget.down", { n: amount }) : t("budget.up", { n: amount }),
      disabled: by < 0 && (budget ?? likely) === 0,
      onPress: () => keep(stepped(budget ?? likely, by)),
    };
  };
  const isUnread = typed !== undefined && typed.trim() !== "" && typedMoney(typed, currency.minorDigits) === undefined;
  return (
    <div class="form">
      <BudgetChooser
        id="budget"
        label={t("budget.field")}
        value={typed ?? figureOf(budget, currency)}
        onValue={setTyped}
        onCommit={commit}
        unit={currency.currency}
        down={steps.map((by) => step(-by))}
        up={steps.map((by) => step(by))}
        stepsLabel={t("budget.steps")}
        {...(isUnread ? { problem: t("budget.unreadable", { example: figureOf(125_050, currency) }) } : {})}
      />
      {budget !== undefined && (
        <Tool words={t("budget.none")} onPress={() => void planBudget(journal, on.stream, null)} />
      )}
    </div>
  );
}

function Jobs({ heading, lines }: { readonly heading: string; readonly lines: readonly PlanLine[] }) {
  if (lines.length === 0) return null;
  return (
    <Band heading={heading}>
      {lines.map(({ id, title, byWhen, cost, href }) => (
        <ListRow key={id} title={title} second={byWhen} href={href} {...(cost === undefined ? {} : { aside: cost })} />
      ))}
    </Band>
  );
}

function NextStep({ on, currency }: { readonly on: OnPlan; readonly currency: Currency }) {
  const { journal } = useApp();
  const told = choiceTold(on.telling, on.plan, on.input.budget, currency);
  if (!told) return null;
  const { next, proven } = told;
  const wanted = next.budget;
  return (
    <Band heading={next.title}>
      {next.lines.map((line) => (
        <p key={line} class="remark">
          {line}
        </p>
      ))}
      {wanted !== undefined && (
        <div class="form">
          <Tool
            words={t("budget.field")}
            says={moneyText(wanted, currency)}
            onPress={() => void planBudget(journal, on.stream, { minor: wanted, gross: true })}
          />
        </div>
      )}
      <p class="remark small">{proven}</p>
    </Band>
  );
}

function Body({ on }: { readonly on: OnPlan }) {
  const { currency } = on;
  if (!currency)
    return (
      <>
        <Notice kind="plain" title={t("budget.no-terms")} />
        <NextAction words={t("budget.to-terms")} href={to("settings")} />
      </>
    );
  const money = moneyRange(on.plan, on.input.budget, currency);
  const reach = reachOf(on.plan, on.input.budget, currency);
  const { lit, shade, done } = plannedList(on.telling, on.due, on.plan, currency, on.input);
  return (
    <>
      <Chooser on={on} currency={currency} />
      {money && <RangeScale {...money} />}
      {reach && <ReachLine {...reach} />}
      <Jobs heading={t("budget.chosen")} lines={lit} />
      <Jobs heading={t("budget.left-out")} lines={shade} />
      <Jobs heading={t("plan.done")} lines={done} />
      <p class="remark small">{t("plan.own")}</p>
      <NextStep on={on} currency={currency} />
      {on.isPlanning && (
        <p class="remark small" role="status">
          {t("plan.planning")}
        </p>
      )}
    </>
  );
}

export const PlanBudget = ({ visit }: { readonly visit: string }) => (
  <Waiting param={visit}>
    {(on) => (
      <Plain back={t("work.title")} href={to("work", { visit })} title={t("budget.title")} second={t("budget.second")}>
        <Body on={on} />
      </Plain>
    )}
  </Waiting>
);
