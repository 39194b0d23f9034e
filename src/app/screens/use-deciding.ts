/** What the screens of deciding share: who decides, what is shown of a job, and keeping a word on it. */
import type { Decision, InPlaceOf } from "../../core/record/index.js";
import { useApp } from "../state/app.js";
import type { Telling } from "../state/because.js";
import { decidingOn, nowDeciding } from "../state/deciding.js";
import { decide } from "../state/decision-acts.js";
import { type Deciding, type DecisionForm, decisionSaid } from "../state/decision-form.js";
import { pricesOf, shownPrice } from "../state/decision-prices.js";
import { type Warning, warningOver } from "../state/decision-warning.js";
import { idParts } from "../state/plan-words.js";
import type { OnPlan } from "./on-plan.js";

/** What is read by an owner is told in an owner's words. */
export const forOwner = (telling: Telling): Telling => ({ ...telling, who: "owner" });

export const warningOn = (on: OnPlan, id: string): Warning | undefined =>
  warningOver({ telling: forOwner(on.telling), assessment: on.assessment, visit: on.visit, due: on.due }, id);

interface Decides {
  readonly deciding: Deciding;
  readonly setDeciding: (deciding: Deciding) => void;
  /** The decision as the form has it; undefined until it is whole. */
  readonly saidOf: (id: string, form: DecisionForm) => Decision | undefined;
  readonly keep: (id: string, said: Decision | null, over?: InPlaceOf) => Promise<boolean>;
}

export function useDeciding(on: OnPlan): Decides {
  const { journal } = useApp();
  const { said, input } = on;
  const deciding = decidingOn(said, input.today);
  return {
    deciding,
    setDeciding: (now) => nowDeciding(said, input.today, now),
    saidOf: (id, form) =>
      decisionSaid(form, deciding, {
        warning: warningOn(on, id),
        price: shownPrice(pricesOf(on, [id])),
        estimate: said.estimates[0]?.id,
        unit: on.visit.odometer.at(-1)?.value.unit === "[mi_i]" ? "[mi_i]" : "km",
      }),
    keep: (id, decided, over) => {
      const { what: job, place } = idParts(id);
      return decide(journal, on.stream, [{ at: { job, place }, said: decided }], over);
    },
  };
}
