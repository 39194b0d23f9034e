/** Taking the car in: short answers or own words, a picture where that helps, and how much is still unsaid. */
import { useState } from "preact/hooks";
import { Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import { useApp } from "../state/app.js";
import { intake } from "../state/plan-acts.js";
import { answerOf, answerText, type IntakeItem, intakeView } from "../state/plan-intake-view.js";
import { to } from "../state/routes.js";
import { t } from "../texts/plan-intake.js";
import { Plain } from "./frame.js";
import { type OnPlan, OnPlan as Waiting } from "./on-plan.js";
import { PlanUndo } from "./plan-undo.js";

function Item({ on, item }: { readonly on: OnPlan; readonly item: IntakeItem }) {
  const { journal } = useApp();
  const [typed, setTyped] = useState<string>();
  const answer = answerOf(item);
  const keep = (now: { readonly short?: string | undefined; readonly own: string }): void => {
    const says = answerText({ own: now.own, ...(now.short === undefined ? {} : { short: now.short }) });
    if (says === (item.says ?? null)) return;
    void intake(journal, on.stream, item.id, says).then((kept) => kept && setTyped(undefined));
  };
  const own = typed ?? answer.own;
  return (
    <section class="form" aria-label={item.title}>
      <h3 class="label">
        {item.title} {item.says === undefined && <span class="small">{t("intake.unsaid.one")}</span>}
      </h3>
      {item.answers.length > 0 && (
        <ReplyGrid
          kind="choice"
          label={item.title}
          replies={item.answers.map((words) => ({ id: words, words, chosen: words === answer.short }))}
          onChoose={(short) => keep({ short, own })}
        />
      )}
      <Field
        id={`intake-${item.id}`}
        kind="text"
        label={item.answers.length > 0 ? t("intake.own.more") : t("intake.own")}
        value={own}
        onInput={setTyped}
        onCommit={(text) => keep({ short: answer.short, own: text })}
        help={item.help}
      />
      {item.differs && <p class="small">{t("intake.differ")}</p>}
      {item.camera && <Tool words={t("intake.picture")} href={item.camera} />}
    </section>
  );
}

function Body({ on }: { readonly on: OnPlan }) {
  const view = intakeView(on);
  return (
    <>
      <p class="remark" role="status">
        {view.unsaid === 0 ? t("intake.all-said") : t("intake.unsaid", { n: view.unsaid })}
      </p>
      {view.groups.map(({ id, heading, says, items }) => (
        <Band key={id} heading={heading}>
          {says && <p class="remark small">{says}</p>}
          {items.map((item) => (
            <Item key={item.id} on={on} item={item} />
          ))}
          {id === "inside" && (
            <ListRow
              title={view.odometer.title}
              second={t("intake.odometer.says")}
              aside={view.odometer.says ?? t("intake.unsaid.one")}
              href={view.odometer.href}
            />
          )}
        </Band>
      ))}
      <PlanUndo on={on} words={{ "plan.intake": t("undo.plan.intake") }} />
    </>
  );
}

export const PlanIntake = ({ visit }: { readonly visit: string }) => (
  <Waiting param={visit}>
    {(on) => (
      <Plain back={t("work.title")} href={to("work", { visit })} title={t("intake.title")} second={t("intake.second")}>
        <Body on={on} />
      </Plain>
    )}
  </Waiting>
);
