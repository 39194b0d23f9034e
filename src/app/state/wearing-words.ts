/** What is wearing, told in words: last value, rate, from when to when, by when to look again. Pure. */
import { DAY_MS } from "../../core/terms/index.js";
import type { Along, Break, Edge, Reach, Seen } from "../../core/trend/index.js";
import { day, figure, month, rounded } from "../texts/figures.js";
import { unitShown } from "../texts/units.js";
import { t } from "../texts/wearing.js";
import { jobSays } from "./job-words.js";
import type { Knowledge } from "./knowledge.js";
import type { Wearing, WornReading } from "./wearing-view.js";
import { figureText, valueText } from "./worked-figures.js";

/** Noon, so that the day is the same wherever the phone is. */
const wallOf = (days: number): number => Math.floor(days) * DAY_MS + DAY_MS / 2;
/** A moment of a visit as its day. */
export const isoDay = (iso: string): string => day(Date.parse(iso));
export const dateOf = (days: number): string => day(wallOf(days));
/** Further ahead than this, in days, the year is enough. */
const YEARS_FROM = 1095;

/** A time ahead: month and year, far ahead the year. */
const ahead = (days: number, from: number): string =>
  days - from > YEARS_FROM ? String(new Date(wallOf(days)).getUTCFullYear()) : month(wallOf(days));

/** `Lining, thinner end, front left, inner pad`. */
export const nameOf = ({ title, where }: Pick<Wearing, "title" | "where">): string =>
  where === "" ? title : `${title}, ${where.charAt(0).toLowerCase()}${where.slice(1)}`;

const edgeFigure = ({ at }: Edge, unit: string): string => figureText(at, unit);
export const readingText = ({ value, uncertainty }: Seen, unit: string): string => valueText(value, uncertainty, unit);
export const newestOf = ({ series }: Wearing): Seen | undefined => series.runs.at(-1)?.at(-1);

/** `between Mar 2028 and Aug 2029`, `in 2031`, or what can be told of it. */
function whenOf({ days }: Along, from: number): string {
  const { earliest, latest, likely } = days;
  const start = earliest ?? likely;
  if (start === undefined) return "";
  const first = ahead(start, from);
  if (latest === undefined) return t("wear.from", { from: first });
  const last = ahead(latest, from);
  return first === last ? t("wear.in", { from: first }) : t("wear.between", { from: first, to: last });
}

/** To the nearest hundred: nobody reads a forecast to the kilometre. */
const kmText = (km: number): string => rounded(Math.round(km / 100) * 100, 0);

/** The stretch as kilometres, of what goes by the odometer. */
function kmOf({ axis, earliest, latest }: Along): string | undefined {
  if (axis !== "use" || earliest === undefined) return undefined;
  return latest === undefined
    ? t("wear.km.from", { from: kmText(earliest) })
    : t("wear.km", { from: kmText(earliest), to: kmText(latest) });
}

export const rateText = ({ axis, rate }: Along, unit: string): string =>
  t(`wear.rate.${axis}`, { rate: figureText(Number(Math.abs(rate).toPrecision(2)), unit) });

export const lookText = ({ look }: Along): string | undefined =>
  look?.day === undefined
    ? undefined
    : look.km === undefined
      ? t("wear.look", { date: month(wallOf(look.day)) })
      : t("wear.look.km", { date: month(wallOf(look.day)), km: kmText(look.km) });

/** When one edge is reached, in one sentence. */
export function reachText({ edge, is, close, along }: Reach, unit: string, from: number): string {
  const params = { edge: edgeFigure(edge, unit), grade: t(`grade.${edge.grade}`) };
  if (is === "past") return t(close ? "wear.past.close" : "wear.past", params);
  if (close) return t("wear.close", params);
  if (is === "alone" || !along) return t("wear.alone");
  if (is === "reaches") return t("wear.reaches", { ...params, when: whenOf(along, from) });
  const { earliest } = along.days;
  const before = earliest === undefined ? "" : `: ${t("wear.not-before", { from: ahead(earliest, from) })}`;
  return `${t("wear.not-yet")}${before}`;
}

