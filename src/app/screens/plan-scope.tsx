/** What may be taken apart to look, how far, what is spent of it, and what is left out and why. */
import { NextAction } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import { useApp } from "../state/app.js";
import { planScope } from "../state/plan-acts.js";
import {
  apartAfter,
  apartRows,
  notAgreed,
  type Spent,
  scopeOf,
  scopeTold,
  spentOf,
  spentRows,
  unknownLines,
} from "../state/plan-scope-view.js";
import { to } from "../state/routes.js";
import { t } from "../texts/plan-scope.js";
import { Plain } from "./frame.js";
import { type OnPlan, OnPlan as Waiting } from "./on-plan.js";
import { PlanUndo } from "./plan-undo.js";
import { ScopeCaps } from "./scope-caps.js";
import { ScopeLeftOut } from "./scope-left-out.js";

function Apart({ on }: { readonly on: OnPlan }) {
  const { journal } = useApp();
  const scope = scopeOf(on.said);
  const rows = apartRows(on.known, on.input, scope);
  const open = notAgreed(on.known, on.input, scope);
  const chosen = rows.filter(({ isChosen }) => isChosen).length;
  const change = (id: string): void => {
    void planScope(journal, on.stream, { ...scope, apart: apartAfter(on.known, scope, id) });
  };
  return (
    <Band heading={t("scope.apart")} aside={t("scope.apart.n", { n: chosen, all: rows.length })}>
      <p class="remark small">{t("scope.apart.says")}</p>
      {open.length > 0 && (
        <ListRow title={t("scope.missing")} second={`${open.join(", ")}. ${t("scope.missing.says")}`} />
      )}
      <div class="form">
        <ReplyGrid
          kind="several"
          label={t("scope.apart")}
          replies={rows.map(({ id, title, second, isChosen }) => ({
            id,
            words: title,
            says: second,
            chosen: isChosen,
          }))}
          onChoose={change}
          columns={1}
        />
      </div>
    </Band>
  );
}

function SpentBand({ on, spent }: { readonly on: OnPlan; readonly spent: Spent }) {
  return (
    <Band heading={t("scope.spent")}>
      {spentRows(spent, on.currency).map(({ id, title, says }) => (
        <ListRow key={id} title={title} second={says} />
      ))}
      {unknownLines(on.telling, on.said, spent.spent).map((line) => (
        <p key={line} class="remark">
          {line}
        </p>
      ))}
      <p class="remark small">{t("scope.spent.says")}</p>
    </Band>
  );
}

function Body({ on }: { readonly on: OnPlan }) {
  const spent = spentOf(on.input, on.said);
  const told = scopeTold(spent);
  return (
    <>
      {told && <Notice kind="plain" title={told.title} says={told.says} />}
      {on.said.scope.length > 1 && <p class="remark">{t("scope.differ")}</p>}
      <Apart on={on} />
      <ScopeCaps on={on} />
      {!on.currency && <NextAction words={t("scope.to-terms")} href={to("settings")} />}
      <SpentBand on={on} spent={spent} />
      <ScopeLeftOut on={on} />
      <PlanUndo on={on} words={{ "plan.scope": t("undo.plan.scope") }} />
    </>
  );
}

export const PlanScope = ({ visit }: { readonly visit: string }) => (
  <Waiting param={visit}>
    {(on) => (
      <Plain back={t("work.title")} href={to("work", { visit })} title={t("scope.title")} second={t("scope.second")}>
        <Body on={on} />
      </Plain>
    )}
  </Waiting>
);
