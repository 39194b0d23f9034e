/** Readings as judged, with what was typed, every edge over them and what they were last time. Judges nothing anew. */
import type { AssessInput, JudgedLimit, JudgedReading } from "../../assess/index.js";
import { GRADES, levelOf, type ReplyValue } from "../../terms/index.js";
import type { Gathered } from "./gather.js";
import type { ReadingTold } from "./input.js";

type Measured = Extract<ReplyValue, { type: "reading" }>;

export function readingsOf({ assessment, input, names }: Gathered): readonly ReadingTold[] {
  return assessment.readings.map((of): ReadingTold => {
    const typed = typedAt(input.replies, of);
    const last = lastOf(input, of);
    return {
      point: of.point,
      place: of.place,
      title: of.field === "" ? names.derived(of.point) : names.point(of.point),
      where: names.place(of.place),
      typed: typed.flatMap(({ values }) => values),
      ...(typed[0] === undefined ? {} : { typedUnit: typed[0].unit }),
      value: of.value,
      uncertainty: of.uncertainty,
      unit: of.unit,
      ...gaugeOf(typed[0]),
      limits: of.limits.flatMap((limit) => edgesOf(limit, of.value)),
      ...(last === undefined ? {} : { last }),
    };
  });
}

function typedAt(replies: AssessInput["replies"], of: JudgedReading): readonly Measured[] {
  return replies.flatMap(({ key, value }) =>
    key.point === of.point && key.place === of.place && key.field === of.field && value.type === "reading"
      ? [value]
      : [],
  );
}

const gaugeOf = (typed: Measured | undefined): Pick<ReadingTold, "gauge"> => {
  const gauge = typed?.gauge;
  return gauge === undefined
    ? {}
    : { gauge: `${gauge.id ?? ""} ${gauge.resolution} ± ${gauge.error} ${typed?.unit ?? ""}`.trim() };
};

/** The newest earlier visit that measured the same; its first figure as typed. */
function lastOf({ earlier }: AssessInput, of: JudgedReading): ReadingTold["last"] {
  const newestFirst = [...earlier].sort((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0));
  for (const visit of newestFirst) {
    const [typed] = typedAt(visit.replies, of);
    const value = typed?.values[0];
    if (typed && value !== undefined) return { on: visit.at.slice(0, 10), value, unit: typed.unit };
  }
  return undefined;
}

/** One row an edge. The edge of the grade it came out at says how; a graver one is clear; a milder one goes by the value. */
function edgesOf(limit: JudgedLimit, value: number): ReadingTold["limits"] {
  return GRADES.flatMap((grade) => {
    const edge = limit.bands[grade];
    if (edge === undefined) return [];
    const { direction, unit, basis, source, isDefault, applies } = limit;
    const by = levelOf(grade) - levelOf(limit.grade);
    const state =
      by > 0
        ? "clear"
        : by === 0
          ? limit.state === "too close"
            ? "too close"
            : "past"
          : beyond(value, edge, direction);
    return [{ limit: limit.limit, direction, edge, unit, grade, basis, source, isDefault, state, applies }];
  });
}

function beyond(value: number, edge: number, direction: JudgedLimit["direction"]): "past" | "clear" {
  const past =
    direction === "over"
      ? value > edge
      : direction === "at-or-over"
        ? value >= edge
        : direction === "under"
          ? value < edge
          : value <= edge;
  return past ? "past" : "clear";
}
