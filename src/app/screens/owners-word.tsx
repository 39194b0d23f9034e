/** The owner's word on one job, as a band of its page: what stands, told in full, and the sheet that changes it. */
import { useState } from "preact/hooks";
import { Tool } from "../parts/button.js";
import { Band } from "../parts/pool.js";
import { Pressable } from "../parts/pressable.js";
import { useApp } from "../state/app.js";
import { standingText } from "../state/decision-words.js";
import { decisionFacts } from "../state/decisions-view.js";
import { planDeskOf } from "../state/plan-desk.js";
import { t } from "../texts/decisions.js";
import { DecisionRows } from "./decision-rows.js";
import { lazy, Nothing } from "./lazy.js";
import { type OnPlan, WithPlan } from "./on-plan.js";
import type { OnDesk } from "./on-visit.js";

const DecideSheet = lazy(() => import("./decide-sheet.js").then((file) => file.DecideSheet), Nothing);
const AnswerSheet = lazy(() => import("./answer-sheet.js").then((file) => file.AnswerSheet), Nothing);

/** On the page of a job; the rest of the page says it where the plan can't be opened. */
export function OwnersBand({ on, id }: { readonly on: OnDesk; readonly id: string }) {
  const desk = planDeskOf(useApp(), on.stream);
  const isOpen = desk.said.value.is === "open" && desk.input.value !== undefined && !desk.trouble.value;
  if (on.who === "buyer" || !isOpen) return null;
  return <WithPlan on={on}>{(planned) => <OwnersWord on={planned} id={id} />}</WithPlan>;
}

function OwnersWord({ on, id }: { readonly on: OnPlan; readonly id: string }) {
  const [over, setOver] = useState<"decide" | "answer">();
  const facts = decisionFacts(on, id);
  const asks = facts.standing.some(({ value }) => value.word === "tell-me-more");
  const close = (): void => setOver(undefined);
  return (
    <Band heading={t("owner.word")}>
      <div class="acts">
        <Pressable class="decision" onPress={() => setOver("decide")}>
          <b>{standingText(facts.standing)}</b>
          <span>{t("decisions.change")}</span>
        </Pressable>
      </div>
      {facts.line.length > 0 && <DecisionRows on={on} facts={facts} />}
      {asks && (
        <div class="acts">
          <Tool words={t("decisions.answer")} onPress={() => setOver("answer")} />
        </div>
      )}
      {over === "decide" && <DecideSheet on={on} id={id} onClose={close} />}
      {over === "answer" && <AnswerSheet on={on} facts={facts} onClose={close} />}
    </Band>
  );
}
