/** What one word asks for: a day or an odometer, a reason, a question; and whether another person's word still stands. */

import { isMandatory } from "../../core/plan/index.js";
import type { Decision, InPlaceOf, Stands } from "../../core/record/index.js";
import { Field } from "../parts/field.js";
import { type DecisionForm, typedOdometer } from "../state/decision-form.js";
import { decisionText } from "../state/decision-words.js";
import { byWhenText } from "../state/work-view.js";
import { t } from "../texts/decisions.js";
import { Asked } from "./asked.js";
import type { OnPlan } from "./on-plan.js";
import { StepDay } from "./step-day.js";

interface DetailsProps {
  readonly on: OnPlan;
  readonly id: string;
  readonly form: DecisionForm;
  readonly onForm: (form: DecisionForm) => void;
  readonly others: readonly Stands<Decision>[];
  readonly over: InPlaceOf;
  readonly onOver: (over: InPlaceOf) => void;
}

const REASONS = ["money", "sold", "elsewhere"] as const;

function Because({ on, id, form, onForm }: DetailsProps) {
  const job = on.input.jobs.find((one) => one.id === id);
  const due = on.due.find((one) => `${one.job}@${one.place}` === id);
  const isMust = job !== undefined && isMandatory({ ...job, wanted: undefined });
  return (
    <>
      <fieldset class="quick" aria-label={t("decisions.because.chosen")}>
        {REASONS.map((reason) => {
          const words = t(`decisions.because.${reason}`);
          return (
            <button
              key={reason}
              class="tool plain"
              type="button"
              aria-pressed={form.because === words}
              onClick={() => onForm({ ...form, because: words })}
            >
              {words}
            </button>
          );
        })}
      </fieldset>
      <Field
        id="decision-because"
        kind="area"
        label={t("decisions.because")}
        value={form.because}
        onInput={(because) => onForm({ ...form, because })}
        required
      />
      <p class="small">
        {isMust && due ? t("decisions.then.must", { when: byWhenText(due.byWhen) }) : t("decisions.then.no")}
      </p>
    </>
  );
}

function By({ on, form, onForm }: DetailsProps) {
  return (
    <>
      <StepDay
        id="decision-by"
        label={t("decisions.by-day")}
        day={form.by}
        onDay={(by) => onForm({ ...form, by })}
        today={on.input.today}
        ahead
      />
      <Field
        id="decision-odometer"
        kind="number"
        label={t("decisions.by-odometer")}
        value={form.odometer}
        onInput={(odometer) => onForm({ ...form, odometer })}
        unit={on.visit.odometer.at(-1)?.value.unit === "[mi_i]" ? "mi" : "km"}
        help={t("decisions.by-or")}
        {...(typedOdometer(form.odometer) === null ? { problem: t("decisions.by-odometer.odd") } : {})}
      />
    </>
  );
}

export function DecideDetails(props: DetailsProps) {
  const { form, onForm, others, over, onOver } = props;
  return (
    <div class="form">
      {form.word === "no" && <Because {...props} />}
      {form.word === "yes-by" && <By {...props} />}
      {form.word === "tell-me-more" && (
        <Field
          id="decision-what"
          kind="area"
          label={t("decisions.what")}
          value={form.what}
          onInput={(what) => onForm({ ...form, what })}
          required
        />
      )}
      {others.map(({ id: entry, value }) => (
        <p key={entry}>{t("decisions.other", { who: value.who, word: decisionText(value) })}</p>
      ))}
      {others.length > 0 && (
        <Asked
          label={t("decisions.other.ask")}
          choices={(["own", "all"] as const).map((one) => ({ id: one, words: t(`decisions.other.${one}`) }))}
          chosen={over}
          onChoose={(one) => onOver(one === "all" ? "all" : "own")}
        />
      )}
    </div>
  );
}
