/** Urgency: the matrix of consequence and likelihood, the order of a list with its reasons, and why nothing is added up. */
import {
  bandOf,
  type Consequence,
  compareKeys,
  type Likelihood,
  rankOf,
  type Urgency,
  urgencyOf,
} from "../../core/plan/index.js";
import { GRADES } from "../../core/terms/index.js";
import { caseOf, has, listHas, remarks, type Section } from "./section.js";
import {
  type At,
  asFields,
  fields,
  figure,
  list,
  name,
  optional,
  text,
  type ValueOf,
  whole,
  word,
  yesNo,
} from "./shape.js";

const SEVERITIES: readonly Consequence[] = [1, 2, 3, 4];
const LETTERS: readonly Likelihood[] = ["A", "B", "C", "D", "E"];

/** Nothing goes in: the whole matrix comes out. */
export const riskMatrix: Section = {
  name: "risk_matrix",
  isSection: (value) => ["rows", "bands", "codes"].some((key) => has(value, key)),
  answer: (value) => {
    const cells = LETTERS.flatMap((p) => SEVERITIES.map((s) => ({ code: `${s}${p}`, rank: rankOf(s, p) })));
    const ends = new Map<string, [number, number]>();
    for (const rank of cells.map((cell) => cell.rank).sort((a, b) => a - b))
      ends.set(bandOf(rank), [ends.get(bandOf(rank))?.[0] ?? rank, rank]);
    return {
      ...remarks(asFields(value) ?? {}),
      rows: Object.fromEntries(LETTERS.map((p) => [p, SEVERITIES.map((s) => rankOf(s, p))])),
      bands: Object.fromEntries(ends),
      codes: Object.fromEntries(cells.map(({ code, rank }) => [code, { rank, band: bandOf(rank) }])),
    };
  },
};

/** One finding of a list as it is read. */
export const FINDING = {
  id: name,
  what: optional(text),
  grade: word(...GRADES),
  consequence: word(...SEVERITIES),
  likelihood: word(...LETTERS),
  immobilise: optional(yesNo, false),
  exposure: optional(word(-1, 0, 1), 0 as const),
  close: optional(yesNo, false),
  limitPassed: optional(yesNo, false),
  dueKm: optional(figure),
  nextVisitKm: optional(figure),
  order: optional(whole, 0),
};

const DUE_NAMES = [
  "before the car is moved",
  "before the next drive",
  "within a stated distance or time",
  "next visit",
  "watch",
];
const BECAUSE: Readonly<Record<ReturnType<typeof compareKeys>["by"], string>> = {
  dangerous: "one is graded dangerous",
  due: "it falls due sooner",
  rank: "its risk number is lower (worse)",
  grade: "its grade is worse",
  left: "its limit is nearer",
  position: "it comes first on the way round the car",
  id: "its name comes first",
};

type Finding = { readonly [K in keyof typeof FINDING]: ValueOf<(typeof FINDING)[K]> };

/** The urgency of one finding of the list. */
export function urgencyIn(of: Finding): Urgency {
  const { dueKm, nextVisitKm } = of;
  const isKnown = dueKm !== undefined && nextVisitKm !== undefined && nextVisitKm > 0;
  return urgencyOf({
    id: of.id,
    grade: of.grade,
    consequence: of.consequence,
    likelihood: of.likelihood,
    mustStand: of.immobilise,
    exposure: of.exposure,
    close: of.close,
    limitPassed: of.limitPassed,
    position: of.order,
    ...(isKnown ? { left: dueKm / nextVisitKm } : {}),
  });
}

/** Findings without their like: an id given twice is told and the second left out. */
export function onlyOnce<T extends { readonly id: string }>(all: readonly T[], at: At): readonly T[] {
  const seen = new Set<string>();
  return all.filter(({ id }) => {
    const isNew = !seen.has(id);
    seen.add(id);
    if (!isNew) at.problems.push({ code: "plan-file.twice", where: { path: at.path }, params: { id } });
    return isNew;
  });
}

/** A list in urgency order, each with its figures and why it stands above the next. */
export function inOrder(list: readonly Finding[]) {
  const ordered = list
    .map((of) => ({ id: of.id, urgency: urgencyIn(of) }))
    .sort((a, b) => compareKeys(a.urgency.key, b.urgency.key).sign);
  const detail = ordered.map(({ id, urgency }) => ({
    id,
    sev: urgency.severity,
    p: urgency.likelihood,
    rank: urgency.key.rank,
    band: urgency.band,
    due: urgency.key.due,
    regrade: urgency.lookAgain,
  }));
  const reasons = ordered.slice(1).flatMap((below, i) => {
    const above = ordered[i];
    if (above === undefined) return [];
    const { by } = compareKeys(above.urgency.key, below.urgency.key);
    return [{ above: above.id, below: below.id, because: BECAUSE[by] }];
  });
  return { detail, reasons };
}

const priorityList = caseOf(fields({ input: list(fields(FINDING)) }), ({ input }, at, raw) => {
  const { detail, reasons } = inOrder(onlyOnce(input, at));
  return { dueNames: DUE_NAMES, input: raw["input"], expectedOrder: detail.map(({ id }) => id), detail, reasons };
});

export const priorityOrder: Section = {
  name: "priority_order",
  isSection: (value) => has(value, "input") || listHas(value, "grade", "consequence"),
  answer: (value, at) => priorityList(Array.isArray(value) ? { input: value } : value, at),
};

/** Severity factors of COM(2012)382 Annex I, made to rate haulage firms: seen in the document. */
const WEIGHTS = { dangerous: 40, minor: 1 };

export const sumOfWeights: Section = {
  name: "sum_weight_counterexample",
  isSection: (value) => has(value, "minors"),
  answer: caseOf(fields({ minors: whole }), ({ minors }) => {
    const urgency = (grade: "dangerous" | "minor") =>
      urgencyOf({
        id: grade,
        grade,
        consequence: 4,
        likelihood: "E",
        mustStand: false,
        exposure: 0,
        close: false,
        position: 0,
      });
    const isFirst = compareKeys(urgency("dangerous").key, urgency("minor").key).sign < 0;
    return {
      minors,
      minorSum: minors * WEIGHTS.minor,
      dangerous: WEIGHTS.dangerous,
      // whatever their number: each minor one is held against the dangerous one by itself
      first: isFirst ? "dangerous" : "minor",
    };
  }),
};