/** That a milder edge is passed already, while the severe ones lie ahead. */
export const withinText = ({ series: { within }, unit }: Wearing): string | undefined =>
  within && t("wear.past", { edge: edgeFigure(within, unit), grade: t(`grade.${within.grade}`) });

const sentence = (parts: readonly (string | undefined)[]): string =>
  parts.flatMap((one) => (one === undefined || one === "" ? [] : [`${one}.`])).join(" ");

/** The line of a part in the list: last value, rate, when it is reached, the next look. */
export function lineText(one: Wearing): string {
  const newest = newestOf(one);
  if (!newest) return "";
  const { reach, passed, unit } = one;
  const { along } = reach;
  return sentence([
    t("wear.last", { value: readingText(newest, unit), date: dateOf(newest.day) }),
    along && reach.is === "reaches" ? rateText(along, unit) : undefined,
    passed && reachText(passed, unit, newest.day),
    withinText(one),
    reachText(reach, unit, newest.day),
    passed ? undefined : along && lookText(along),
  ]);
}

/** What the band on the car's page says: `Reaches 1.24 mm between 2030 and 2036. Look again by Aug 2028.` */
export function shortText(one: Wearing): string {
  const { reach, passed, unit } = one;
  const newest = newestOf(one);
  if (!newest) return "";
  if (passed || !reach.along || reach.is !== "reaches" || reach.close)
    return sentence([
      reachText(passed ?? reach, unit, newest.day),
      passed ? undefined : reach.along && lookText(reach.along),
    ]);
  const reaches = t("wear.reaches.short", {
    edge: edgeFigure(reach.edge, unit),
    when: whenOf(reach.along, newest.day),
  });
  return sentence([reaches, lookText(reach.along)]);
}

/** Everything that is told of one edge, line by line. */
export function reachLines(reach: Reach, unit: string, from: number): readonly string[] {
  const { along, noOdometer, later, edge } = reach;
  const km = along && kmOf(along);
  const axis = noOdometer
    ? t(`wear.odometer.${noOdometer}`)
    : later
      ? t("wear.axis.both")
      : along && t(`wear.axis.${along.axis}`);
  const isTold = reach.is === "reaches" && along !== undefined;
  return [
    reachText(reach, unit, from),
    ...(isTold && along.days.likely !== undefined ? [t("wear.likely", { at: ahead(along.days.likely, from) })] : []),
    ...(isTold && km !== undefined ? [km] : []),
    ...(isTold && along.far ? [t("wear.far")] : []),
    ...(along && axis !== undefined ? [axis] : []),
    t("wear.limit", {
      grade: t(`grade.${edge.grade}`),
      edge: edgeFigure(edge, unit),
      basis: [t(`basis.${edge.basis}`), ...(edge.isDefault ? [t("basis.default")] : [])].join(", "),
    }),
  ];
}

export function breakText(known: Knowledge, one: Break, unit: string): string {
  if (one.kind === "unsaid") return t("wear.break.unsaid", { by: figureText(one.back, unit) });
  if (one.kind === "job-done")
    return t("wear.break.job-done", { job: jobSays(known, one.job ?? "", "technician").name });
  return t(`wear.break.${one.kind}`);
}

/** What was typed at one visit, and by which gauge. */
export function typedText(known: Knowledge, { typed }: WornReading): string {
  const figures = typed.map(({ values, unit }) => `${values.map(figure).join(" / ")} ${unitShown(unit)}`.trim());
  const gauges = [...new Set(typed.flatMap(({ gauge }) => gauge?.id ?? []))].map((id) => known.words.gauges[id] ?? id);
  const said = figures.join(", ");
  return gauges.length === 0 ? said : t("wear.reading.by", { typed: said, gauge: gauges.join(", ") });
}

/** The chart for who can't see it: every reading, every new series, and when the limit is reached. */
export function chartText(one: Wearing): string {
  const { series, unit, reach } = one;
  const readings = series.runs
    .map((run) =>
      run.map((seen) => t("wear.chart.reading", { value: readingText(seen, unit), date: dateOf(seen.day) })).join(", "),
    )
    .join(`, ${t("wear.chart.break")}: `);
  return t("wear.chart", {
    title: nameOf(one),
    readings,
    says: reachText(reach, unit, newestOf(one)?.day ?? 0),
  });
}
