/** Of a new visit: what for, who looks, the odometer. */
import { useState } from "preact/hooks";
import { AUDIENCES, type Audience, PURPOSES } from "../../core/terms/index.js";
import { Field } from "../parts/field.js";
import { Band } from "../parts/pool.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import { USUALLY, type VisitForm } from "../state/new-visit.js";
import { t } from "../texts/round.js";
import { OdometerBox } from "./odometer-box.js";

export function WhatForAndWho({
  form,
  set,
  names,
}: {
  readonly form: VisitForm;
  readonly set: (part: Partial<VisitForm>) => void;
  readonly names: { readonly name: string; readonly setName: (name: string) => void };
}) {
  const [isChosen, setChosen] = useState(false);
  const choosePurpose = (id: string): void => {
    const purpose = PURPOSES.find((one) => one === id) ?? form.purpose;
    set({ purpose, ...(isChosen ? {} : { who: USUALLY[purpose] }) });
  };
  const chooseWho = (id: string): void => {
    setChosen(true);
    set({ who: AUDIENCES.find((one): one is Audience => one === id) ?? form.who });
  };
  return (
    <>
      <Band heading={t("new-visit.purpose")}>
        <div class="form">
          <ReplyGrid
            kind="choice"
            columns={1}
            label={t("new-visit.purpose")}
            replies={PURPOSES.map((id) => ({ id, words: t(`purpose.${id}`), chosen: form.purpose === id }))}
            onChoose={choosePurpose}
          />
        </div>
      </Band>
      <Band heading={t("new-visit.who")}>
        <div class="form">
          <ReplyGrid
            kind="choice"
            columns={1}
            label={t("new-visit.who")}
            replies={AUDIENCES.map((id) => ({
              id,
              words: t(`who.${id}`),
              says: t(`who.${id}.says`),
              chosen: form.who === id,
            }))}
            onChoose={chooseWho}
          />
          <Field
            id="your-name"
            kind="text"
            label={t("new-visit.your-name")}
            help={t("new-visit.your-name.help")}
            value={names.name}
            onInput={names.setName}
            autocomplete="name"
          />
        </div>
      </Band>
    </>
  );
}

export function OdometerField({
  form,
  set,
  odd,
}: {
  readonly form: VisitForm;
  readonly set: (part: Partial<VisitForm>) => void;
  readonly odd: boolean;
}) {
  return (
    <div class="form">
      <OdometerBox
        id="odometer"
        label={t("new-visit.odometer")}
        unitLabel={t("reading.unit")}
        value={form.odometer}
        onValue={(odometer) => set({ odometer })}
        unit={form.odometerUnit}
        onUnit={(odometerUnit) => set({ odometerUnit })}
        problem={odd ? t("new-visit.odometer.odd") : undefined}
      />
    </div>
  );
}
