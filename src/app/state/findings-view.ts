/**
 * The findings as the screen shows them: counts by mark, one plain sentence, the worst one open, the rest as rows,
 * what was not looked at with its reason, what would settle more. Pure; the judgement comes from core/assess.
 */
import type { Assessment, Fault, PointState, Settle } from "../../core/assess/contract.js";
import { faultKey } from "../../core/record/index.js";
import { MARKS, type MarkKind } from "../../core/report/index.js";
import { t } from "../texts/index.js";
import { answerable, type Step, type Telling, traceOf, worstFirst } from "./because.js";
import { becauseSays, capital, faultSays, placeName, pointName, stateName } from "./knowledge.js";
import { byPoint, type PointRow, pointRow } from "./point-rows.js";
import { to } from "./routes.js";

/** A reply that would decide more than these is told by the first. */
const MOST_DECIDED = 3;

export interface FindingLine {
  readonly id: string;
  readonly fault: string;
  readonly place: string;
  readonly mark: MarkKind;
  readonly title: string;
  readonly second: string;
  readonly close: boolean;
  readonly aside?: string;
  readonly href: string;
}

export interface UnseenLine {
  readonly id: string;
  readonly mark: "not-looked" | "cannot-reach";
  readonly title: string;
  readonly second: string;
  readonly href: string;
}

export interface FindingsView {
  readonly counts: readonly { readonly mark: MarkKind; readonly count: number }[];
  readonly sentence: string;
  readonly notEnough: boolean;
  readonly anythingSeen: boolean;
  readonly lines: readonly FindingLine[];
  readonly unseen: readonly UnseenLine[];
  readonly sound: readonly {
    readonly id: string;
    readonly title: string;
    readonly second: string;
    readonly href: string;
  }[];
  /** One row a point, the gravest it would decide first. */
  readonly settle: readonly (PointRow & { readonly second: string })[];
}

/** What a fault says of itself beside its name: place, closeness, how sure, who changed the grade. */
export function faultSecond({ known }: Pick<Telling, "known">, fault: Fault): string {
  return [
    capital(placeName(known, fault.place)),
    ...(fault.close ? [t("findings.close")] : []),
    ...(fault.sure === "certain" ? [] : [t(`sure.${fault.sure}`)]),
    ...(fault.provisional ? [t("findings.provisional")] : []),
    ...(fault.byHand ? [t("findings.by-hand")] : []),
  ]
    .map(capital)
    .join(". ");
}

function line(telling: Telling, fault: Fault): FindingLine {
  const pictures = telling.pictures.filter(({ value }) => value.place === fault.place).length;
  return {
    id: faultKey(fault.fault, fault.place),
    fault: fault.fault,
    place: fault.place,
    mark: fault.grade,
    title: faultSays(telling.known, fault.fault, fault.rules, telling.who).says,
    second: faultSecond(telling, fault),
    close: fault.close,
    ...(pictures > 0 ? { aside: t("round.pictures", { n: pictures }) } : {}),
    href: to("finding", { visit: telling.visit, fault: fault.fault, place: fault.place }),
  };
}

const pointHref = ({ visit }: Telling, { point, place, state }: PointState): string =>
  to("point", { visit, point, place, state });

function unseen(telling: Telling, point: PointState): readonly UnseenLine[] {
  if (point.is !== "not-looked-at" && point.is !== "cannot-get-at") return [];
  const { known } = telling;
  return [
    {
      id: `${point.state} ${point.place} ${point.point}`,
      mark: point.is === "not-looked-at" ? "not-looked" : "cannot-reach",
      title: pointName(known, point.point),
      second: [
        capital(placeName(known, point.place)),
        point.reason ? t(`reason.${point.reason}`) : stateName(known, point.state),
      ].join(", "),
      href: pointHref(telling, point),
    },
  ];
}

function sentence(assessment: Assessment, notLooked: number, cannot: number): string {
  const count = (grade: string): number => assessment.faults.filter((fault) => fault.grade === grade).length;
  const first =
    count("dangerous") > 0
      ? t("findings.sentence.dangerous", { n: count("dangerous") })
      : count("major") > 0
        ? t("findings.sentence.major", { n: count("major") })
        : t("findings.sentence.lesser");
  const rest = [
    ...(notLooked > 0 ? [t("findings.sentence.unseen", { n: notLooked })] : []),
    ...(cannot > 0 ? [t("findings.sentence.cannot", { n: cannot })] : []),
  ];
  return [first, ...(rest.length > 0 ? rest : [t("findings.sentence.all")])].join(" ");
}

/** How many findings a reply would decide, each counted and named once; the first few by name. */
function decides({ known, who }: Telling, rules: readonly string[]): string {
  const names = [...new Set(rules.map((rule) => becauseSays(known, rule, who)))];
  return t("findings.decides", { n: names.length, which: names.slice(0, MOST_DECIDED).join(" · ") });
}

