/** The dates of a plan as a strip of days: work, the lift, parts coming, the day it is ready; and the same in lines. Pure. */
import type { IsoDate, LiftUse, Planned, Schedule, WorkCalendar } from "../../core/plan/index.js";
import type { SpanDay, SpanInput, SpanMark, SpanRow } from "../../core/report/index.js";
import { dayWords, shortDay } from "../texts/days.js";
import { t } from "../texts/plan-dates.js";
import { daysBetween, plusDays } from "./day-sums.js";
import { dateNames, firstDay } from "./plan-dates-view.js";
import { expectedOf, type PartsKnown, type PlannedPart, plannedParts } from "./plan-part-view.js";

const DAY_MINUTES = 1440;
const WEEK = 7;
/** 1970-01-01 was a Thursday: 3 counted from Monday. */
const FIRST_WEEKDAY = 3;

/** Counted from Monday. */
const weekdayOf = (date: IsoDate): number => (daysBetween("1970-01-01", date) + FIRST_WEEKDAY) % WEEK;

const isShut = (date: IsoDate, { week, closed }: WorkCalendar): boolean =>
  (week[weekdayOf(date)]?.length ?? 0) === 0 || closed.some(({ from, to }) => from <= date && date <= to);

/** The day a part is to come, as the dates take it; undefined for what is here or has no day. */
export function comingOn(part: PlannedPart, today: IsoDate): IsoDate | undefined {
  const { inHand, promised, orderedOn } = part.work;
  if (inHand) return undefined;
  return promised ?? expectedOf(part, orderedOn ?? today)?.comes;
}

export interface SpanTold {
  readonly span: SpanInput;
  readonly lines: readonly { readonly id: string; readonly words: string }[];
}

/** Undefined while there is no date or no calendar. */
export function spanTold(known: PartsKnown, schedule: Schedule | undefined): SpanTold | undefined {
  const { calendar, today } = known.input;
  const finish = schedule?.finish;
  if (!schedule || !finish || !calendar) return undefined;
  const first = firstDay(known);
  const count = daysBetween(first, finish.date) + 1;
  const at = ({ date, minute }: { readonly date: IsoDate; readonly minute: number }): number =>
    daysBetween(first, date) + minute / DAY_MINUTES;
  const dated = new Set(schedule.activities.map(({ id }) => id));
  const coming = plannedParts(known)
    .filter(({ jobId }) => dated.has(jobId))
    .flatMap((part) => {
      const comes = comingOn(part, today);
      return comes !== undefined && first <= comes && comes <= finish.date ? [{ part, comes }] : [];
    });
  const marks: readonly SpanMark[] = [
    ...coming.map(
      ({ part, comes }): SpanMark => ({
        id: part.id,
        at: daysBetween(first, comes),
        text: t("dates.mark.part", { part: part.name, date: shortDay(comes) }),
        look: "arrival",
      }),
    ),
    { id: "ready", at: at(finish), text: t("dates.mark.ready", { date: shortDay(finish.date) }), look: "ready" },
    ...(first <= today && today <= finish.date
      ? [{ id: "today", at: daysBetween(first, today), text: t("dates.mark.today"), look: "today" as const }]
      : []),
  ];
  return {
    span: {
      days: Array.from({ length: count }, (_, i) => dayAt(plusDays(first, i), calendar)),
      rows: [...workRows(known, schedule.activities, at), ...liftRows(schedule.lifts, at)],
      marks,
    },
    lines: linesOf(known, schedule, coming, finish.date),
  };
}

const dayAt = (day: IsoDate, calendar: WorkCalendar): SpanDay => ({
  day,
  shut: isShut(day, calendar),
  ...(weekdayOf(day) === 0 ? { text: shortDay(day) } : {}),
});

type At = (time: Planned["start"]) => number;

/** As many rows as pieces of work go on at once: who does which is nobody's business here. */
function workRows({ input }: PartsKnown, activities: readonly Planned[], at: At): readonly SpanRow[] {
  const numbers = new Map(input.jobs.map(({ id }, i) => [id, String(i + 1)]));
  const rows: { readonly strokes: SpanRow["strokes"][number][]; until: number }[] = [];
  for (const { id, start, end } of activities) {
    const [from, to] = [at(start), at(end)];
    if (to <= from) continue;
    let row = rows.find(({ until }) => until <= from);
    if (!row) {
      row = { strokes: [], until: 0 };
      rows.push(row);
    }
    const text = numbers.get(id);
    row.strokes.push({ id, from, to, ...(text === undefined ? {} : { text }) });
    row.until = to;
  }
  return rows.map(({ strokes }, i) => ({
    id: `work ${i}`,
    text: rows.length === 1 ? t("dates.row.one") : t("dates.row", { n: i + 1 }),
    look: "person",
    strokes,
  }));
}

const liftRows = (lifts: readonly LiftUse[], at: At): readonly SpanRow[] =>
  lifts.length === 0
    ? []
    : [
        {
          id: "lift",
          text: t("dates.row.lift"),
          look: "lift",
          strokes: lifts.map(({ by, from, to }) => ({ id: by, from: at(from), to: at(to) })),
        },
      ];

function linesOf(
  known: PartsKnown,
  { activities }: Schedule,
  coming: readonly { readonly part: PlannedPart; readonly comes: IsoDate }[],
  ready: IsoDate,
): SpanTold["lines"] {
  const nameOf = dateNames(known);
  const jobs = new Set(known.input.jobs.map(({ id }) => id));
  const work = activities
    .filter(({ id }) => jobs.has(id))
    .map(({ id, start, end }) => ({
      id,
      on: start.date,
      words:
        start.date === end.date
          ? t("dates.line.day", { from: dayWords(start.date), job: nameOf(id) })
          : t("dates.line.job", { from: dayWords(start.date), to: dayWords(end.date), job: nameOf(id) }),
    }));
  const parts = coming.map(({ part, comes }) => ({
    id: part.id,
    on: comes,
    words: t("dates.line.part", { date: dayWords(comes), part: part.name }),
  }));
  return [
    ...[...parts, ...work]
      .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0))
      .map(({ id, words }) => ({ id, words })),
    { id: "ready", words: t("dates.line.ready", { date: dayWords(ready) }) },
  ];
}
