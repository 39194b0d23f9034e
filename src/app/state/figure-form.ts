/**
 * The form of one figure in the limits book: what is typed, what is wrong with it and where, and what is kept of it.
 * Outside what is usual it asks first and keeps what the person says was checked. Pure; knows no record and no screen.
 */
import {
  FIGURE_TRUST,
  FIGURE_WAYS,
  FIGURE_WORDS_AT_MOST,
  type FigureFor,
  type FigureOdd,
  type FigureSource,
  type FigureTold,
  type FigureTrust,
  type FigureWay,
} from "../../core/record/index.js";
import { type CarLimit, type Limit, type OddFigure, oddFigure, type Point } from "../../core/sheet/run.js";
import { type Basis, GRADES, type Grade, levelOf } from "../../core/terms/index.js";
import { isQuantity, type Reading, readTyped } from "../../core/units/index.js";
import { t } from "../texts/limits.js";
import { problemText } from "../texts/problems.js";
import { sourceText } from "./figure-words.js";

/** Every such place: a figure without a place. */
export const EVERYWHERE = "";
/** Not chosen yet. */
const NOT_CHOSEN = "";

export interface EdgeTyped {
  readonly grade: Grade;
  readonly value: string;
}

/** What is in the boxes. */
export interface FigureForm {
  readonly edges: readonly EdgeTyped[];
  readonly unit: string;
  readonly place: string;
  readonly condition: string;
  readonly build: string;
  readonly engine: string;
  readonly from: string;
  readonly to: string;
  readonly trust: FigureTrust | "";
  readonly way: FigureWay | "";
  readonly title: string;
  readonly edition: string;
  readonly page: string;
  readonly who: string;
  readonly on: string;
  readonly why: string;
  /** The figures, as they were typed, of which the person said that they were checked twice. */
  readonly sureOf: string;
}

/** Boxes something can be wrong with. */
export type FigureBox = "unit" | "trust" | "way" | "why" | TextBox | `value-${number}` | `grade-${number}`;
type TextBox = "condition" | "build" | "engine" | "from" | "to" | "title" | "edition" | "page" | "who" | "on";

const firstGrade = (limit: Limit): Grade => (limit.bands.major === undefined ? mildest(limit) : "major");
const mildest = (limit: Limit): Grade => GRADES.find((grade) => limit.bands[grade] !== undefined) ?? "major";

/** The empty form. Only a quantity that is written in one way has its unit chosen. */
export const emptyFigure = (limit: Limit, units: readonly string[]): FigureForm => ({
  edges: [{ grade: firstGrade(limit), value: "" }],
  unit: units.length === 1 ? (units[0] ?? NOT_CHOSEN) : NOT_CHOSEN,
  place: EVERYWHERE,
  ...{ condition: "", build: "", engine: "", from: "", to: "", trust: NOT_CHOSEN, way: NOT_CHOSEN },
  ...{ title: "", edition: "", page: "", who: "", on: "", why: "", sureOf: "" },
});

/** The ways in which a figure of this trust comes. */
export function waysOf(trust: FigureTrust | ""): readonly FigureWay[] {
  if (trust === "measured" || trust === "practice") return [trust];
  return FIGURE_WAYS.filter((way) => way !== "measured" && way !== "practice");
}

/** Whose figure it is, and the way that goes with it where there is only one. */
export function withTrust(form: FigureForm, text: string): FigureForm {
  const trust = FIGURE_TRUST.find((one) => one === text) ?? NOT_CHOSEN;
  const ways = waysOf(trust);
  const way = ways.length === 1 ? (ways[0] ?? NOT_CHOSEN) : ways.find((one) => one === form.way);
  return { ...form, trust, way: way ?? NOT_CHOSEN };
}

/** The grade a further figure is offered for: the next severer one that is free, else any that is. */
export function withEdge(form: FigureForm): FigureForm {
  const taken = new Set(form.edges.map(({ grade }) => grade));
  const severest = Math.max(...form.edges.map(({ grade }) => levelOf(grade)));
  const free = GRADES.filter((grade) => !taken.has(grade));
  const next = free.find((grade) => levelOf(grade) > severest) ?? free.at(-1);
  return next === undefined ? form : { ...form, edges: [...form.edges, { grade: next, value: "" }] };
}