/** One point with every place it waits at, and all that replies to it would decide. */
function settleRow(telling: Telling, waiting: readonly [Settle, ...Settle[]]): FindingsView["settle"][number] {
  const row = pointRow(telling, waiting);
  const told = decides(
    telling,
    waiting.flatMap((one) => one.decides),
  );
  return { ...row, second: row.places === undefined ? told : `${row.places}. ${told}` };
}

/** Everything the findings screen shows, before any filter. */
export function findingsView(telling: Telling, assessment: Assessment): FindingsView {
  const { known } = telling;
  const lines = worstFirst(assessment.faults).map((fault) => line(telling, fault));
  const away = assessment.points.flatMap((point) => unseen(telling, point));
  const soundPoints = assessment.points.filter((point) => point.is === "sound");
  const counted = (mark: MarkKind): number =>
    mark === "sound"
      ? soundPoints.length
      : mark === "not-looked" || mark === "cannot-reach"
        ? away.filter((one) => one.mark === mark).length
        : lines.filter((one) => one.mark === mark).length;
  return {
    counts: MARKS.map((mark) => ({ mark, count: counted(mark) })),
    sentence: sentence(assessment, counted("not-looked"), counted("cannot-reach")),
    notEnough: assessment.coverage.some((sheet) => !sheet.enough),
    anythingSeen: lines.length > 0 || assessment.points.some((point) => point.is !== "not-looked-at"),
    lines,
    unseen: away,
    sound: soundPoints.map((point) => ({
      id: `${point.state} ${point.place} ${point.point}`,
      title: pointName(known, point.point),
      second: capital(placeName(known, point.place)),
      href: pointHref(telling, point),
    })),
    settle: byPoint(answerable(telling, assessment.settle)).map((waiting) => settleRow(telling, waiting)),
  };
}

export interface FindingView extends FindingLine {
  readonly cause?: string;
  readonly steps: readonly Step[];
  /** Where the reading that is too close is taken again. */
  readonly measureAgain?: string;
  readonly jobs: readonly { readonly id: string; readonly job: string; readonly place: string }[];
  readonly cautions: readonly string[];
  readonly differ: boolean;
  /** Which published item each rule answers to, or why ours goes beyond the nearest one; in words. */
  readonly answersTo: readonly string[];
  readonly byHand?: { readonly was: string; readonly reason: string };
  readonly grade: Fault["grade"];
}

function measureAgain(telling: Telling, assessment: Assessment, fault: Fault): string | undefined {
  if (!fault.close) return undefined;
  const own = assessment.findings.filter((one) => one.fault === fault.fault && one.close);
  for (const because of own.flatMap((one) => one.because)) {
    if (because.kind !== "reply" || because.value.type !== "reading") continue;
    const { point, place, state, field } = because.key;
    return to("reading", { visit: telling.visit, point, place, state, field });
  }
  return undefined;
}

/** One fault with its because; undefined when it no longer stands. */
export function findingView(
  telling: Telling,
  assessment: Assessment,
  fault: string,
  place: string,
  short = false,
): FindingView | undefined {
  const found = assessment.faults.find((one) => one.fault === fault && one.place === place);
  if (!found) return undefined;
  const { known, who } = telling;
  const { cause } = faultSays(known, fault, found.rules, who);
  const again = measureAgain(telling, assessment, found);
  const own = assessment.findings.filter((one) => one.fault === fault && one.place === place);
  const answersTo = [
    ...new Set(
      own.flatMap((one) => {
        const rule = known.rules.get(one.rule);
        const item = rule?.["answers-to"];
        if (rule === undefined || item === undefined) return [];
        return rule.stricter === undefined
          ? [t("finding.item", { item })]
          : [t("finding.item.stricter", { item, why: rule.stricter.replace(/\.$/, "") })];
      }),
    ),
  ];
  return {
    ...line(telling, found),
    grade: found.grade,
    steps: traceOf(telling, found, assessment.findings, short),
    jobs: found.jobs.map((job) => ({ id: job, job, place: found.place })),
    cautions: found.cautions,
    differ: own.some((one) => one.differ.length > 0),
    answersTo,
    ...(cause === undefined ? {} : { cause }),
    ...(again === undefined ? {} : { measureAgain: again }),
    ...(found.byHand ? { byHand: { was: t(`grade.${found.byHand.was}`), reason: found.byHand.reason } } : {}),
  };
}

/** The grade the rules gave, whatever was set by hand. */
export const rulesGrade = (
  assessment: Assessment,
  view: Pick<FindingView, "fault" | "place" | "grade">,
): Fault["grade"] =>
  assessment.faults.find((one) => one.fault === view.fault && one.place === view.place)?.byHand?.was ?? view.grade;
