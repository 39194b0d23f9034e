/**
 * What was said at a point last time, to be shown once it is answered anew: the newest earlier visit with a real answer,
 * as the rules take it (core/assess AS53). Pure; judges nothing and enters nothing.
 */
import { lookedOn, type VisitState } from "../../core/record/index.js";
import { celName, findField, type Point } from "../../core/sheet/run.js";
import type { Audience } from "../../core/terms/index.js";
import { day, t } from "../texts/season.js";
import type { Knowledge, KnownPoint } from "./knowledge.js";
import { ALL_FIELDS, type PointAt, sameValue, standingAt } from "./standing.js";
import { nonAnswerText, replyText } from "./telling.js";

export interface LastTime {
  /** Whose answer it is: another point's where a condition holds one against the other. */
  readonly point: string;
  readonly says: string;
}

interface Remembering {
  readonly known: Pick<Knowledge, "points" | "sheets">;
  readonly who: Audience;
  /** Oldest first. */
  readonly earlier: readonly VisitState[];
}

type Standing = ReturnType<typeof standingAt>;

/** Several that stood differently are all told. */
const either = (words: readonly string[]): string =>
  [...new Set(words)].reduce((one, other) => t("last-time.or", { one, other }));

/** The answers of one visit in one line; `not fitted` is one, other reasons for no answer are none. */
function saidIn({ replies }: VisitState, point: KnownPoint, at: PointAt, who: Audience): string | undefined {
  const non = standingAt(replies, at, ALL_FIELDS).flatMap(({ value }) =>
    value.type === "non-answer" && value.nonAnswer === "not-fitted" ? [nonAnswerText(value)] : [],
  );
  const words = (field: string, standing: Standing): readonly string[] =>
    standing
      .filter(({ value }, index) => standing.findIndex((one) => sameValue(one.value, value)) === index)
      .map(({ value }) => replyText(point, field, value, who));
  const said = Object.keys(point.point.fields).flatMap((field) => {
    const standing = standingAt(replies, at, field);
    return standing.length === 0 ? [] : [either(words(field, standing))];
  });
  return said.length > 0 ? said.join(", ") : non[0];
}

/** The newest visit that says anything of it, with the day. */
function lastSaid({ earlier, who }: Remembering, point: KnownPoint, ats: readonly PointAt[]) {
  for (const visit of [...earlier].reverse()) {
    for (const at of ats) {
      const reply = saidIn(visit, point, at, who);
      if (reply !== undefined) return { when: day(Date.parse(lookedOn(visit))), reply };
    }
  }
  return undefined;
}

const escaped = (name: string): string => name.replaceAll(".", "\\.");

/**
 * Points whose last answer a rule or a check holds directly against this one: what was closed in autumn against what is
 * opened in spring.
 */
export function heldAgainst({ points, sheets }: Remembering["known"], point: Point): readonly KnownPoint[] {
  const conditions = sheets.flatMap(({ sheet }) => [
    ...sheet.rules.flatMap(({ when }) => (when === undefined ? [] : [when])),
    ...(sheet.gates ?? []).flatMap(({ trips = [], clears = [] }) => [...trips, ...clears]),
  ]);
  const own = `(?<![\\w.])(?:${Object.keys(point.fields)
    .map((field) => escaped(celName(point, field)))
    .join("|")})(?!\\w)`;
  const against = new RegExp(
    `${own}\\s*[-<>=!,]+\\s*last\\(\\s*([\\w.]+)\\s*\\)|last\\(\\s*([\\w.]+)\\s*\\)\\s*[-<>=!,]+\\s*${own}`,
    "g",
  );
  const all = [...points.values()].map((one) => one.point);
  const found = conditions.flatMap((text) =>
    [...text.matchAll(against)].flatMap(([, after, before]) => findField(all, after ?? before ?? "")?.point ?? []),
  );
  return [...new Set(found)].flatMap((id) => (id === point.id ? [] : (points.get(id) ?? [])));
}

/** In the order: the point's own answer, then those held against it. */
export function lastTime(remembering: Remembering, at: PointAt): readonly LastTime[] {
  const { known, earlier } = remembering;
  const point = known.points.get(at.point);
  if (!point || earlier.length === 0) return [];
  const own = lastSaid(remembering, point, [at]);
  const others = heldAgainst(known, point.point).flatMap((other): readonly LastTime[] => {
    const { id, states } = other.point;
    // A point of the whole car is answered there, wherever the one stands that it is held against.
    const places = [...new Set([at.place, "car"])];
    const ats = places.flatMap((place) => states.map((state) => ({ point: id, place, state })));
    const said = lastSaid(remembering, other, ats);
    return said ? [{ point: id, says: t("last-time.other", { ...said, point: other.text.name }) }] : [];
  });
  return [...(own ? [{ point: at.point, says: t("last-time", own) }] : []), ...others];
}
