/** How the car is used until the next look: it decides how likely a fault grows, and so the order of the list. */
import { USES } from "../../core/record/index.js";
import { Tool } from "../parts/button.js";
import { Band } from "../parts/pool.js";
import { UnitSwitch } from "../parts/switch.js";
import { useApp } from "../state/app.js";
import { planUse } from "../state/plan-acts.js";
import { last } from "../state/plan-input.js";
import { t } from "../texts/plan-use.js";
import type { OnPlan } from "./on-plan.js";

export function PlanUseBand({ on }: { readonly on: OnPlan }) {
  const { journal } = useApp();
  const use = last(on.said.use);
  const choose = (id: string): void => {
    const chosen = USES.find((one) => one === id);
    if (chosen) void planUse(journal, on.stream, chosen);
  };
  return (
    <Band heading={t("plan.use")}>
      <div class="form">
        <UnitSwitch
          label={t("plan.use")}
          choices={USES.map((id) => ({ id, words: t(`plan.use.${id}`) }))}
          chosen={use ?? ""}
          onChoose={choose}
        />
        {use !== undefined && (
          <Tool words={t("plan.use.take-back")} onPress={() => void planUse(journal, on.stream, null)} />
        )}
      </div>
      <p class="remark small" role="status">
        {use === undefined ? t("plan.use.unsaid") : t(`plan.use.${use}.says`)}
      </p>
      {on.said.use.length > 1 && <p class="remark small">{t("plan.use.differ")}</p>}
    </Band>
  );
}
