/** Readings, work list and what was not looked at as comma-separated values for a table program. Knows no sentence. */
import { type Cell, type CsvOptions, csvTable, numberIn } from "./csv-table.js";
import { unitText } from "./figures.js";
import type { DecisionTold, DoneTold, MoneyTold, ReadingTold } from "./input.js";
import type { HandoverModel, NumberedJob } from "./model.js";
import { isOfWeight } from "./unseen.js";
import { type HandoverKey, type HandoverWords, say } from "./words.js";

const heads = (words: HandoverWords, keys: readonly HandoverKey[]): readonly string[] =>
  keys.map((key) => words.texts[key]);

const READINGS = [
  ...(["csv.place", "csv.point", "csv.reading", "csv.where", "csv.value", "csv.uncertainty", "csv.unit"] as const),
  ...(["csv.typed", "csv.limit", "csv.direction", "csv.edge", "csv.edge-unit", "csv.grade", "csv.basis"] as const),
  ...(["csv.source", "csv.default", "csv.applies", "csv.state", "csv.last", "csv.last-unit", "csv.last-on"] as const),
];

/** A row for every limit over a reading, one row for a reading without any. Units as UCUM codes. */
export function readingsCsv({ readings }: HandoverModel, words: HandoverWords, options: CsvOptions = {}): string {
  const rows = readings.flatMap((of) => {
    const limits: readonly (ReadingTold["limits"][number] | undefined)[] =
      of.limits.length > 0 ? of.limits : [undefined];
    return limits.map((limit): readonly Cell[] => [
      ...[of.place, of.point, of.title, of.where, of.value, of.uncertainty, of.unit, typedCell(of)],
      ...[limit?.limit, limit?.direction, limit?.edge, limit?.unit, limit?.grade, limit?.basis, limit?.source],
      ...[limit && (limit.isDefault ? "default" : "own"), limit?.applies, limit?.state],
      ...[numberIn(of.last?.value), of.last?.unit, of.last?.on],
    ]);
  });
  return csvTable(heads(words, READINGS), rows, options);
}

/** What was typed, with its unit where it is another than that of the value. */
function typedCell({ typed, typedUnit, unit }: ReadingTold): string {
  const figures = typed.join(" / ");
  return typedUnit === undefined || typedUnit === unit || figures === ""
    ? figures
    : `${figures} ${unitText(typedUnit)}`;
}

const UNSEEN = [
  ...(["csv.place", "csv.point", "csv.sheet", "csv.what", "csv.where", "csv.kind", "csv.car-state"] as const),
  ...(["csv.looked", "csv.non-answer", "csv.reason", "csv.words", "csv.could", "csv.by-name"] as const),
];

/** Every point nobody looked at, also those that are only counted where a person reads. */
export function unseenCsv({ notSeen }: HandoverModel, words: HandoverWords, options: CsvOptions = {}): string {
  const rows = notSeen.map((one): readonly Cell[] => [
    ...[one.place, one.point, one.sheet, one.title, one.where, one.kind, one.state],
    ...[one.is, one.nonAnswer, one.reason, one.words, one.couldDecide, isOfWeight(one) ? "yes" : "no"],
  ]);
  return csvTable(heads(words, UNSEEN), rows, options);
}

const WORK = [
  ...(["csv.number", "csv.job", "csv.work", "csv.where", "csv.grade", "csv.findings", "csv.due"] as const),
  ...([
    "csv.distance",
    "csv.distance-unit",
    "csv.date",
    "csv.hours-low",
    "csv.hours-likely",
    "csv.hours-high",
  ] as const),
  ...(["csv.cost-low", "csv.cost-likely", "csv.cost-high", "csv.currency", "csv.first-low"] as const),
  ...(["csv.first-likely", "csv.first-high", "csv.parts", "csv.done", "csv.decision", "csv.decision-by"] as const),
  ...(["csv.reason", "csv.who", "csv.how", "csv.on"] as const),
  ...(["csv.done-by", "csv.before", "csv.after", "csv.second-look", "csv.second-who"] as const),
];
const HOUR = 60;
const NONE = [undefined, undefined, undefined] as const;

/** Rows of the work list, then of what is done and stands in it no more. A buyer's model holds no decision and no name. */
export function workCsv({ work, done, money }: HandoverModel, words: HandoverWords, options: CsvOptions = {}): string {
  const doneAt = new Map(done.map((one) => [one.id, one]));
  const listed = new Set(work.map(({ id }) => id));
  const rows = work.map((job): readonly Cell[] => [
    ...[job.number, job.id, job.title, job.where, job.grade, job.letters.join(" ")],
    ...[say(words, `by-when.${job.byWhen.class}`), job.byWhen.distance?.value, job.byWhen.distance?.unit],
    job.byWhen.date,
    ...(job.minutes?.map((minutes) => Number((minutes / HOUR).toFixed(2))) ?? NONE),
    ...moneyCells(job.cost, money),
    job.cost && money?.currency,
    ...moneyCells(job.first?.cost, money),
    job.parts.map(({ count, title }) => `${count} × ${title}`).join("; "),
    job.doneOn,
    ...decisionCells(job, words),
    ...doneCells(doneAt.get(job.id)),
  ]);
  const gone = done
    .filter(({ id }) => !listed.has(id))
    .map((one): readonly Cell[] => [
      ...[undefined, one.id, one.title, one.where],
      ...Array.from({ length: WORK.indexOf("csv.done") - WORK.indexOf("csv.where") - 1 }, () => undefined),
      one.on,
      ...Array.from({ length: WORK.indexOf("csv.done-by") - WORK.indexOf("csv.done") - 1 }, () => undefined),
      ...doneCells(one),
    ]);
  return csvTable(heads(words, WORK), [...rows, ...gone], options);
}

function doneCells(of: DoneTold | undefined): readonly Cell[] {
  if (of === undefined) return [undefined, undefined, undefined, undefined, undefined];
  const said = (which: "before" | "after"): string =>
    of.readings.flatMap((one) => (one[which] ? [`${one.title}: ${one[which].says}`] : [])).join("; ");
  return [of.by, said("before"), said("after"), of.look.is, of.look.who.join("; ")];
}

const moneyCells = (three: readonly number[] | undefined, money: MoneyTold | undefined): readonly Cell[] =>
  three && money ? three.map((minor) => minor / 10 ** money.minorDigits) : NONE;

const DECIDED: Readonly<Record<DecisionTold["is"], string>> = { now: "now", by: "by", no: "no", more: "more" };
function decisionCells({ decision }: NumberedJob, words: HandoverWords): readonly Cell[] {
  const { is, by, reason, who, how, on } = decision ?? {};
  return [is === undefined ? say(words, "decision.none") : DECIDED[is], by?.date, reason, who, how, on];
}
