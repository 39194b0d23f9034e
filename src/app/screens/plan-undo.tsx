/** Takes back the newest act in a plan, where this screen is the one it was made on. */
import { Tool } from "../parts/button.js";
import { useApp } from "../state/app.js";
import { lastPlanStep, undoPlan } from "../state/plan-acts.js";
import { t } from "../texts/release.js";
import type { OnPlan } from "./on-plan.js";

interface PlanUndoProps {
  readonly on: OnPlan;
  /** What the key says, by the kind of the act; acts of other kinds are taken back elsewhere. */
  readonly words: Readonly<Record<string, string>>;
}

export function PlanUndo({ on, words }: PlanUndoProps) {
  const { journal } = useApp();
  const writer = journal.writer.value;
  const step = writer === undefined ? undefined : lastPlanStep(on.said, writer);
  const says = step?.kinds.map((kind) => words[kind]).find((one) => one !== undefined);
  if (!step || says === undefined) return null;
  const who = on.said.people.get(step.by)?.at(-1)?.value.name;
  return (
    <div class="acts">
      <Tool
        words={who === undefined ? says : t("undo.of", { says, who })}
        onPress={() => void undoPlan(journal, on.stream, step)}
      />
    </div>
  );
}