/** How far a book figure is to be believed, as every judgement shows it: a written figure of a maker, or less. */
export function basisOf({ trust, way }: Pick<FigureSource, "trust" | "way">): Basis {
  if (trust === "measured" || trust === "practice") return "practice";
  return way === "word" ? "unverified" : "maker";
}

export interface FigureRead {
  readonly problems: Readonly<Partial<Record<FigureBox, string>>>;
  /** As read, in the order of the edges; undefined where an edge could not be. */
  readonly readings: readonly (Reading | undefined)[];
  /** Edges outside what is usual, which the person has not said to be right. */
  readonly odd: readonly { readonly at: number; readonly reading: Reading; readonly odd: OddFigure }[];
  /** Said to be right though outside. */
  readonly isSure: boolean;
  /** There when nothing is wrong and nothing is left to ask. */
  readonly keep?: { readonly limit: CarLimit; readonly told: FigureTold; readonly why: string };
}

interface Around {
  readonly limit: Limit;
  /** Of the limit's own sheet. */
  readonly points: readonly Point[];
  readonly decimalComma: boolean;
  /** A figure stands for this place, which this one would replace. */
  readonly replaces: boolean;
}

/** What the deliberate answer is given for: any change of a figure asks anew. */
export const asTyped = (form: FigureForm): string => JSON.stringify([form.unit, form.edges]);

export function readFigure(form: FigureForm, around: Around): FigureRead {
  const problems: Partial<Record<FigureBox, string>> = {};
  const readings = readEdges(form, around, problems);
  checkSource(form, problems);
  if (around.replaces && form.why.trim() === "") problems.why = t("figure.why.wanted");
  for (const box of TEXTS)
    if (form[box].trim().length > FIGURE_WORDS_AT_MOST) problems[box] = t("figure.long", { n: FIGURE_WORDS_AT_MOST });
  if (form.why.trim().length > FIGURE_WORDS_AT_MOST) problems.why = t("figure.long", { n: FIGURE_WORDS_AT_MOST });
  const odd = readings.flatMap((reading, at) => {
    const grade = form.edges[at]?.grade ?? "major";
    const one = reading && oddFigure(reading, around.limit, around.points, grade);
    return one ? [{ at, reading, odd: one }] : [];
  });
  const isSure = odd.length > 0 && form.sureOf === asTyped(form);
  if (!isSure) for (const { at } of odd) problems[`value-${at}`] ??= t("odd.wanted");
  const keep = Object.keys(problems).length === 0 ? kept(form, around.limit, readings, odd[0]?.odd) : undefined;
  return { problems, readings, odd, isSure, ...(keep === undefined ? {} : { keep }) };
}

type Problems = Partial<Record<FigureBox, string>>;

function readEdges(
  form: FigureForm,
  { limit, decimalComma }: Around,
  problems: Problems,
): readonly (Reading | undefined)[] {
  const { quantity } = limit;
  if (!isQuantity(quantity)) return [];
  const readings = form.edges.map(({ value }, at): Reading | undefined => {
    // Whether it is a number can be told before its unit is: the sheet's stands in, and is never kept.
    const unit = form.unit === NOT_CHOSEN ? limit.unit : form.unit;
    const read = readTyped(value, { quantity, unit, decimalComma });
    const lacksUnit = form.unit === NOT_CHOSEN && !/[^\d\s.,/+\-−½¼¾⅛⅜⅝⅞⅓⅔]/u.test(value);
    if (read.ok) {
      if (lacksUnit) problems.unit = t("figure.unit.wanted");
      return lacksUnit ? undefined : read.value;
    }
    problems[`value-${at}`] = read.problems.map(problemText).join(" ");
    return undefined;
  });
  const [first] = readings;
  let milder: { readonly grade: Grade; readonly canonical: number } | undefined;
  const byGrade = form.edges.map((edge, at) => ({ ...edge, at })).sort((a, b) => levelOf(a.grade) - levelOf(b.grade));
  for (const { grade, at } of byGrade) {
    const reading = readings[at];
    if (milder?.grade === grade) problems[`grade-${at}`] = t("figure.grade.taken");
    if (!reading) continue;
    if (first && reading.unit !== first.unit) problems[`value-${at}`] = t("figure.unit.mixed");
    const rises = limit.direction.endsWith("over");
    if (
      milder &&
      milder.grade !== grade &&
      !(rises ? reading.canonical > milder.canonical : reading.canonical < milder.canonical)
    )
      problems[`value-${at}`] ??= t("figure.grade.order", { milder: t(`grade.${milder.grade}`) });
    milder = { grade, canonical: reading.canonical };
  }
  return readings;
}

