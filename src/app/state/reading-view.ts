/**
 * A reading being entered: what is typed, what is kept, the scale, and only after entry the limits and the last
 * value. Pure; understanding figures is core/units' work, judging is core/assess's.
 */
import type { JudgedLimit, JudgedReading } from "../../core/assess/contract.js";
import type { VisitState } from "../../core/record/index.js";
import type { ScaleEdge, ScaleInput } from "../../core/report/scale-terms.js";
import type { Field, Gauge } from "../../core/sheet/run.js";
import { type GaugeUsed, GRADES, type Problem, type ReplyValue } from "../../core/terms/index.js";
import {
  convert,
  convertStep,
  decimalsOf,
  isQuantity,
  plausible,
  type Quantity,
  type Reading,
  readTyped,
  show,
} from "../../core/units/index.js";
import { figure, t } from "../texts/reading.js";
import { unitShown, unitWords } from "../texts/units.js";
import { tradeUnits } from "./trade-units.js";

export type ReadingField = Extract<Field, { quantity: string }>;
type ReadingValue = Extract<ReplyValue, { type: "reading" }>;

/** What the person has set on the screen. */
export interface Entering {
  readonly typed: string;
  readonly unit: string;
  readonly gauge?: GaugeUsed;
  readonly comma: boolean;
}

const quantityOf = (field: Pick<ReadingField, "quantity">): Quantity => {
  if (!isQuantity(field.quantity)) throw new Error(`A built sheet holds the unknown quantity ${field.quantity}`);
  return field.quantity;
};

/** Units to choose from: the field's own first, then those the trade uses for the quantity. */
export function unitsOffered(field: ReadingField): readonly { readonly id: string; readonly words: string }[] {
  const all = tradeUnits(quantityOf(field));
  return [field.unit, ...all.filter((code) => code !== field.unit)].map((id) => ({ id, words: unitWords(id) }));
}

export type Typed =
  | { readonly is: "empty" }
  | { readonly is: "refused"; readonly problem: Problem }
  | { readonly is: "reading"; readonly reading: Reading; readonly unusual: boolean };

/** What the typed text means, and whether it lies outside the window in which readings of this kind usually lie. */
export function readEntry(field: ReadingField, { typed, unit, comma }: Entering): Typed {
  if (typed.trim() === "") return { is: "empty" };
  const read = readTyped(typed, { quantity: quantityOf(field), unit, decimalComma: comma });
  if (!read.ok) return { is: "refused", problem: read.problems[0] as Problem };
  const inWindow = plausible(convert(read.value.value, read.value.unit, field.unit, quantityOf(field)), field.window);
  return { is: "reading", reading: read.value, unusual: inWindow !== "inside" };
}

/** The window readings of this kind usually lie in, in the unit shown. */
export function windowIn(field: ReadingField, unit: string): readonly [number, number] {
  const [from, to] = field.window.map((edge) => convert(edge, field.unit, unit, quantityOf(field)));
  return [from ?? 0, to ?? 0];
}

/** How many readings the point asks for. */
export const shotsOf = (field: ReadingField): number => field.shots ?? 1;

/**
 * The reply after one more reading is kept. A point that asks for one reading takes the new one instead of the
 * old; one that asks for several adds it, in the unit of the first.
 */
export function withReading(
  field: ReadingField,
  before: ReadingValue | undefined,
  reading: Reading,
  gauge: GaugeUsed | undefined,
): ReadingValue {
  const used = gauge ? { gauge } : {};
  if (!before || shotsOf(field) === 1) return { type: "reading", values: [reading.text], unit: reading.unit, ...used };
  return {
    type: "reading",
    values: [...before.values, textIn(field, reading, before.unit)],
    unit: before.unit,
    ...(before.gauge ? { gauge: before.gauge } : used),
  };
}

/** Far finer than any gauge reads, without the row of digits a conversion leaves. */
const CONVERTED_DIGITS = 6;

/** A reading as it is kept among others in `unit`: as typed where that is its own. */
function textIn(field: ReadingField, reading: Reading, unit: string): string {
  if (reading.unit === unit) return reading.text;
  const value = convert(reading.value, reading.unit, unit, quantityOf(field));
  return String(Number(value.toPrecision(CONVERTED_DIGITS)));
}

