/** One limit: its default with its basis, and the maker's figure for this car. */
import { useState } from "preact/hooks";
import type { CarState } from "../../core/record/index.js";
import type { CarLimit, Limit } from "../../core/sheet/run.js";
import { BASES, GRADES } from "../../core/terms/index.js";
import { isQuantity, readTyped } from "../../core/units/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { limit as keepLimit, noLimit } from "../state/car-acts.js";
import { bandsText, carLimitText, figuresOn, limitTitle, unitChoices } from "../state/limits-view.js";
import { type ParamsOf, to } from "../state/routes.js";
import { textsOf } from "../state/shelf.js";
import { t } from "../texts/index.js";
import { problemText } from "../texts/problems.js";
import { MissingScreen, Plain } from "./frame.js";
import { OpeningScreen } from "./lazy.js";
import { OnCar } from "./on-car.js";
import { useSheetFiles } from "./use-sheets.js";

interface Form {
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

function Figure({
  car,
  limit,
  own,
}: {
  readonly car: CarState;
  readonly limit: Limit;
  readonly own: CarLimit | undefined;
}) {
  const { journal, settings } = useApp();
  const [form, setForm] = useState<Form>({
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

function LimitBody({ car, params }: { readonly car: CarState; readonly params: ParamsOf<"limit"> }) {
  const { journal } = useApp();
  const read = useSheetFiles();
  if (!read) return <OpeningScreen />;
  const file = read.files.find(({ sheet }) => sheet.limits.some((one) => one.id === params.limit));
  const limit = file?.sheet.limits.find((one) => one.id === params.limit);
  if (!file || !limit) return <MissingScreen />;
  const figures = figuresOn(car, limit.id);
  const own = figures.find(({ value }) => value.place === undefined) ?? figures[0];
  return (
    <Plain back={t("limits.title")} href={to("limits", { car: params.car })} title={limitTitle(limit, textsOf(file))}>
      <Band heading={t("limit.default")} aside={t(`basis.${limit.basis}`)}>
        <p class="remark">{bandsText(limit, limit.bands)}</p>
        <p class="remark small">{limit.source}</p>
      </Band>
      <Band heading={t("limit.kept")}>
        {figures.map(({ key, value }) => (
          <ListRow
            key={key}
            title={carLimitText(limit, value)}
            second={[t(`basis.${value.basis}`), value.source].filter(Boolean).join(", ")}
            aside={value.place}
          />
        ))}
        <Figure key={own?.key ?? ""} car={car} limit={limit} own={own?.value} />
        {own && (
          <div class="acts">
            <Tool words={t("limit.drop")} onPress={() => void noLimit(journal, car.stream, own.key)} />
          </div>
        )}
        <p class="remark small">{t("limit.open-visits")}</p>
      </Band>
    </Plain>
  );
}

export const LimitScreen = ({ params }: { readonly params: ParamsOf<"limit"> }) => (
  <OnCar param={params.car}>{(car) => <LimitBody car={car} params={params} />}</OnCar>
);
