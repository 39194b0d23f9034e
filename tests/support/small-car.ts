/** Opens the small car's sheets for tests of assessing, and writes replies and visits in short. */
import { type AssessInput, type Engine, prepare, type StandingReply } from "../../src/core/assess/index.js";
import { planAgain } from "../../src/core/sheet/author.js";
import type { BareCommon, BareSheet, BuiltCommon, BuiltSheet, Field, Rule } from "../../src/core/sheet/run.js";
import type { NonAnswer, ReplyValue } from "../../src/core/terms/index.js";
import { TRADE_SIGNATURES, TRADE_WORK } from "../../src/core/trade/index.js";
import { HUB_SHEET, JOINT_SHEET, SMALL_COMMON, SMALL_COMPLAINTS } from "./small-sheets.js";

/** Sheets with their conditions planned; what cannot be planned fails the test. */
export function planned(
  common: BareCommon,
  sheets: readonly BareSheet[],
): { readonly common: BuiltCommon; readonly sheets: readonly BuiltSheet[] } {
  const made = planAgain(
    { edition: "common", bare: common },
    sheets.map((bare) => ({ edition: bare.id, bare })),
    { functions: TRADE_SIGNATURES },
  );
  if (!made.ok) throw new Error(JSON.stringify(made.problems, null, 1));
  return made.value;
}

/** The two sheets opened; rules of a test's own may be added to the first. */
export function smallEngine(
  rules: readonly Rule[] = [],
  only: readonly BareSheet[] = [HUB_SHEET, JOINT_SHEET],
): Engine {
  const [first, ...rest] = only;
  if (first === undefined) throw new Error("a sheet at least");
  const built = planned(SMALL_COMMON, [{ ...first, rules: [...first.rules, ...rules] }, ...rest]);
  return prepare({ ...built.common, complaints: SMALL_COMPLAINTS }, built.sheets, TRADE_WORK);
}

type Typed = string | readonly string[] | number | boolean | ReplyValue;

/** Replies as `point@place` (or `point.field@place`, `point@place#state`) → words, `0.22 mm` per shot, count, yes. */
export function replies(engine: Engine, said: Readonly<Record<string, Typed>>, id = "e"): readonly StandingReply[] {
  return Object.entries(said).map(([name, typed], i): StandingReply => {
    const [where = "", state] = name.split("#");
    const [dotted = "", place = "car"] = where.split("@");
    const [sheet, bare, named] = dotted.split(".");
    const info = engine.model.pointById.get(`${sheet}.${bare}`.replaceAll("-", "_"));
    if (info === undefined) throw new Error(`no point ${dotted}`);
    const field = named ?? info.fields[0]?.name ?? "";
    const declared = info.fields.find((f) => f.name === field)?.field;
    if (declared === undefined) throw new Error(`no field ${dotted}`);
    const value = replyTo(declared, typed);
    return {
      key: {
        point: info.id,
        place,
        state: state ?? info.states[0] ?? "",
        field: value.type === "non-answer" ? "*" : field,
      },
      value,
      id: `${id}${i}`,
    };
  });
}

const NON_ANSWER: Readonly<Record<string, NonAnswer>> = {
  "not-fitted": "not-fitted",
  "not-reached": "not-reached",
  "could-not-tell": "could-not-tell",
};

function replyTo(field: Field, typed: Typed): ReplyValue {
  if (typeof typed === "object" && "type" in typed) return typed;
  const nonAnswer = typeof typed === "string" ? NON_ANSWER[typed] : undefined;
  if (nonAnswer !== undefined) return { type: "non-answer", nonAnswer };
  if (typeof typed === "number") return { type: "count", count: typed };
  if (typeof typed === "boolean") return { type: "yes", yes: typed };
  const list = typeof typed === "string" ? [typed] : typed;
  if (!("quantity" in field)) return { type: "words", words: list };
  if (field.results?.includes(list[0] ?? "") === true) return { type: "words", words: list };
  const units = list.map((t) => t.split(" "));
  return { type: "reading", values: units.map(([v]) => v ?? ""), unit: units[0]?.[1] ?? field.unit };
}

/** A visit of the small car. */
export function visit(standing: readonly StandingReply[], more: Partial<AssessInput> = {}): AssessInput {
  return {
    at: "2026-05-04",
    who: "technician",
    car: { facts: {}, limits: [] },
    sheets: ["hub", "joi"],
    complaints: [],
    replies: standing,
    earlier: [],
    exposure: 0,
    ...more,
  };
}
