/** What was looked at and what was not, readings, cautions and gates, as a hand-over takes them. Pure. */
import type { JudgedLimit, JudgedReading } from "../../core/assess/contract.js";
import {
  awaitedIn,
  type CautionTold,
  causesOfCaution,
  causesOfGate,
  type GateTold,
  type LookedTold,
  type NotSeen,
  type ReadingTold,
  type SheetTold,
} from "../../core/report/index.js";
import { forbidsOf, GRADES, type GradeLevel, gradeOf, keyText, type ReplyValue } from "../../core/terms/index.js";
import { showTyped } from "../../core/units/index.js";
import { kindOfPlace } from "../texts/kinds.js";
import type { Telling } from "./because.js";
import { cautionLine, gateLine } from "./cautions-view.js";
import { mayBePassed, unprovenNote } from "./gates.js";
import { limitTold, whereOf } from "./handover-faults.js";
import type { HandoverGround } from "./handover-ground.js";
import { momentOf } from "./handover-moment.js";
import { capital, derivedName, placeName, plainWord, pointName, stateName } from "./knowledge.js";

export const lookedTold = ({ assessment }: HandoverGround): LookedTold => ({
  sound: assessment.points.filter(({ is }) => is === "sound").length,
});

/** What nobody answered, with what was said instead, and how much hangs on it. */
export function notSeenTold(ground: HandoverGround): readonly NotSeen[] {
  const { assessment, telling, visit } = ground;
  const { known } = telling;
  const isAwaited = awaitedIn(assessment);
  return assessment.points.flatMap(({ point, place, state, is, reason }): readonly NotSeen[] => {
    if (is !== "not-looked-at" && is !== "cannot-get-at") return [];
    const said = visit.replies.get(keyText({ point, place, state, field: "*" }))?.standing.at(-1)?.value;
    const non = said?.type === "non-answer" ? said : undefined;
    const why = non?.reason ?? reason;
    return [
      {
        point,
        place,
        title: pointName(known, point),
        where: whereOf(ground, place),
        state: stateName(known, state),
        is: is === "not-looked-at" ? "not-looked" : "cannot-reach",
        ...(non ? { nonAnswer: non.nonAnswer } : {}),
        ...(why === undefined ? {} : { reason: why }),
        ...(non?.words === undefined ? {} : { words: non.words }),
        ...weightTold(ground, point, place),
        ...(isAwaited({ point, place }) || ground.worth?.get(point)?.stops ? { awaited: true } : {}),
      },
    ];
  });
}

/** What the sheets make of a point: which asks it, at what kind of place, the worst it could have shown. */
function weightTold(
  { telling, tree, worth }: HandoverGround,
  point: string,
  place: string,
): Pick<NotSeen, "sheet" | "kind" | "couldDecide"> {
  const decides = worth?.get(point)?.decides;
  const kind = place === "car" ? undefined : tree.kindOf(place);
  const sheet = telling.known.points.get(point)?.sheet;
  return {
    ...(sheet === undefined ? {} : { sheet: sheetName({ telling }, sheet) }),
    ...(kind === undefined ? {} : { kind: kindOfPlace(kind) ?? capital(plainWord(kind)) }),
    ...(decides === undefined ? {} : { couldDecide: gradeOf(decides as GradeLevel) ?? "nothing" }),
  };
}

export const sheetsTold = ({ assessment, telling: { known }, visit }: HandoverGround): readonly SheetTold[] =>
  visit.sheets.map((sheet) => {
    const of = assessment.coverage.find((one) => one.sheet === sheet.id);
    return {
      id: sheet.id,
      name: known.sheets.find((one) => one.sheet.id === sheet.id)?.texts.title ?? sheet.label,
      label: sheet.label,
      edition: sheet.edition,
      answered: of?.answered ?? 0,
      of: of?.of ?? 0,
      notFitted: of?.nonAnswers["not-fitted"] ?? 0,
      notChecked: of?.notChecked ?? 0,
      notForThisLook: of?.notForThisLook ?? 0,
      // Of a sheet nobody judged nothing was seen.
      enough: of?.enough ?? false,
    };
  });

export const gatesTold = (ground: HandoverGround): readonly GateTold[] =>
  ground.assessment.gates.map((gate) => {
    const line = gateLine(ground.telling, gate, ground.visit);
    const unproven = mayBePassed(gate) ? unprovenNote(ground.visit.notes, gate.gate) : undefined;
    return {
      gate: gate.gate,
      title: line.title,
      guards: gate.guards,
      drives: gate.drives,
      state: gate.state,
      says: line.says,
      first: line.first.map(({ words }) => words),
      ...causesOfGate(gate, ground.assessment),
      otherwise: gate.otherwise,
      missing: gate.missingSheets.map((sheet) => sheetName(ground, sheet)),
      ...(unproven === undefined ? {} : { unproven }),
    };
  });

