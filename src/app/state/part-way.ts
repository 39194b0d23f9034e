/** The way of a part: where it stands in words, what may be done next, what happened so far. Pure. */
import type { PartStands } from "../../core/plan/index.js";
import type { PartChecks, PartStepName } from "../../core/record/index.js";
import type { IsoDate } from "../../core/terms/index.js";
import { daysWords, dayWords, shortDay } from "../texts/days.js";
import { t } from "../texts/plan-parts.js";
import { beforeShut, type Expected, expectedOf, type PartStep, type PlannedPart } from "./plan-part-view.js";

const WAY = ["ordered", "promised", "arrived", "checked", "fitted"] as const;
type WayStep = (typeof WAY)[number];

/** How far along the way each place is; what was sent back is at its beginning again. */
const REACHED: Readonly<Record<PartStands["stands"], number>> = {
  ordered: 0,
  promised: 1,
  arrived: 2,
  passed: 3,
  failed: 3,
  fitted: 4,
  "sent-back": -1,
};

export interface WayMark {
  readonly id: WayStep;
  readonly words: string;
  readonly look: "done" | "here" | "open";
  readonly aside?: string;
  readonly spoken: string;
}

/** The steps of the order under way; an earlier order that was sent back is in the history only. */
export function wayOf({ stands, steps }: PlannedPart): readonly WayMark[] {
  const at = stands ? REACHED[stands.stands] : -1;
  const told = steps.map(({ value }) => value).sort(byDay);
  const begin = told.findLastIndex(({ step }) => step === "ordered");
  const order = told.slice(Math.max(0, begin));
  return WAY.map((id, i) => {
    const isTold = order.some(({ step }) => step === id);
    // A step behind that nobody told of is not drawn as done: it may have come from the shelf.
    const look = i === at ? "here" : i < at && isTold ? "done" : "open";
    const on = id === "promised" ? stands?.promised : order.findLast(({ step }) => step === id)?.on;
    return {
      id,
      words: t(`part-way.${id}`),
      look,
      ...(look === "open" || on === undefined ? {} : { aside: shortDay(on) }),
      spoken: t(
        look === "here"
          ? "part-way.now"
          : look === "done"
            ? "part-way.done"
            : i < at
              ? "part-way.untold"
              : "part-way.open",
      ),
    };
  });
}

const byDay = (a: PartStep, b: PartStep): number => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0);

/** What may be told of it next, the likeliest first. */
export function nextSteps(stands: PartStands | undefined): readonly PartStepName[] {
  switch (stands?.stands) {
    case "ordered":
      return ["promised", "arrived", "chased"];
    case "promised":
      return stands.overdueDays === undefined ? ["arrived", "chased", "promised"] : ["chased", "arrived", "promised"];
    case "arrived":
      return ["checked", "sent-back"];
    case "passed":
      return ["fitted", "checked", "sent-back"];
    case "failed":
      return ["sent-back", "checked"];
    case "fitted":
      return [];
    default:
      return ["ordered", "arrived"];
  }
}

export const wrongWords = (failed: readonly (keyof PartChecks)[]): string =>
  failed.map((check) => t(`part-wrong.${check}`)).join(", ");

/** Where it stands in one line, for lists. */
export function standsWords(stands: PartStands | undefined): string {
  if (!stands) return t("part-is.none");
  const { since, promised, next, overdueDays, failed } = stands;
  const ask = next === undefined ? [] : [t("part-is.ask", { date: shortDay(next) })];
  const over = overdueDays === undefined ? [] : [t("part-is.over", { n: overdueDays })];
  switch (stands.stands) {
    case "ordered":
      return [
        t("part-is.ordered", { date: shortDay(since) }),
        ...over,
        ...(next === undefined ? [t("part-is.no-day")] : ask),
      ].join(", ");
    case "promised":
      return [
        t("part-is.promised", { date: shortDay(promised ?? since) }),
        ...over,
        ...(over.length > 0 ? ask : []),
      ].join(", ");
    case "failed":
      return t("part-is.failed", { what: wrongWords(failed) });
    case "passed":
      return t("part-is.passed");
    default:
      return t(`part-is.${stands.stands}`, { date: shortDay(since) });
  }
}

/** Why it comes when it comes, in sentences. */
function whyThen({ through, supplier }: Expected): readonly string[] {
  if (!supplier) return [t("part-is.anybody")];
  return through.map(({ from, to }) => t("part-is.through", { who: supplier.name, days: daysWords(from, to) }));
}

const STILL_TO_ORDER: ReadonlySet<string> = new Set(["none", "sent-back"]);

/** When it is expected: if ordered today while it is not, else from the day it was ordered. */
export function expectedWords(part: PlannedPart, today: IsoDate): readonly string[] {
  const { stands } = part;
  const isOpen = STILL_TO_ORDER.has(stands?.stands ?? "none");
  if (!isOpen && stands?.stands !== "ordered" && stands?.stands !== "promised") return [];
  const ordered = isOpen ? today : (part.work.orderedOn ?? stands?.since ?? today);
  const expected = expectedOf(part, ordered);
  if (!expected) return [t("one-part.lead.none")];
  const date = dayWords(expected.comes);
  const says = t(isOpen ? "part-is.if-today" : "part-is.expected", { date, n: expected.leadDays });
  const beats = isOpen ? beforeShut(part, today) : undefined;
  return [
    `${[says, ...whyThen(expected)].join(", ")}.`,
    ...(beats && part.supplier
      ? [
          t("part-is.beats", {
            date: dayWords(beats.orderBy),
            who: part.supplier.name,
            days: daysWords(beats.closed.from, beats.closed.to),
          }),
        ]
      : []),
  ];
}

export interface ToldLine {
  readonly id: string;
  readonly title: string;
  readonly words?: string;
}

/** What happened so far, newest first. */
export const historyOf = ({ steps }: PlannedPart): readonly ToldLine[] =>
  [...steps]
    .sort((a, b) => byDay(a.value, b.value))
    .reverse()
    .map(({ id, value: { words, ...step } }) => ({
      id,
      title: toldWords(step),
      ...(words === undefined ? {} : { words }),
    }));

function toldWords({ step, on, promised, next, checks }: PartStep): string {
  const date = dayWords(on);
  const first = ((): string => {
    if (checks) {
      const failed = (["right", "counterpart", "count", "condition"] as const).filter((one) => checks[one] === false);
      return failed.length === 0
        ? t("part-way.told.passed", { date })
        : t("part-way.told.failed", { date, what: wrongWords(failed) });
    }
    if (step === "promised" && promised !== undefined)
      return t("part-way.told.promised", { promised: dayWords(promised), date });
    const words = t(`part-way.${step}`);
    return t("part-way.told", { step: words.charAt(0).toUpperCase() + words.slice(1), date });
  })();
  return next === undefined ? first : `${first}, ${t("part-way.told.next", { next: dayWords(next) })}`;
}
