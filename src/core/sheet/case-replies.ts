/**
 * Reads the replies of a sheet's own cases (`whl.rock@FR: none`, `whl.float@FR: 0.16 mm`) into replies as a visit holds
 * them. Strict: a case is written by an author. Runs no case.
 */
import {
  fail,
  NON_ANSWERS,
  type NonAnswer,
  ok,
  type Problem,
  problem,
  type ReplyKey,
  type ReplyValue,
  type Result,
} from "../terms/index.js";
import { isQuantity, readTyped, unitsOf } from "../units/index.js";
import type { Lookup } from "./lookup.js";
import { celName } from "./names.js";
import { nearest } from "./nearest.js";
import type { Field } from "./schema-types.js";
import type { Path, SpotOf } from "./source.js";

/** As written in a case. */
export type Typed = string | number | boolean | readonly (string | number)[];

export interface CaseReply {
  readonly key: ReplyKey;
  readonly value: ReplyValue;
}

const isNonAnswer = (word: unknown): word is NonAnswer => NON_ANSWERS.some((n) => n === word);

/** One reply of a case; problems stand at the entry's key or value. A name of a sheet not loaded is a problem here. */
export function readCaseReply(name: string, typed: Typed, look: Lookup, path: Path, spotOf: SpotOf): Result<CaseReply> {
  const refuse = (code: string, params: Problem["params"], at?: "key") => fail(problem(code, spotOf(path, at), params));
  const parts = /^([^@#]+)(?:@([^@#]+))?(?:#([^@#]+))?$/.exec(name);
  const [, id = name, place = "car", state] = parts ?? [];
  const meant = look.meant(id);
  if (meant?.is !== "field") {
    const names = [...look.points.values()].flatMap((p) => Object.keys(p.fields).map((f) => celName(p, f)));
    return refuse("unknown-point", { found: id, expected: nearest(id, names) }, "key");
  }
  const { point, field, ref } = meant;
  const kind = look.tree.kindOf(place);
  if (kind === undefined)
    return refuse("unknown-place", { found: place, expected: nearest(place, look.tree.ofKind(point.place)) }, "key");
  if (kind !== point.place) return refuse("case-place", { point: id, kind: point.place, place }, "key");
  if (state !== undefined && !point.states.includes(state))
    return refuse("unknown-state", { found: state, expected: point.states }, "key");
  const only = point.states.length === 1 ? point.states[0] : undefined;
  const there = state ?? only;
  if (there === undefined) return refuse("case-state", { key: name, expected: point.states }, "key");
  if (isNonAnswer(typed))
    return ok({
      key: { point: point.id, place, state: there, field: "*" },
      value: { type: "non-answer", nonAnswer: typed },
    });
  // A quantity nobody knows is told where the field is declared.
  if ("quantity" in field && !isQuantity(field.quantity)) return fail();
  const value = replyOf(field, typed);
  if (!value) return refuse("case-value", { found: shown(typed), point: id, expected: expectedOf(field) });
  return ok({ key: { point: point.id, place, state: there, field: ref.field }, value });
}

const shown = (typed: Typed): string => (typeof typed === "object" ? typed.join(", ") : String(typed));

function expectedOf(field: Field): readonly string[] {
  if ("words" in field) return field.words;
  if ("quantity" in field) {
    const units = isQuantity(field.quantity) ? unitsOf(field.quantity).map((u) => u.shown) : [];
    return [`a number in ${units.slice(0, 4).join(", ")}`, ...(field.results ?? [])];
  }
  if ("count" in field) return [`a whole number from ${field.count.from} to ${field.count.to}`];
  return "yes" in field ? ["true", "false"] : [`a date code (${field.dateCode})`];
}

function replyOf(field: Field, typed: Typed): ReplyValue | undefined {
  if ("words" in field) return wordsOf(field, typed);
  if ("quantity" in field) return readingOf(field, typed);
  if ("count" in field) {
    const fits =
      typeof typed === "number" && Number.isInteger(typed) && typed >= field.count.from && typed <= field.count.to;
    return fits ? { type: "count", count: typed } : undefined;
  }
  if ("yes" in field) return typeof typed === "boolean" ? { type: "yes", yes: typed } : undefined;
  return typeof typed === "string" ? { type: "date-code", text: typed } : undefined;
}

function wordsOf(field: Extract<Field, { words: unknown }>, typed: Typed): ReplyValue | undefined {
  const words = typeof typed === "object" ? typed.map(String) : [String(typed)];
  const known = words.length > 0 && words.every((w) => field.words.includes(w)) && new Set(words).size === words.length;
  const alone = words.length === 1 || (field.several && !words.some((w) => field.exclusive?.includes(w)));
  return known && alone && typeof typed !== "boolean" ? { type: "words", words } : undefined;
}

/** Values as typed, all in one unit: `0.06 mm`, `[0.10, 0.12]` in the field's own. */
function readingOf(field: Extract<Field, { quantity: unknown }>, typed: Typed): ReplyValue | undefined {
  if (typeof typed === "boolean" || !isQuantity(field.quantity)) return undefined;
  if (typeof typed === "string" && field.results?.includes(typed)) return { type: "words", words: [typed] };
  const { quantity, unit } = field;
  const texts = typeof typed === "object" ? typed.map(String) : [String(typed)];
  const readings = texts.map((text) => readTyped(text, { quantity, unit }));
  const read = readings.flatMap((r) => (r.ok ? [r.value] : []));
  const [first] = read;
  if (!first || read.length < texts.length || read.some((r) => r.unit !== first.unit)) return undefined;
  return { type: "reading", values: read.map((r) => r.text), unit: first.unit };
}
