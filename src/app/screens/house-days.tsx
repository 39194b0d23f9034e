/** When a house works: opening times of a week, shut days, people and lifts. Opened over the settings. */
import { useState } from "preact/hooks";
import type { HouseCalendar } from "../../core/record/index.js";
import { NextAction } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { type DaysForm, daysForm, daysFrom, daysWant } from "../state/house-days-form.js";
import { spansOf } from "../state/house-figures.js";
import { keepCalendar } from "../state/house-terms-acts.js";
import { t } from "../texts/house.js";
import { ShutDaysFields } from "./shut-days.js";

const WEEKDAYS = [1, 2, 3, 4, 5, 6, 7] as const;

interface DaysProps {
  readonly days: HouseCalendar | undefined;
  readonly onClose: () => void;
}

export function HouseDaysSheet({ days, onClose }: DaysProps) {
  const { journal } = useApp();
  const [form, setForm] = useState<DaysForm>(() =>
    daysForm(days, new Intl.DateTimeFormat().resolvedOptions().timeZone),
  );
  const set = (part: Partial<DaysForm>): void => setForm({ ...form, ...part });
  const made = daysFrom(form);
  const wants = daysWant(form);
  const keep = (): void => {
    if (!made) return;
    void keepCalendar(journal, made);
    onClose();
  };
  const field = (part: "people" | "lifts" | "zone", kind: "number" | "text") => (
    <Field
      id={`house-${part}`}
      kind={kind}
      label={t(`house.${part}`)}
      value={form[part]}
      onInput={(text) => set({ [part]: text })}
    />
  );
  return (
    <Sheet
      open
      form="full"
      title={t("house.days")}
      closeWords={t("app.cancel")}
      onClose={onClose}
      foot={
        <NextAction
          words={t("house.keep")}
          says={wants && t(`house.wants.${wants}`)}
          disabled={made === undefined}
          onPress={keep}
        />
      }
    >
      <p class="remark">{t("house.days.says")}</p>
      <p class="remark">{t("house.spans.help")}</p>
      <div class="form">
        {WEEKDAYS.map((weekday, at) => (
          <Field
            key={weekday}
            id={`house-day-${weekday}`}
            kind="text"
            label={t(`house.day.${weekday}`)}
            value={form.week[at] ?? ""}
            onInput={(text) => set({ week: form.week.map((one, index) => (index === at ? text : one)) })}
            {...(spansOf(form.week[at] ?? "") ? {} : { problem: t("house.spans.wrong") })}
          />
        ))}
        {field("people", "number")}
        {field("lifts", "number")}
        {field("zone", "text")}
      </div>
      <ShutDaysFields rows={form.shut} onRows={(shut) => set({ shut })} />
    </Sheet>
  );
}
