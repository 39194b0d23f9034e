/** Whose word it is, how and when it was told: one row, opened to be changed, open from the start where nobody is named. */
import { useState } from "preact/hooks";
import { DECIDERS, TOLD_HOW } from "../../core/record/index.js";
import { Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import type { Deciding } from "../state/decision-form.js";
import { dayWords } from "../texts/days.js";
import { t } from "../texts/decisions.js";
import { Asked } from "./asked.js";
import { isOdd, StepDay } from "./step-day.js";

interface WhoProps {
  readonly deciding: Deciding;
  readonly onChange: (deciding: Deciding) => void;
  readonly today: string;
}

export function WhoDecides({ deciding, onChange, today }: WhoProps) {
  const [isOpen, setOpen] = useState(deciding.who.trim() === "");
  const { who, role, how, on } = deciding;
  const set = (part: Partial<Deciding>): void => onChange({ ...deciding, ...part });
  if (!isOpen)
    return (
      <ListRow
        title={t(`owner.who.${role}`, { who })}
        second={`${t(`decisions.how.${how}`)}, ${dayWords(on)}`}
        aside={t("decisions.by.change")}
        onPress={() => setOpen(true)}
      />
    );
  return (
    <div class="form">
      <Field
        id="decides-name"
        kind="text"
        label={t("decisions.by.name")}
        value={who}
        onInput={(name) => set({ who: name })}
        required
      />
      <Asked
        label={t("decisions.by.role")}
        choices={DECIDERS.map((id) => ({ id, words: t(`decisions.by.${id}`) }))}
        chosen={role}
        onChoose={(id) => set({ role: DECIDERS.find((one) => one === id) ?? role })}
      />
      <Field
        id="decides-how"
        kind="select"
        label={t("decisions.by.how")}
        value={how}
        onInput={(id) => set({ how: TOLD_HOW.find((one) => one === id) ?? how })}
        options={TOLD_HOW.map((id) => ({ value: id, words: t(`decisions.how.${id}`) }))}
      />
      <StepDay id="decides-on" label={t("decisions.by.on")} day={on} onDay={(day) => set({ on: day })} today={today} />
      <Tool
        words={t("decisions.by.done")}
        disabled={who.trim() === "" || on === "" || isOdd(on, today, false)}
        onPress={() => setOpen(false)}
      />
    </div>
  );
}
