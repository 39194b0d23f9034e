/** Entering a figure into the car's limits book: its edges and unit, what it holds for, where it comes from. */
import { useState } from "preact/hooks";
import { type CarState, FIGURE_TRUST, limitKey } from "../../core/record/index.js";
import type { Limit, Point } from "../../core/sheet/run.js";
import { GRADES } from "../../core/terms/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { Notice } from "../parts/notice.js";
import { useApp } from "../state/app.js";
import {
  asTyped,
  EVERYWHERE,
  emptyFigure,
  type FigureBox,
  type FigureForm,
  readFigure,
  withEdge,
} from "../state/figure-form.js";
import { otherUnit } from "../state/figure-words.js";
import { keepFigure } from "../state/limit-acts.js";
import type { PlaceLine } from "../state/limit-book.js";
import { figuresOn, unitChoices } from "../state/limits-view.js";
import { figure, t } from "../texts/limits.js";
import { unitShown } from "../texts/units.js";
import { type BoxesProps, Condition, HoldsFor, Source } from "./limit-form-source.js";
import { OddNotice } from "./limit-odd.js";

interface LimitFormProps {
  readonly car: CarState;
  readonly limit: Limit;
  /** Of the limit's own sheet. */
  readonly points: readonly Point[];
  readonly lines: readonly PlaceLine[];
  readonly places: readonly { readonly value: string; readonly words: string }[];
  readonly onKept: () => void;
}

/** The figure itself: one box an edge, its grade beside it, and what the same is in the other unit. */
function Edges({
  form,
  set,
  wrong,
  limit,
  says,
}: BoxesProps & { readonly limit: Limit; readonly says: readonly string[] }) {
  const change = (at: number, part: Partial<FigureForm["edges"][number]>): void =>
    set({ edges: form.edges.map((edge, index) => (index === at ? { ...edge, ...part } : edge)) });
  return (
    <>
      {form.edges.map(({ grade, value }, at) => (
        <fieldset key={at} class="bare-group" aria-label={`${t("figure.value")}: ${t(`grade.${grade}`)}`}>
          <Field
            id={`figure-value-${at}`}
            kind="number"
            label={t("figure.value")}
            help={says[at] || (at === 0 ? t("figure.value.help") : undefined)}
            value={value}
            onInput={(next) => change(at, { value: next })}
            required
            {...wrong(`value-${at}`)}
          />
          {at === 0 && (
            <Field
              id="figure-unit"
              kind="select"
              label={t("figure.unit")}
              value={form.unit}
              onInput={(unit) => set({ unit })}
              options={[
                ...(form.unit === "" ? [{ value: "", words: t("figure.unit.choose") }] : []),
                ...unitChoices(limit),
              ]}
              required
              {...wrong("unit")}
            />
          )}
          <Field
            id={`figure-grade-${at}`}
            kind="select"
            label={t("figure.grade")}
            value={grade}
            onInput={(text) => change(at, { grade: GRADES.find((one) => one === text) ?? grade })}
            options={GRADES.map((one) => ({ value: one, words: t(`grade.${one}`) }))}
            {...wrong(`grade-${at}`)}
          />
          {at > 0 && (
            <div class="figure-acts">
              <Tool
                words={t("figure.less", { grade: t(`grade.${grade}`) })}
                onPress={() => set({ edges: form.edges.filter((_, index) => index !== at) })}
              />
            </div>
          )}
        </fieldset>
      ))}
      {form.edges.length < GRADES.length && (
        <div class="figure-acts">
          <Tool words={t("figure.more")} onPress={() => set(withEdge(form))} />
        </div>
      )}
    </>
  );
}

/** That what stands there is trusted more, before it is replaced. */
function LessTrusted({ form, standing }: { readonly form: FigureForm; readonly standing: PlaceLine | undefined }) {
  const stands = standing?.standing.at(-1)?.said.told?.source.trust;
  if (stands === undefined || form.trust === "") return null;
  if (FIGURE_TRUST.indexOf(form.trust) <= FIGURE_TRUST.indexOf(stands)) return null;
  const says = { stands: t(`figure.trust.${stands}`), own: t(`figure.trust.${form.trust}`) };
  return <Notice kind="plain" title={t("figure.less-trusted")} says={t("figure.less-trusted.says", says)} />;
}

export function LimitForm({ car, limit, points, lines, places, onKept }: LimitFormProps) {
  const { journal, settings } = useApp();
  const units = unitChoices(limit).map(({ value }) => value);
  const [form, setForm] = useState<FigureForm>(() => emptyFigure(limit, units));
  const [tried, setTried] = useState(false);
  const set = (part: Partial<FigureForm>): void => setForm({ ...form, ...part });
  const key = limitKey({
    limit: limit.id,
    unit: "",
    basis: "maker",
    ...(form.place === EVERYWHERE ? {} : { place: form.place }),
  });
  const replaces = figuresOn(car, limit.id).some((one) => one.key === key);
  const read = readFigure(form, { limit, points, decimalComma: settings.value.comma, replaces });
  const wrong: BoxesProps["wrong"] = (box) => {
    const problem = tried ? read.problems[box] : undefined;
    return problem === undefined ? {} : { problem };
  };
  const boxes: BoxesProps = { form, set, wrong };
  const says = read.readings.map((one) => {
    const other = one && otherUnit(limit, one.value, one.unit);
    return one && other ? t("figure.is", { value: figure(one.text), unit: unitShown(one.unit), other }) : "";
  });
  const keep = (): void => {
    setTried(true);
    if (read.keep)
      void keepFigure(journal, car.stream, read.keep.limit, read.keep.told, read.keep.why).then(
        (kept) => kept && onKept(),
      );
    else focusFirst(read.problems);
  };
  return (
    <form
      class="form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <Edges {...boxes} limit={limit} says={says} />
      <OddNotice read={read} onSure={(isSure) => set({ sureOf: isSure ? asTyped(form) : "" })} />
      {places.length > 0 && (
        <Field
          id="figure-place"
          kind="select"
          label={t("figure.place")}
          value={form.place}
          onInput={(place) => set({ place })}
          options={[{ value: EVERYWHERE, words: t("limit.everywhere") }, ...places]}
        />
      )}
      <Condition {...boxes} />
      <HoldsFor {...boxes} />
      <Source {...boxes} onForm={setForm} />
      <LessTrusted form={form} standing={lines.find((line) => line.key === key)} />
      {replaces && (
        <Field
          id="figure-why"
          kind="text"
          label={t("figure.why")}
          value={form.why}
          onInput={(why) => set({ why })}
          required
          {...wrong("why")}
        />
      )}
      <NextAction type="submit" words={t("figure.keep")} />
    </form>
  );
}

/** The first box with something wrong, in the order of the page. */
function focusFirst(problems: Readonly<Partial<Record<FigureBox, string>>>): void {
  const boxes = new Set(Object.keys(problems).map((box) => `figure-${box}`));
  const all = [...document.querySelectorAll<HTMLElement>(".form [id^='figure-']")];
  all.find(({ id }) => boxes.has(id))?.focus();
}
