/** When to look again, and at what, in the words of who reads. Pure; works out no figure. */
import type { DueAgain, LookRow, LookVisit, LookWanted } from "../../core/plan/index.js";
import type { Audience } from "../../core/terms/index.js";
import { convert } from "../../core/units/index.js";
import { plainDay } from "../texts/days.js";
import { figure } from "../texts/figures.js";
import { t } from "../texts/looks.js";
import type { Unread } from "./due-points.js";
import { jobSays } from "./job-words.js";
import { capital, faultSays, placeName, pointName } from "./knowledge.js";
import type { LookAbout, LooksNow } from "./looks-ground.js";
import { paramOf, to } from "./routes.js";
import { nameOf } from "./wearing-words.js";

type Unit = LooksNow["unit"];

/** A distance as the car's odometer counts, whole. */
export const wayIn = (km: number, unit: Unit): number =>
  unit === "km" ? Math.round(km) : Math.round(convert(km, "km", unit, "distance"));
const kmText = (km: number, unit: Unit): string => `${figure(wayIn(km, unit))} ${unit === "km" ? "km" : "mi"}`;

const either = (parts: readonly string[]): string =>
  parts.slice(1).reduce((one, other) => t("looks.or", { one, other }), parts[0] ?? "");

/** `at 64 000 km or by 10 Sep 2026`; how it stands before it, where it is due. */
export function whenText(visit: LookVisit, unit: Unit): string {
  const { at, after, by, byUse, stands } = visit;
  const stated = [
    ...(at === undefined ? [] : [t("looks.at", { km: kmText(at, unit) })]),
    ...(after ? [t("looks.after", { km: kmText(after.km, unit), day: plainDay(after.from) })] : []),
    ...(by === undefined ? [] : [t("looks.by", { day: plainDay(by) })]),
  ];
  const when = either(stated.length > 0 ? stated : byUse ? [t("looks.by", { day: plainDay(byUse.likely) })] : []);
  return stands === "ahead" ? capital(when) : t(`looks.${stands}`, { when });
}

/** What a distance comes to in days; nothing where there is none, and said where it is not known. */
export function paceText({ at, after, byUse }: LookVisit): string | undefined {
  if (at === undefined && after === undefined) return undefined;
  if (!byUse) return t("looks.pace.none");
  const { earliest, likely, latest } = byUse;
  const days = { likely: plainDay(likely) };
  if (earliest === undefined) return t("looks.pace", days);
  if (latest === undefined) return t("looks.pace.from", { ...days, earliest: plainDay(earliest) });
  return t("looks.pace.between", { ...days, earliest: plainDay(earliest), latest: plainDay(latest) });
}

/** What is looked at, as title and place; work by its name. */
export function lookNamed(
  about: LookAbout,
  { is }: Pick<LookWanted, "is">,
  who: Audience,
): { title: string; where: string } {
  const { known, fault, job, wearing, places } = about;
  const where = places.flatMap((place) => (place === "car" ? [] : [placeName(known, place)])).join(", ");
  if (fault) return { title: faultSays(known, fault.fault, fault.rules, who).says, where };
  if (wearing) return { title: wearing.title, where };
  if (job === undefined)
    return { title: where === "" ? t("looks.nuts.car") : t("looks.nuts", { places: where }), where: "" };
  return { title: jobSays(known, job, who).name, where: is === "recheck" || is === "job" ? where : "" };
}

export function titleOf(about: LookAbout, wanted: LookWanted, who: Audience): string {
  if (about.wearing) return nameOf(about.wearing);
  const { title, where } = lookNamed(about, wanted, who);
  return [title.replace(/\.$/, ""), where].filter(Boolean).join(", ");
}

/** `Front right, Float`. */
export const pointNamed = (known: LookAbout["known"], place: string, point: string): string =>
  [...(place === "car" ? [] : [placeName(known, place)]), pointName(known, point)].join(", ");

function whyText(row: LookRow, unit: Unit): string {
  if (row.basis === "trend") return t("looks.why.trend");
  const figures = either([
    ...(row.km === undefined ? [] : [kmText(row.km, unit)]),
    ...(row.months === undefined ? [] : [t("looks.months", { n: row.months })]),
  ]);
  return t(`looks.why.${row.basis}`, { figures });
}

