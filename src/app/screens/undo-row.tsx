/** The row at the foot of a plan's page that takes back what was entered last. */
import { ListRow } from "../parts/list-row.js";
import { useApp } from "../state/app.js";
import { undoPlan } from "../state/plan-acts.js";
import { planUndo } from "../state/plan-undo-view.js";
import { t } from "../texts/plan-parts.js";
import type { OnPlan } from "./on-plan.js";

export function UndoRow({ on }: { readonly on: OnPlan }) {
  const { journal } = useApp();
  const last = planUndo(on.telling, on.said, journal.writer.value);
  if (!last) return null;
  return (
    <ListRow
      folded
      title={last.says}
      aside={t("plan-undo")}
      onPress={() => void undoPlan(journal, on.stream, last.step)}
    />
  );
}
