/** Reads a visit file (`leadlamp-visit/1`) leniently: what it cannot take it sets aside and tells. Touches no disk. */
import type { BuiltCommon, BuiltSheet, CommonTexts } from "../sheet/run.js";
import { AUDIENCES, fail, ok, type Problem, problem, type Result } from "../terms/index.js";
import { unitOf } from "../units/index.js";
import { complaintsIn } from "./complaints.js";
import type { AssessInput, EarlierVisit, StandingReply } from "./contract.js";
import { plainId } from "./model.js";
import { readCar } from "./visit-car.js";
import { type Names, readReply } from "./visit-replies.js";
import { asFields, type Fields, listIn, type Noting, note, numberOf, shown, textOf, wordOf } from "./visit-shape.js";

export interface VisitFile {
  readonly input: AssessInput;
  /** Every reply, fact or figure set aside, with where and why. Not empty: the file is faulty (exit 1). */
  readonly problems: readonly Problem[];
}

const FORMAT = "leadlamp-visit/1";

/**
 * `data` is the parsed JSON. Fails only when it is no visit file at all. With `texts`, complaints are known by the
 * words of that language as well as by id.
 */
export function readVisitFile(
  data: unknown,
  common: BuiltCommon,
  sheets: readonly BuiltSheet[],
  texts?: CommonTexts,
): Result<VisitFile> {
  const of = asFields(data);
  if (of === undefined || of["format"] !== FORMAT)
    return fail(
      problem("visit.format", { path: "format" }, { found: shown(of?.["format"] ?? data), expected: [FORMAT] }),
    );
  const at: Noting = { problems: [] };
  const limits = sheets.flatMap((s) => s.sheet.limits);
  const { car, tree, places } = readCar(of["car"], common.common, limits, at);
  const names: Names = {
    points: new Map(sheets.flatMap((s) => s.sheet.points.map((p) => [plainId(p.id), p]))),
    tree,
    places,
  };
  const who = wordOf(of["who"], AUDIENCES);
  if (who === undefined) note(at, "visit.unknown-word", "who", { found: shown(of["who"]), expected: AUDIENCES });
  const odometer = odometerOf(of["odometer"], "odometer", at);
  const nextVisit = dateOf(of["nextVisit"]);
  if (of["nextVisit"] !== undefined && nextVisit === undefined)
    note(at, "visit.date", "nextVisit", { found: shown(of["nextVisit"]) });
  const input: AssessInput = {
    at: dateOf(of["at"]) ?? note(at, "visit.date", "at", { found: shown(of["at"]) }) ?? "",
    ...(odometer === undefined ? {} : { odometer }),
    who: who ?? "technician",
    car,
    sheets: sheetsOf(of, sheets, at),
    complaints: complaintsOf(of, common, texts, at),
    replies: repliesIn(of, "", names, at),
    earlier: earlierOf(of, names, at),
    exposure: exposureOf(of["exposure"], at),
    ...(nextVisit === undefined ? {} : { nextVisit }),
  };
  return ok({ input, problems: at.problems });
}

function repliesIn(of: Fields, path: string, names: Names, at: Noting): readonly StandingReply[] {
  return listIn(of, "replies", path, at).flatMap((entry, i) => readReply(entry, `${path}replies[${i}]`, names, at));
}

function earlierOf(of: Fields, names: Names, at: Noting): readonly EarlierVisit[] {
  return listIn(of, "earlier", "", at).flatMap((entry, i): readonly EarlierVisit[] => {
    const path = `earlier[${i}]`;
    const visit = asFields(entry);
    const date = dateOf(visit?.["at"]);
    if (visit === undefined || date === undefined)
      return note(at, "visit.date", `${path}.at`, { found: shown(visit?.["at"] ?? entry) }) ?? [];
    const odometer = odometerOf(visit["odometer"], `${path}.odometer`, at);
    return [
      { at: date, ...(odometer === undefined ? {} : { odometer }), replies: repliesIn(visit, `${path}.`, names, at) },
    ];
  });
}

/** A date, with or without a time. */
function dateOf(value: unknown): string | undefined {
  const text = textOf(value);
  return text !== undefined && /^\d{4}-\d{2}-\d{2}/.test(text) && Number.isFinite(Date.parse(text)) ? text : undefined;
}

function odometerOf(value: unknown, path: string, at: Noting): AssessInput["odometer"] {
  if (value === undefined) return undefined;
  const of = asFields(value);
  const number = numberOf(of === undefined ? value : of["value"]);
  const unit = unitOf(textOf(of?.["unit"]) ?? "km", "distance")?.code;
  if (number === undefined || number < 0 || unit === undefined)
    return note(at, "visit.odometer", path, { found: shown(value) });
  return { value: number, unit };
}

function exposureOf(value: unknown, at: Noting): AssessInput["exposure"] {
  if (value === undefined) return 0;
  const number = numberOf(value);
  if (number === -1 || number === 0 || number === 1) return number;
  note(at, "visit.exposure", "exposure", { found: shown(value), expected: ["-1", "0", "1"] });
  return 0;
}

function sheetsOf(of: Fields, sheets: readonly BuiltSheet[], at: Noting): readonly string[] {
  const known = sheets.map((s) => s.sheet.id);
  if (of["sheets"] === undefined) note(at, "visit.no-sheets", "sheets", { expected: known });
  return listIn(of, "sheets", "", at).flatMap((id, i): readonly string[] => {
    if (typeof id === "string" && known.includes(id)) return [id];
    return note(at, "visit.unknown-sheet", `sheets[${i}]`, { found: shown(id), expected: known }) ?? [];
  });
}

/** Words of the owner; a known id stands for itself, other words for the complaints they are. */
function complaintsOf(of: Fields, common: BuiltCommon, texts: CommonTexts | undefined, at: Noting): readonly string[] {
  const known = new Set(common.complaints?.map((c) => c.id));
  const said = listIn(of, "complaints", "", at).flatMap((one, i): readonly string[] => {
    const text = textOf(one);
    if (text === undefined) return note(at, "visit.text", `complaints[${i}]`, { found: shown(one) }) ?? [];
    if (known.has(text) || texts === undefined) return [text];
    return [text, ...complaintsIn(text, texts.complaints)];
  });
  return [...new Set(said)];
}
