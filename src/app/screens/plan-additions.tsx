/** What came on top of the estimate: agreed, and apart from it what nobody has agreed to yet. */
import { useState } from "preact/hooks";
import { Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import type { Currency } from "../state/money-words.js";
import type { Estimating } from "../state/plan-estimate-view.js";
import { type AdditionLine, additionLines, type SaidAddition } from "../state/plan-forecast-view.js";
import { t } from "../texts/plan-estimate.js";
import { lazy, Nothing } from "./lazy.js";
import type { OnPlan } from "./on-plan.js";

const AdditionSheet = lazy(() => import("./plan-addition.js").then((file) => file.AdditionSheet), Nothing);

interface PlanAdditionsProps {
  readonly on: OnPlan;
  readonly of: Estimating;
  readonly currency: Currency;
}

interface SideProps {
  readonly heading: string;
  readonly says?: string;
  readonly lines: readonly AdditionLine[];
  readonly onMend: (said: SaidAddition) => void;
}

function Side({ heading, says, lines, onMend }: SideProps) {
  if (lines.length === 0) return null;
  return (
    <Band heading={heading}>
      {says && <p class="remark small">{says}</p>}
      {lines.map(({ said, title, lines: more, figure }) => (
        <ListRow
          key={said.addition}
          title={title}
          second={more.join(" · ")}
          aside={figure}
          onPress={() => onMend(said)}
        />
      ))}
    </Band>
  );
}

/** A new one, one to mend, or no sheet at all. */
type Over = { readonly mend?: SaidAddition } | undefined;

export function PlanAdditions({ on, of, currency }: PlanAdditionsProps) {
  const [over, setOver] = useState<Over>();
  const lines = additionLines(of, currency);
  const onMend = (mend: SaidAddition): void => setOver({ mend });
  return (
    <>
      <Side heading={t("addition.agreed")} lines={lines.filter(({ isAgreed }) => isAgreed)} onMend={onMend} />
      <Side
        heading={t("addition.open")}
        says={t("addition.open.says")}
        lines={lines.filter(({ isAgreed }) => !isAgreed)}
        onMend={onMend}
      />
      <Band {...(lines.length === 0 ? { heading: t("addition.title") } : {})}>
        {lines.length === 0 && <p class="remark">{t("addition.none")}</p>}
        <div class="acts">
          <Tool words={t("addition.add")} onPress={() => setOver({})} />
        </div>
      </Band>
      {over && <AdditionSheet on={on} currency={currency} mend={over.mend} onClose={() => setOver(undefined)} />}
    </>
  );
}