/** Since when, of what is no finding. */
const sinceText = ({ is, from }: LookWanted): string =>
  t(is === "finding" ? "looks.job" : `looks.${is}`, { day: plainDay(from.on) });

/**
 * Why a point is due again and when, for who stands before it. What was found there is not told before it is looked at
 * today, so that nobody only nods.
 */
export function dueSays({ about, unit }: LooksNow, { look, visit }: DueAgain, who: Audience): string {
  const of = about.get(look.id);
  const told = of && !of.fault ? [titleOf(of, look, who), sinceText(look)] : [];
  return [
    visit ? whenText(visit, unit) : t("looks.unsaid"),
    ...(of?.fault ? [t("due.left", { day: plainDay(look.from.on) })] : told),
  ].join(". ");
}

/** What this round does not ask: the points of the nearest, which tell nothing of what was found there; without any, its name. */
export function beyondText({ about }: Pick<LooksNow, "about">, rest: readonly LookWanted[], who: Audience): string {
  const named = rest.flatMap((look) => {
    const of = about.get(look.id);
    if (!of) return [];
    const points = look.points.map(({ place, point }) => pointNamed(of.known, place, point));
    return [!of.wearing && points.length > 0 ? points.join(", ") : titleOf(of, look, who)];
  });
  const [what, ...others] = [...new Set(named)];
  if (what === undefined) return "";
  return t("due.rest", { what: others.length === 0 ? what : t("looks.more", { what, n: others.length }) });
}

/** What could not be read of earlier visits; nothing where all could. */
export const unreadTexts = ({ visits, plans }: Unread): readonly string[] => [
  ...(visits === "all" ? [t("due.unknown")] : visits > 0 ? [t("looks.left", { n: visits })] : []),
  ...(plans > 0 ? [t("due.plans", { n: plans })] : []),
];

/** Since when, why then, and at which points; whoever may not look at them is sent to the workshop. */
export function saysOf(
  about: LookAbout,
  wanted: LookWanted,
  why: readonly LookRow[],
  who: Audience,
  unit: Unit,
): string {
  const { known, fault } = about;
  const day = plainDay(wanted.from.on);
  const since = fault ? t("looks.finding", { grade: t(`grade.${fault.grade}`), day }) : sinceText(wanted);
  const points = [...new Set(wanted.points.map(({ point }) => pointName(known, point)))].join(", ");
  const mayLook = wanted.points.some(({ point }) => known.points.get(point)?.point.who.includes(who) ?? false);
  return [
    [since, ...why.map((row) => whyText(row, unit))].join(", "),
    ...(points === "" || wanted.is === "wear"
      ? []
      : [t(mayLook ? "looks.points" : "looks.points.workshop", { points })]),
  ].join(". ");
}

/** The sheets that ask for these points; nothing for a look without points. */
export function sheetsText({ about }: Pick<LooksNow, "about">, looks: readonly LookWanted[]): string | undefined {
  const titles = looks.flatMap(({ id, points }) =>
    points.flatMap(({ point }) => {
      const known = about.get(id)?.known;
      const sheet = known?.points.get(point)?.sheet;
      return known?.sheets.flatMap((one) => (one.sheet.id === sheet ? [one.texts.title] : [])) ?? [];
    }),
  );
  const sheets = [...new Set(titles)].sort();
  return sheets.length === 0 ? undefined : t("looks.sheets", { n: sheets.length, sheets: sheets.join(", ") });
}

/** What comes first, in a line: the nearest by name, the others counted. */
export function firstText(looks: LooksNow, visit: LookVisit, who: Audience): string {
  const [first, ...rest] = visit.looks;
  const about = first && looks.about.get(first.id);
  if (!first || !about) return "";
  const what = titleOf(about, first, who);
  return rest.length === 0 ? what : t("looks.more", { what, n: rest.length });
}

/** The finding, the part that wears, or the work; a check after some way stands where the car is handed back. */
export function whereFrom(looks: LooksNow, car: string, look: LookWanted): string | undefined {
  const about = looks.about.get(look.id);
  if (!about) return undefined;
  const visit = paramOf(about.visit);
  if (about.fault) return to("finding", { visit, fault: about.fault.fault, place: about.fault.place });
  if (about.wearing) return to("wear", { car, series: about.wearing.id, place: about.wearing.place });
  return look.is === "recheck"
    ? to("plan", { visit, page: "release" })
    : to("job", { visit, job: look.of, place: look.place });
}
