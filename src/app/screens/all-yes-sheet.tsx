/** Yes, now, to all that nobody has decided yet: the jobs by name and what they come to, kept as one act. */
import { NextAction } from "../parts/button.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { decide } from "../state/decision-acts.js";
import { decisionForm } from "../state/decision-form.js";
import { openingOf, sumOf } from "../state/decision-prices.js";
import { idParts, jobTitle } from "../state/plan-words.js";
import { t } from "../texts/decisions.js";
import { openingText, rangeText } from "./decide-price.js";
import type { OnPlan } from "./on-plan.js";
import { forOwner, useDeciding } from "./use-deciding.js";

interface AllYesProps {
  readonly on: OnPlan;
  readonly ids: readonly string[];
  readonly onClose: () => void;
}

export function AllYesSheet({ on, ids, onClose }: AllYesProps) {
  const { journal } = useApp();
  const { saidOf } = useDeciding(on);
  const each = ids.flatMap((id) => {
    const said = saidOf(id, decisionForm("yes-now", undefined));
    const { what: job, place } = idParts(id);
    return said ? [{ at: { job, place }, said }] : [];
  });
  const opening = openingText(openingOf(on, ids), on.currency, "decisions.price.opening.all");
  const keep = (): void => {
    void decide(journal, on.stream, each);
    onClose();
  };
  return (
    <Sheet
      open
      title={t("decisions.all-yes")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={<NextAction words={t("decisions.all-yes.keep", { n: each.length })} onPress={keep} />}
    >
      <p class="n">{rangeText(sumOf(on, ids), on.currency)}</p>
      {opening !== undefined && <p class="small n">{opening}</p>}
      <ul>
        {ids.map((id) => (
          <li key={id}>{jobTitle(forOwner(on.telling), id)}</li>
        ))}
      </ul>
    </Sheet>
  );
}
