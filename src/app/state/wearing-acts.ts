/** What a person says of a reading, kept in the plan of the reading's own visit; and taking back what was said last. */
import { draftUndo, draftWear, type PlanState, undoable, type WearAt, type WearSaid } from "../../core/record/index.js";
import type { Journal } from "./journal.js";
import { planAct } from "./plan-acts.js";

/** Null takes back what was said. */
export const sayWear = (journal: Journal, visit: string, at: WearAt, says: WearSaid | null): Promise<boolean> =>
  planAct(journal, visit, (act, plan) => [draftWear(act, plan, at, says)]);

type Step = ReturnType<typeof undoable>[number];

/** The newest act of this phone on any reading, in the plan of its visit; only where it is the newest act in that plan. */
export function lastSaid(
  plans: ReadonlyMap<string, PlanState>,
  writer: string | undefined,
): { readonly visit: string; readonly step: Step } | undefined {
  if (writer === undefined) return undefined;
  const steps = [...plans].flatMap(([visit, plan]) => {
    const [step] = undoable(plan, writer);
    return step?.kinds.includes("wear.said") ? [{ visit, step }] : [];
  });
  return steps.sort((a, b) => b.step.at.wall - a.step.at.wall || b.step.at.count - a.step.at.count)[0];
}

export const undoSaid = (journal: Journal, visit: string, step: Pick<Step, "ids">): Promise<boolean> =>
  planAct(journal, visit, (act, plan) => draftUndo(act, plan, step.ids));