const sheetName = ({ telling: { known } }: { readonly telling: Pick<Telling, "known"> }, id: string): string =>
  known.sheets.find((one) => one.sheet.id === id)?.texts.title ?? id;

/** When the owner was told of a caution: on its own, or before a no to a job it stands over. The newest counts. */
function toldAtOf({ visit, said }: HandoverGround, caution: string): string | undefined {
  const alone = visit.told.filter(({ value }) => value.caution === caution).map(({ at }) => momentOf(at.wall));
  const deciding = [...said.decisions.values()].flat().flatMap(({ value: { warning } }) => {
    const isShown = warning?.shown.some(({ of, id }) => of === "caution" && id === caution);
    return warning && isShown ? [momentOf(Date.parse(warning.acknowledged))] : [];
  });
  return [...alone, ...deciding].sort((a, b) => Date.parse(a) - Date.parse(b)).at(-1);
}

export function cautionsTold(ground: HandoverGround): readonly CautionTold[] {
  const { assessment, telling, visit } = ground;
  return assessment.cautions.map((due): CautionTold => {
    const { caution, places, signal } = due;
    const { faults, onlyThose } = causesOfCaution(due, assessment);
    const { not, why, can, todo } = cautionLine(telling.known, caution, visit.told);
    const told = toldAtOf(ground, caution);
    const forbids = forbidsOf(caution);
    return {
      caution,
      signal,
      not,
      why,
      can,
      todo,
      places: places.filter((place) => place !== "car").map((place) => placeName(telling.known, place)),
      ...(forbids === undefined ? {} : { forbids }),
      faults: onlyThose ? faults : [],
      ...(told === undefined ? {} : { toldAt: told }),
    };
  });
}

/** The edge a reading passed or touches; of one inside every edge the mildest there is. */
function edgeOf(limit: JudgedLimit) {
  const grade = limit.grade ?? GRADES.find((one) => limit.bands[one] !== undefined);
  const edge = grade === undefined ? undefined : limit.bands[grade];
  return grade === undefined || edge === undefined ? undefined : { grade, edge };
}

type ReadingValue = Extract<ReplyValue, { readonly type: "reading" }>;

/** What stands at a point's field, in whichever car state it was read. */
function readingIn(
  replies: HandoverGround["visit"]["replies"],
  { point, place, field }: Pick<JudgedReading, "point" | "place" | "field">,
): ReadingValue | undefined {
  for (const { key, standing } of replies.values()) {
    const value = standing.at(-1)?.value;
    if (key.point === point && key.place === place && key.field === field && value?.type === "reading") return value;
  }
  return undefined;
}

function gaugeWords({ telling: { known } }: HandoverGround, { gauge, unit }: ReadingValue, tool: string | undefined) {
  const id = gauge?.id ?? tool;
  const name = id === undefined ? undefined : known.words.gauges[id];
  const figures = gauge ? `${gauge.resolution} ± ${gauge.error} ${unit}` : undefined;
  const words = [name, figures].filter((one) => one !== undefined).join(", ");
  return words === "" ? undefined : capital(words);
}

/** Readings as they were typed and as they were judged. */
export function readingsTold(ground: HandoverGround): readonly ReadingTold[] {
  const { assessment, telling, visit, earlier } = ground;
  return assessment.readings.flatMap((of): readonly ReadingTold[] => {
    const typed = readingIn(visit.replies, of);
    const point = telling.known.points.get(of.point)?.point;
    const gauge = typed && gaugeWords(ground, typed, point?.tool);
    const before = [...earlier]
      .reverse()
      .map((one) => ({ on: one.on.at(-1)?.value.slice(0, 10) ?? "", value: readingIn(one.replies, of) }))
      .find(({ value }) => value !== undefined);
    return [
      {
        point: of.point,
        place: of.place,
        title: of.field === "" ? derivedName(telling.known, of.point) : pointName(telling.known, of.point),
        where: whereOf(ground, of.place),
        // What was worked out was typed nowhere, and stands all the same.
        typed: (typed?.values ?? []).map((one) => showTyped(one, false)),
        ...(typed ? { typedUnit: typed.unit } : {}),
        value: of.value,
        uncertainty: of.uncertainty,
        unit: of.unit,
        ...(gauge === undefined ? {} : { gauge }),
        limits: of.limits.flatMap((limit) => {
          const edge = edgeOf(limit);
          if (!edge) return [];
          const told = { ...limitTold(ground, { ...limit, ...edge }), direction: limit.direction };
          return [{ ...told, state: limit.state, applies: limit.applies }];
        }),
        ...(before?.value
          ? { last: { on: before.on, value: before.value.values.join(" / "), unit: before.value.unit } }
          : {}),
      },
    ];
  });
}
