/** Telling something that came on top, one thing after the other: words and why, hours, price, who agreed. */
import { useState } from "preact/hooks";
import { NextAction } from "../parts/button.js";
import { DayEntry } from "../parts/day-entry.js";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import type { FigureKind, ThreeFigures, ThreeTexts } from "../parts/props-planning.js";
import { Sheet } from "../parts/sheet.js";
import { ThreeEntry } from "../parts/three-entry.js";
import { type AdditionForm, type AdditionStep, additionForm, additionSaid, openStep } from "../state/addition-form.js";
import { useApp } from "../state/app.js";
import type { Currency } from "../state/money-words.js";
import { addition } from "../state/plan-acts.js";
import { grossOf, type SaidAddition } from "../state/plan-forecast-view.js";
import { clockText, figureText } from "../state/three-texts.js";
import { dayOf } from "../state/today.js";
import { decimalComma } from "../texts/index.js";
import { t } from "../texts/plan-estimate.js";
import type { OnPlan } from "./on-plan.js";

interface ThreeProps {
  readonly label: string;
  readonly says?: string;
  readonly kind: FigureKind;
  readonly unit: string;
  readonly given: ThreeFigures | undefined;
  readonly onKeep: (figures: ThreeFigures) => void;
}

function Three({ label, says, kind, unit, given, onKeep }: ThreeProps) {
  const write = (figure: number): string =>
    kind.of === "minutes" ? clockText(figure) : figureText(figure, kind.digits, kind.decimal);
  const [values, setValues] = useState<ThreeTexts>(
    given ? [write(given[0]), write(given[1]), write(given[2])] : ["", "", ""],
  );
  return (
    <ThreeEntry
      label={label}
      kind={kind}
      values={values}
      onValues={setValues}
      onKeep={onKeep}
      unit={unit}
      says={says}
      words={{
        low: t("three.low"),
        likely: t("three.likely"),
        high: t("three.high"),
        lowOverLikely: t("three.low-over-likely"),
        likelyOverHigh: t("three.likely-over-high"),
        lowOverHigh: t("three.low-over-high"),
        unreadable: kind.of === "minutes" ? t("three.time") : t("three.money", { n: kind.digits }),
        keep: ([low, likely, high]) => t("three.keep", { low, likely, high }),
        next: t("three.next"),
        keys: t("three.keys"),
        rubOut: t("three.rub-out"),
        decimal: t("three.decimal"),
      }}
    />
  );
}

interface StepProps {
  readonly form: AdditionForm;
  readonly set: (part: Partial<AdditionForm>) => void;
}

function WordsStep({ form, set }: StepProps) {
  return (
    <div class="form">
      <Field
        id="addition-words"
        kind="text"
        label={t("addition.words")}
        value={form.words}
        onInput={(words) => set({ words })}
        required
      />
      <Field
        id="addition-reason"
        kind="text"
        label={t("addition.reason")}
        value={form.reason}
        onInput={(reason) => set({ reason })}
      />
    </div>
  );
}

function AgreedStep({ form, set, today }: StepProps & { readonly today: string }) {
  return (
    <div class="form">
      <Field
        id="addition-who"
        kind="text"
        label={t("addition.who")}
        value={form.who}
        onInput={(who) => set({ who })}
        help={t("addition.open.says")}
      />
      <Field id="addition-how" kind="text" label={t("addition.how")} value={form.how} onInput={(how) => set({ how })} />
      <DayEntry
        id="addition-on"
        label={t("addition.on")}
        value={form.on}
        onDay={(on) => set({ on })}
        latest={today}
        quick={[{ id: "today", words: t("addition.today"), day: today }]}
        quickLabel={t("addition.days")}
      />
    </div>
  );
}

interface AdditionSheetProps {
  readonly on: OnPlan;
  readonly currency: Currency;
  readonly mend: SaidAddition | undefined;
  readonly onClose: () => void;
}

export function AdditionSheet({ on, currency, mend, onClose }: AdditionSheetProps) {
  const { journal, phone } = useApp();
  const today = dayOf(phone.now());
  const [form, setForm] = useState(() => additionForm(mend, today));
  const [step, setStep] = useState<AdditionStep>(() => openStep(form));
  const set = (part: Partial<AdditionForm>): void => setForm({ ...form, ...part });
  const onward = (part: Partial<AdditionForm>): void => {
    const now = { ...form, ...part };
    setForm(now);
    setStep(openStep(now));
  };
  const keep = (): void => {
    const said = additionSaid(form, mend?.addition ?? "");
    if (!said) return;
    const gross = said.agreed === null ? undefined : grossOf(on.input, said);
    const told = gross === undefined ? said : { ...said, gross };
    void addition(journal, on.stream, (random) => (mend ? told : { ...told, addition: random }));
    onClose();
  };
  const money = { of: "money", digits: currency.minorDigits, decimal: decimalComma.value ? "," : "." } as const;
  const isNamed = form.words.trim() !== "";
  const foot =
    step === "words" ? (
      <NextAction words={t("addition.onward")} disabled={!isNamed} onPress={() => onward({})} />
    ) : step === "agreed" ? (
      <NextAction
        words={form.who.trim() === "" ? t("addition.keep-open") : t("addition.keep-agreed")}
        disabled={additionSaid(form, "") === undefined}
        onPress={keep}
      />
    ) : undefined;
  return (
    <Sheet
      open
      title={mend ? t("addition.mend") : t("addition.add")}
      closeWords={t("app.close")}
      onClose={onClose}
      foot={foot}
    >
      {step !== "words" && <ListRow title={form.words} second={form.reason} onPress={() => setStep("words")} />}
      {step === "words" && <WordsStep form={form} set={set} />}
      {step === "agreed" && form.minutes && (
        <ListRow
          title={t("addition.hours")}
          second={form.minutes.map(clockText).join(" · ")}
          onPress={() => setStep("hours")}
        />
      )}
      {step === "agreed" && form.price && (
        <ListRow
          title={t("addition.price")}
          second={form.price.map((minor) => figureText(minor, money.digits, money.decimal)).join(" · ")}
          onPress={() => setStep("price")}
        />
      )}
      {step === "hours" && (
        <Three
          key="hours"
          label={t("addition.hours")}
          kind={{ of: "minutes" }}
          unit="h"
          given={form.minutes}
          onKeep={(minutes) => onward({ minutes })}
        />
      )}
      {step === "price" && (
        <Three
          key="price"
          label={t("addition.price")}
          says={t("addition.price.says")}
          kind={money}
          unit={currency.currency}
          given={form.price}
          onKeep={(price) => onward({ price })}
        />
      )}
      {step === "agreed" && <AgreedStep form={form} set={set} today={today} />}
    </Sheet>
  );
}
