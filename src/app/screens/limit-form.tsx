/** A figure for the car's limits book: value, unit, the grade beyond it, where it holds and where it comes from. */
import { useState } from "preact/hooks";
import type { CarState } from "../../core/record/index.js";
import type { CarLimit, Limit } from "../../core/sheet/run.js";
import { BASES, GRADES } from "../../core/terms/index.js";
import { isQuantity, readTyped } from "../../core/units/index.js";
import { NextAction } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { useApp } from "../state/app.js";
import { limit as keepLimit } from "../state/car-edits.js";
import { unitChoices } from "../state/limits-view.js";
import { t } from "../texts/index.js";
import { problemText } from "../texts/problems.js";

/** Every such place: a figure without a place. */
const EVERYWHERE = "";

interface Form {
  readonly place: string;
  readonly value: string;
  readonly unit: string;
  readonly grade: (typeof GRADES)[number];
  readonly basis: (typeof BASES)[number];
  readonly source: string;
}

const choice = <Value extends string>(all: readonly Value[], words: (one: Value) => string) =>
  all.map((value) => ({ value, words: words(value) }));
const oneOf = <Value extends string>(all: readonly Value[], text: string, otherwise: Value): Value =>
  all.find((one) => one === text) ?? otherwise;

interface LimitFormProps {
  readonly car: CarState;
  readonly limit: Limit;
  readonly own: CarLimit | undefined;
  readonly places: readonly { readonly value: string; readonly words: string }[];
}

export function LimitForm({ car, limit, own, places }: LimitFormProps) {
  const { journal, settings } = useApp();
  const [form, setForm] = useState<Form>({
    place: own?.place ?? EVERYWHERE,
    value: own?.value ?? "",
    unit: own?.unit ?? limit.unit,
    grade: own?.grade ?? "major",
    basis: own?.basis ?? "maker",
    source: own?.source ?? "",
  });
  const [problem, setProblem] = useState<string>();
  const set = (part: Partial<Form>): void => setForm({ ...form, ...part });
  const keep = (): void => {
    if (!isQuantity(limit.quantity)) return;
    const read = readTyped(form.value, {
      quantity: limit.quantity,
      unit: form.unit,
      decimalComma: settings.value.comma,
    });
    setProblem(read.ok ? undefined : read.problems.map(problemText).join(" "));
    if (!read.ok) return;
    const { grade, basis, source } = form;
    void keepLimit(journal, car.stream, {
      limit: limit.id,
      ...(form.place === EVERYWHERE ? {} : { place: form.place }),
      value: read.value.text,
      unit: read.value.unit,
      grade,
      basis,
      ...(source.trim() === "" ? {} : { source: source.trim() }),
    });
  };
  return (
    <form
      class="form"
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <Field
        id="limit-value"
        kind="number"
        label={t("limit.value")}
        value={form.value}
        onInput={(value) => set({ value })}
        {...(problem === undefined ? {} : { problem })}
      />
      <Field
        id="limit-unit"
        kind="select"
        label={t("limit.unit")}
        value={form.unit}
        onInput={(unit) => set({ unit })}
        options={unitChoices(limit)}
      />
      <Field
        id="limit-grade"
        kind="select"
        label={t("limit.grade")}
        value={form.grade}
        onInput={(text) => set({ grade: oneOf(GRADES, text, form.grade) })}
        options={choice(GRADES, (grade) => t(`grade.${grade}`))}
      />
      <Field
        id="limit-place"
        kind="select"
        label={t("limit.place")}
        value={form.place}
        onInput={(place) => set({ place })}
        options={[{ value: EVERYWHERE, words: t("limit.everywhere") }, ...places]}
      />
      <Field
        id="limit-basis"
        kind="select"
        label={t("limit.basis")}
        value={form.basis}
        onInput={(text) => set({ basis: oneOf(BASES, text, form.basis) })}
        options={choice(BASES, (basis) => t(`basis.${basis}`))}
      />
      <Field
        id="limit-source"
        kind="text"
        label={t("limit.source")}
        value={form.source}
        onInput={(source) => set({ source })}
      />
      <NextAction type="submit" words={t("limit.keep")} />
    </form>
  );
}