/** The reply with another reading in the place of the one at `index`; a lone one brings its own unit and gauge. */
export function withReplaced(
  field: ReadingField,
  before: ReadingValue,
  index: number,
  reading: Reading,
  gauge: GaugeUsed | undefined,
): ReadingValue {
  if (before.values.length === 1) return withReading(field, undefined, reading, gauge);
  const values = before.values.map((text, place) => (place === index ? textIn(field, reading, before.unit) : text));
  return { ...before, values };
}

/** The reply without its reading at `index`; undefined when none is left. */
export function withoutReading(before: ReadingValue, index: number): ReadingValue | undefined {
  const values = before.values.filter((_, place) => place !== index);
  return values.length > 0 ? { ...before, values } : undefined;
}

/** A gauge of the shared files in the unit of a reading; undefined when it measures something else. */
export function gaugeUsed(
  field: Pick<ReadingField, "quantity">,
  gauge: Pick<Gauge, "id" | "quantity" | "unit" | "resolution" | "error"> | undefined,
  unit: string,
): GaugeUsed | undefined {
  if (!gauge || gauge.quantity !== field.quantity) return undefined;
  const quantity = quantityOf(field);
  return {
    id: gauge.id,
    resolution: convertStep(gauge.resolution, gauge.unit, unit, quantity),
    error: convertStep(gauge.error, gauge.unit, unit, quantity),
  };
}

/** The set-up error of a point in the unit shown. */
export const setUpIn = (field: ReadingField, error: number | undefined, unit: string): number | undefined =>
  error === undefined ? undefined : convertStep(error, field.unit, unit, quantityOf(field));

/** Numbers of a kept reply in the unit shown; a text no number can be read from is left out. */
export function numbersIn(field: ReadingField, value: ReadingValue | undefined, unit: string): readonly number[] {
  return (value?.values ?? []).flatMap((text) => {
    const read = value && readTyped(text, { quantity: quantityOf(field), unit: value.unit });
    return read?.ok ? [convert(read.value.value, read.value.unit, unit, quantityOf(field))] : [];
  });
}

/** The aggregate of the last earlier visit that has a reading here, in the unit shown: its mean. */
export function lastReading(
  field: ReadingField,
  earlier: readonly Pick<VisitState, "replies">[],
  key: string,
  unit: string,
): number | undefined {
  for (const visit of [...earlier].reverse()) {
    const value = visit.replies.get(key)?.standing.at(-1)?.value;
    const numbers = value?.type === "reading" ? numbersIn(field, value, unit) : [];
    if (numbers.length > 0) return numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
  }
  return undefined;
}

const digits = (step: number | undefined): number => Math.min(4, step ? decimalsOf(step) : 2);
const written = (value: number, decimals: number, comma: boolean): string => show(value, decimals, comma);

/** One kept reading for the list below the scale, then the lowest (or highest) and the mean. */
export function readingList(
  field: ReadingField,
  value: ReadingValue | undefined,
  { unit, gauge, comma }: Entering,
  worstIs: "lowest" | "highest",
) {
  const numbers = numbersIn(field, value, unit);
  const decimals = digits(gauge?.resolution);
  const asTyped = (index: number): string =>
    value?.unit === unit ? figure(value.values[index] ?? "") : written(numbers[index] ?? 0, decimals, comma);
  const rows = numbers.map((_, index) => ({
    id: String(index),
    value: asTyped(index),
    caption: String(index + 1),
    kind: "kept" as const,
  }));
  if (numbers.length < 2) return rows;
  const worst = worstIs === "lowest" ? Math.min(...numbers) : Math.max(...numbers);
  const mean = numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
  return [
    ...rows,
    { id: "worst", value: written(worst, decimals, comma), caption: t(`reading.${worstIs}`), kind: "derived" as const },
    { id: "mean", value: written(mean, decimals, comma), caption: t("reading.mean"), kind: "derived" as const },
  ];
}

/** The limit the scale shows: the one that says most (worst state first), of those over this reading. */
function limitShown(judged: JudgedReading | undefined): JudgedLimit | undefined {
  const weight = { past: 3, "too close": 2, inside: 1, clear: 0 } as const;
  return [...(judged?.limits ?? [])].sort((a, b) => weight[b.state] - weight[a.state])[0];
}

