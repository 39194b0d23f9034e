/**
 * One reply of a visit file into the reply it stands for. Lenient in spelling, strict in meaning: what could mean two
 * things, or would count as looked at where nobody looked, is set aside and told.
 */
import { type Field, fieldOf, mainField, type PlaceTree, type Point } from "../sheet/run.js";
import { type GaugeUsed, NON_ANSWERS, REASONS, type ReplyValue } from "../terms/index.js";
import { isQuantity, readTyped, unitOf } from "../units/index.js";
import type { StandingReply } from "./contract.js";
import { plainId } from "./model.js";
import { asFields, type Fields, type Noting, note, numberOf, shown, some, textOf, wordOf } from "./visit-shape.js";

/** What replies may name. */
export interface Names {
  readonly points: ReadonlyMap<string, Point>;
  readonly tree: PlaceTree;
  /** Places by `placeKey`. */
  readonly places: ReadonlyMap<string, string>;
}

/** How a place is looked up: `fr` is FR, `axle_f` is axle-F. */
export const placeKey = (id: string): string => plainId(id).toLowerCase();

/** The replies an entry stands for: one for each place it covers; none when it was set aside. */
export function readReply(entry: unknown, path: string, names: Names, at: Noting): readonly StandingReply[] {
  const of = asFields(entry);
  if (of === undefined) return note(at, "visit.reply-shape", path, { found: shown(entry) }) ?? [];
  const point = names.points.get(plainId(textOf(of["point"]) ?? ""));
  if (point === undefined) return note(at, "visit.unknown-point", path, { found: shown(of["point"]) }) ?? [];
  const places = placesOf(of, point, path, names, at);
  const state = stateOf(of, point, path, at);
  const answer = of["nonAnswer"] === undefined ? answerOf(of, point, path, at) : nonAnswerOf(of, path, at);
  if (places === undefined || state === undefined || answer === undefined) return [];
  return places.map((place) => ({
    key: { point: point.id, place, state, field: answer.field },
    value: answer.value,
    id: path,
  }));
}

/**
 * No place means the car. A point of a wider kind is answered at that place around the one named. A reply at a wider
 * place answers every such point inside it, but never one that is safety-critical or needs a reading or a picture:
 * those are looked at one by one.
 */
function placesOf(of: Fields, point: Point, path: string, names: Names, at: Noting): readonly string[] | undefined {
  const named = of["place"] === undefined ? "car" : textOf(of["place"]);
  const place = named === undefined ? undefined : names.places.get(placeKey(named));
  const { tree } = names;
  if (place === undefined)
    return note(at, "visit.unknown-place", path, {
      found: shown(of["place"]),
      point: point.id,
      expected: some(tree.ofKind(point.place)),
    });
  if (tree.kindOf(place) === point.place) return [place];
  const around = tree.around(place, point.place);
  if (around !== undefined) return [around];
  const inside = tree.ofKind(point.place).filter((p) => tree.within(place, p));
  if (inside.length === 0 || point["safety-critical"] === true || (point.needs ?? []).length > 0)
    return note(at, "visit.place-kind", path, {
      point: point.id,
      place,
      kind: point.place,
      expected: some(inside.length > 0 ? inside : tree.ofKind(point.place)),
    });
  return inside;
}

function stateOf(of: Fields, point: Point, path: string, at: Noting): string | undefined {
  if (of["state"] === undefined) {
    const [only] = point.states;
    if (only !== undefined && point.states.length === 1) return only;
    return note(at, "visit.state-missing", path, { point: point.id, expected: point.states });
  }
  const state = wordOf(of["state"], point.states);
  return (
    state ??
    note(at, "visit.unknown-state", path, { found: shown(of["state"]), point: point.id, expected: point.states })
  );
}

interface Answer {
  readonly field: string;
  readonly value: ReplyValue;
}

function nonAnswerOf(of: Fields, path: string, at: Noting): Answer | undefined {
  const nonAnswer = wordOf(of["nonAnswer"], NON_ANSWERS);
  if (nonAnswer === undefined)
    return note(at, "visit.non-answer", path, { found: shown(of["nonAnswer"]), expected: NON_ANSWERS });
  const said = textOf(of["reason"]);
  if (said === undefined) return { field: "*", value: { type: "non-answer", nonAnswer } };
  const reason = wordOf(said.replaceAll(" ", "-"), REASONS);
  return {
    field: "*",
    value: { type: "non-answer", nonAnswer, ...(reason === undefined ? { reason: "other", words: said } : { reason }) },
  };
}

const ANSWERS = ["word", "words", "yes", "count", "value", "values"] as const;

