/** The kinds that tell the owner's word, one table of those of a plan's stream. Knows no job and no price. */
import { DECIDERS, DECISION_WORDS, type DecisionBodies, TOLD_HOW } from "./decision-bodies.js";
import { type KindOf, replaces } from "./kinds.js";
import { jobKey } from "./plan-keys.js";
import {
  both,
  type Check,
  count,
  dateTime,
  fields,
  isPlainObject,
  listOf,
  matches,
  name,
  number,
  oneOf,
  orNull,
  text,
} from "./shape.js";
import { date } from "./shape-figures.js";

const PLAN = ["plan"] as const;
/** A drawn name has a hundred points or a few more; own choice, far above that and far below what fills a phone. */
const NUMBERS_AT_MOST = 8_000;
const SIDE_AT_MOST = 4_096;

const price = fields({
  likely: count,
  p80: count,
  high: count,
  currency: matches("a currency's three letters", /^[A-Z]{3}$/),
});
const warned = fields({ of: oneOf(["caution", "finding", "due"]), id: name, words: text });
const warning = fields({ shown: listOf(warned, 1), acknowledged: dateTime });
const notBelowNought: Check = (value, path) => (Number(value) < 0 ? { path, expected: "0 or more" } : undefined);
const odometer = fields({ value: both(number, notBelowNought), unit: oneOf(["km", "[mi_i]"]) });
const said = fields(
  { word: oneOf(DECISION_WORDS), who: name, role: oneOf(DECIDERS), how: oneOf(TOLD_HOW), on: date },
  { by: date, odometer, because: name, what: name, price, estimate: name, warning },
);

/** Which fields go with which word: a refusal has its reason, a question says what is asked, nothing has another's. */
const goesWith: Check = (value, path) => {
  if (!isPlainObject(value)) return undefined;
  const { word } = value;
  const has = (field: string): boolean => Object.hasOwn(value, field);
  const needs: Readonly<Record<string, string>> = { no: "because", "tell-me-more": "what" };
  const needed = needs[String(word)];
  if (needed !== undefined && !has(needed)) return { path: `${path}.${needed}`, expected: `to be there with ${word}` };
  if (word === "yes-by" && !has("by") && !has("odometer"))
    return { path: `${path}.by`, expected: "a day or an odometer with yes-by" };
  const stray = [
    ...(word === "yes-by" ? [] : ["by", "odometer"]),
    ...(word === "no" ? [] : ["because"]),
    ...(word === "tell-me-more" ? [] : ["what"]),
    ...(word === "yes-now" ? ["warning"] : []),
  ].find(has);
  return stray === undefined ? undefined : { path: `${path}.${stray}`, expected: `not to be there with ${word}` };
};

const inBox =
  (most: number): Check =>
  (value, path) =>
    count(value, path) ?? (Number(value) > most ? { path, expected: `${most} at most` } : undefined);
const strokes: Check = (value, path) => {
  const fault = listOf(listOf(inBox(SIDE_AT_MOST), 2), 1)(value, path);
  if (fault) return fault;
  const list = value as readonly (readonly number[])[];
  if (list.some((stroke) => stroke.length % 2 !== 0)) return { path, expected: "an x and a y for every point" };
  return list.reduce((sum, { length }) => sum + length, 0) > NUMBERS_AT_MOST
    ? { path, expected: `${NUMBERS_AT_MOST} figures at most` }
    : undefined;
};
const drawn = fields({ width: inBox(SIDE_AT_MOST), height: inBox(SIDE_AT_MOST), strokes });

export const DECISION_ROWS: { readonly [K in keyof DecisionBodies]: KindOf<K> } = {
  decision: {
    v: 1,
    streams: PLAN,
    check: fields({ job: name, place: name, said: orNull(both(said, goesWith)), replaces }),
    slots: (b) => [`decision|${jobKey(b)}`],
  },
  "decision.answer": {
    v: 1,
    streams: PLAN,
    check: fields({ question: name, answer: orNull(fields({ words: name, on: date })), replaces }),
    slots: (b) => [`owner-answer|${b.question}`],
  },
  "decision.signed": {
    v: 1,
    streams: PLAN,
    check: fields({ decisions: listOf(name, 1), who: name, on: date }, { drawn }),
    slots: () => ["signed|"],
  },
};