function edges(
  field: ReadingField,
  limit: JudgedLimit,
  unit: string,
  decimals: number,
  comma: boolean,
): readonly ScaleEdge[] {
  return GRADES.flatMap((grade) => {
    const edge = limit.bands[grade];
    if (edge === undefined) return [];
    const at = convert(edge, limit.unit, unit, quantityOf(field));
    const caption =
      grade === limit.grade || (grade === "major" && limit.grade === null)
        ? { caption: t("reading.limit", { grade: t(`grade.${grade}`) }) }
        : {};
    return [{ at, grade, text: written(at, decimals, comma), ...caption }];
  });
}

/** The scale: lamp over what is typed or judged; limits and the last visit's value only once all is entered. */
export function readingScale(
  field: ReadingField,
  entering: Entering,
  value: ReadingValue | undefined,
  judged: JudgedReading | undefined,
  last: number | undefined,
): ScaleInput {
  const { unit, gauge, comma } = entering;
  const quantity = quantityOf(field);
  const typed = readEntry(field, entering);
  const kept = numbersIn(field, value, unit);
  const entered = typed.is === "empty" && kept.length >= shotsOf(field);
  const limit = limitShown(judged);
  const decimals = digits(gauge?.resolution);
  const lit =
    typed.is === "reading"
      ? { value: convert(typed.reading.value, typed.reading.unit, unit, quantity), uncertainty: gauge?.error ?? 0 }
      : entered && judged
        ? {
            value: convert(judged.value, judged.unit, unit, quantity),
            uncertainty: convertStep(judged.uncertainty, judged.unit, unit, quantity),
          }
        : undefined;
  const [from, to] = windowIn(field, unit);
  return {
    direction: limit?.direction === "under" || limit?.direction === "at-or-under" ? "under" : "over",
    edges: entered && limit ? edges(field, limit, unit, decimals, comma) : [],
    ...(lit ? { reading: lit } : {}),
    ...(kept.length > 0 ? { kept } : {}),
    ...(entered && last !== undefined
      ? { nominal: { at: last, text: written(last, decimals, comma), caption: t("reading.last-short") } }
      : {}),
    window: from <= to ? [from, to] : [to, from],
    ...(gauge ? { resolution: gauge.resolution } : {}),
    limitsShown: entered,
    write: (one) => written(one, Math.max(decimalsOf(one), 0), comma),
  };
}

export interface Verdict {
  readonly title: string;
  readonly says: string;
  readonly tooClose: boolean;
  /** Limit ids, most telling first: where they come from can be opened. */
  readonly limit?: JudgedLimit;
}

/** What is said under the scale once the reading is judged. */
export function verdictOf(
  field: ReadingField,
  judged: JudgedReading | undefined,
  { unit, gauge, comma }: Entering,
): Verdict | undefined {
  if (!judged) return undefined;
  const quantity = quantityOf(field);
  const decimals = digits(gauge?.resolution);
  const value = written(convert(judged.value, judged.unit, unit, quantity), decimals, comma);
  const uncertainty = written(
    convertStep(judged.uncertainty, judged.unit, unit, quantity),
    Math.max(decimals, 2),
    comma,
  );
  const inside = t("reading.inside.says", { value, uncertainty, unit: unitShown(unit) });
  const limit = limitShown(judged);
  if (!limit) return { title: t("reading.no-limit"), says: inside, tooClose: false };
  const maybe = limit.applies === "not known" ? ` ${t("reading.maybe")}.` : "";
  if (limit.state === "too close" && limit.grade) {
    const edge = written(convert(limit.bands[limit.grade] ?? 0, limit.unit, unit, quantity), decimals, comma);
    return {
      title: t("reading.close"),
      says: `${t("reading.close.says", { value, uncertainty, edge })}${maybe}`,
      tooClose: true,
      limit,
    };
  }
  const title = limit.grade ? t("reading.past", { grade: t(`grade.${limit.grade}`) }) : t("reading.clear");
  return { title, says: `${inside}${maybe}`, tooClose: false, limit };
}