/** The named field, else the one field the reply fits by kind and unit; the point's first where several do. */
function answerOf(of: Fields, point: Point, path: string, at: Noting): Answer | undefined {
  const given = ANSWERS.filter((key) => of[key] !== undefined);
  const [key] = given;
  if (key === undefined || given.length > 1)
    return note(at, "visit.one-answer", path, { point: point.id, found: given, expected: [...ANSWERS, "nonAnswer"] });
  const named = of["field"];
  const name =
    named === undefined
      ? undefined
      : Object.keys(point.fields).find((f) => plainId(f) === plainId(textOf(named) ?? ""));
  if (named !== undefined && name === undefined)
    return note(at, "visit.unknown-field", path, {
      found: shown(named),
      point: point.id,
      expected: Object.keys(point.fields),
    });
  const candidates = name === undefined ? Object.keys(point.fields) : [name];
  const why: Noting = { problems: [] };
  const fitting = candidates.flatMap((f): readonly Answer[] => {
    const field = fieldOf(point, f);
    const value = field && valueFor(field, of, key, path, why);
    return value === undefined ? [] : [{ field: f, value }];
  });
  const chosen = fitting.length > 1 ? fitting.find((a) => a.field === mainField(point)) : fitting[0];
  if (chosen !== undefined) return chosen;
  if (fitting.length > 1)
    return note(at, "visit.field-missing", path, { point: point.id, expected: fitting.map((a) => a.field) });
  // one field: its own reason; several: what they would have taken
  if (candidates.length === 1 && why.problems[0] !== undefined) at.problems.push(why.problems[0]);
  else note(at, "visit.fits-no-field", path, { point: point.id, found: shown(of[key]), expected: candidates });
  return undefined;
}

function valueFor(
  field: Field,
  of: Fields,
  key: (typeof ANSWERS)[number],
  path: string,
  at: Noting,
): ReplyValue | undefined {
  const said = of[key];
  const list = Array.isArray(said) ? said : [said];
  if ("words" in field) return wordsFor(field, list, path, at);
  if ("quantity" in field) return readingFor(field, of, list, path, at);
  const [one] = list;
  if (list.length === 1 && "count" in field) {
    const count = numberOf(one);
    const fits = count !== undefined && Number.isInteger(count) && count >= field.count.from && count <= field.count.to;
    return fits
      ? { type: "count", count }
      : note(at, "visit.count", path, { found: shown(one), expected: [`${field.count.from}–${field.count.to}`] });
  }
  if (list.length === 1 && "yes" in field) {
    const yes = one === true || one === "yes" ? true : one === false || one === "no" ? false : undefined;
    return yes === undefined
      ? note(at, "visit.unknown-word", path, { found: shown(one), expected: ["yes", "no"] })
      : { type: "yes", yes };
  }
  if (list.length === 1 && "dateCode" in field && (typeof one === "string" || typeof one === "number"))
    return { type: "date-code", text: String(one) };
  return note(at, "visit.fits-no-field", path, { found: shown(said), expected: [] });
}

function wordsFor(
  field: Extract<Field, { words: unknown }>,
  list: readonly unknown[],
  path: string,
  at: Noting,
): ReplyValue | undefined {
  const words: string[] = [];
  for (const one of list) {
    const plain = typeof one === "boolean" ? (one ? "yes" : "no") : one;
    const word = wordOf(plain, field.words);
    if (word === undefined) return note(at, "visit.unknown-word", path, { found: shown(one), expected: field.words });
    if (!words.includes(word)) words.push(word);
  }
  const excluded = words.length > 1 && words.some((w) => field.exclusive?.includes(w));
  if (words.length === 0 || excluded || (words.length > 1 && field.several !== true))
    return note(at, "visit.words-together", path, { found: words, expected: field.words });
  return { type: "words", words };
}

function readingFor(
  field: Extract<Field, { quantity: unknown }>,
  of: Fields,
  list: readonly unknown[],
  path: string,
  at: Noting,
): ReplyValue | undefined {
  const { quantity } = field;
  if (!isQuantity(quantity)) return note(at, "visit.unit", path, { found: field.unit, quantity, expected: [] });
  const result = list.length === 1 ? wordOf(list[0], field.results ?? []) : undefined;
  if (result !== undefined) return { type: "words", words: [result] };
  const named = textOf(of["unit"]);
  const unit = unitOf(named ?? field.unit, quantity)?.code;
  if (unit === undefined)
    return note(at, "visit.unit", path, { found: shown(of["unit"]), quantity, expected: [field.unit] });
  const values: string[] = [];
  let typedUnit: string | undefined;
  for (const one of list) {
    if (typeof one !== "string" && typeof one !== "number")
      return note(at, "visit.reading", path, { found: shown(one) });
    const read = readTyped(String(one), { quantity, unit });
    if (!read.ok) return note(at, "visit.reading", path, { found: shown(one), because: read.problems[0]?.code ?? "" });
    if (typedUnit !== undefined && typedUnit !== read.value.unit)
      return note(at, "visit.units-mixed", path, { found: [typedUnit, read.value.unit] });
    typedUnit = read.value.unit;
    values.push(read.value.text);
  }
  if (typedUnit === undefined) return note(at, "visit.reading", path, { found: shown(list) });
  const gauge = of["gauge"] === undefined ? undefined : gaugeOf(of["gauge"]);
  if (of["gauge"] !== undefined && gauge === undefined)
    return note(at, "visit.gauge", path, { found: shown(of["gauge"]) });
  return { type: "reading", values, unit: typedUnit, ...(gauge === undefined ? {} : { gauge }) };
}

function gaugeOf(value: unknown): GaugeUsed | undefined {
  const of = asFields(value);
  const resolution = numberOf(of?.["resolution"] ?? 0);
  const error = numberOf(of?.["error"] ?? 0);
  const id = textOf(of?.["id"]);
  if (of === undefined || resolution === undefined || error === undefined || resolution < 0 || error < 0)
    return undefined;
  return { ...(id === undefined ? {} : { id }), resolution, error };
}