/** Who it was, where nothing written says so. */
const ASKS_WHO: ReadonlySet<string> = new Set(["letter", "word"]);
const TEXTS = ["condition", "build", "engine", "from", "to", "title", "edition", "page", "who"] as const;
const DAY = /^\d{4}-\d{2}-\d{2}$/;

function checkSource({ trust, way, title, who, on }: FigureForm, problems: Problems): void {
  if (trust === NOT_CHOSEN) problems.trust = t("figure.trust.wanted");
  else if (way === NOT_CHOSEN) problems.way = t("figure.way.wanted");
  if (way === "book" && title.trim() === "") problems.title = t("figure.title.book.wanted");
  if (ASKS_WHO.has(way) && who.trim() === "") problems.who = t("figure.who.wanted");
  if (on !== "" && !(DAY.test(on) && Number.isFinite(Date.parse(on)))) problems.on = t("figure.on.odd");
}

/** Boxes of a way: what is typed into others belongs to no source of this kind. */
export const BOXES_OF: Readonly<Record<FigureWay, readonly ("title" | "edition" | "page" | "who" | "on")[]>> = {
  book: ["title", "edition", "page"],
  letter: ["who", "on"],
  word: ["who", "on"],
  stamped: ["title"],
  measured: ["title", "who", "on"],
  practice: [],
};

/** Only what is filled in. */
function filled<Name extends string>(form: Readonly<Record<Name, string>>, names: readonly Name[]) {
  const pairs = names.flatMap((name) => (form[name].trim() === "" ? [] : [[name, form[name].trim()] as const]));
  // Every pair has a name of the list.
  return Object.fromEntries(pairs) as Partial<Record<Name, string>>;
}

function kept(
  form: FigureForm,
  limit: Limit,
  readings: readonly (Reading | undefined)[],
  odd: OddFigure | undefined,
): FigureRead["keep"] {
  const [first] = readings;
  const { trust, way } = form;
  if (!first || trust === NOT_CHOSEN || way === NOT_CHOSEN) return undefined;
  const source: FigureSource = { trust, way, ...filled(form, BOXES_OF[way]) };
  const holdsFor: FigureFor = filled(form, ["build", "engine", "from", "to"]);
  const usual: FigureOdd | undefined = odd && { low: odd.low, high: odd.high, unit: first.unit };
  const told: FigureTold = {
    ...filled(form, ["condition"]),
    ...(Object.keys(holdsFor).length === 0 ? {} : { holdsFor }),
    source,
    ...(usual === undefined ? {} : { odd: usual }),
  };
  const [only] = form.edges;
  const edges =
    form.edges.length === 1 && only
      ? { value: first.text, grade: only.grade }
      : {
          bands: Object.fromEntries(
            form.edges.flatMap(({ grade }, at) => (readings[at] ? [[grade, readings[at].text]] : [])),
          ),
        };
  return {
    limit: {
      limit: limit.id,
      ...(form.place === EVERYWHERE ? {} : { place: form.place }),
      ...edges,
      unit: first.unit,
      basis: basisOf(source),
      source: sourceText(told),
    },
    told,
    why: form.why.trim(),
  };
}
