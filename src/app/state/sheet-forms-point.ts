/**
 * What a point's form does to it: kinds of reply, reply words with what they are spoken as, what 'no fault seen'
 * enters. Ids of fields and words are made from what they are called, and given to no other again. Pure.
 */
import type { DraftItem } from "../../core/sheet/draft.js";
import { NON_ANSWERS } from "../../core/terms/index.js";
import { canonicalUnit, isQuantity } from "../../core/units/index.js";
import { plainWord } from "./knowledge.js";
import {
  entriesAt,
  freshSlug,
  type Inside,
  moved,
  namesAt,
  textAt,
  valueAt,
  withAt,
  withoutAt,
} from "./sheet-forms.js";
import { inUnit, stepInUnit } from "./sheet-forms-units.js";

export const REPLY_KINDS = ["words", "reading", "count", "yes", "date"] as const;
export type ReplyKind = (typeof REPLY_KINDS)[number];
export const DATE_CODES = ["week-year", "year", "month-year"] as const;

/** A point with the language its words are changed in, and what it was at first: its ids stay taken. */
export interface PointForm {
  readonly is: DraftItem;
  readonly language: string;
  readonly base: DraftItem | undefined;
}

const FRESH: Readonly<Record<ReplyKind, unknown>> = {
  words: { words: [] },
  reading: { quantity: "length", unit: canonicalUnit("length"), window: [0, 100] },
  count: { count: { from: 0, to: 10 } },
  yes: { yes: true },
  date: { dateCode: DATE_CODES[0] },
};

export function kindAt(is: DraftItem, field: string): ReplyKind {
  const has = (key: string): boolean => valueAt(is, ["fields", field, key]) !== undefined;
  if (has("words")) return "words";
  if (has("quantity")) return "reading";
  if (has("count")) return "count";
  return has("yes") ? "yes" : "date";
}
export const fieldsOf = (is: DraftItem): readonly string[] => entriesAt(is, ["fields"]).map(([field]) => field);

/** What a field is called beside others; a lone one has no name of its own. */
export const fieldCalled = ({ is, language }: PointForm, field: string): string =>
  textAt(is, ["texts", language, "fields", field]) || plainWord(field);

/** A further kind of reply behind those there. From the second on each has a name, since they stand side by side. */
export function withField(form: PointForm, kind: ReplyKind, name: string): DraftItem {
  const { is, language, base } = form;
  const there = fieldsOf(is);
  const field = freshSlug(name, kind, [...there, ...(base ? fieldsOf(base) : [])]);
  const more = withAt(is, ["fields", field], FRESH[kind]);
  if (there.length === 0) return more;
  const calls = [...there.map((one) => [one, fieldCalled(form, one)] as const), [field, name] as const];
  return withAt(more, ["texts", language, "fields"], Object.fromEntries(calls));
}

/** Without the field, its words and what 'no fault seen' entered there; the last one left needs no name. */
export function withoutField({ is, language }: PointForm, field: string): DraftItem {
  const gone = wordsAt(is, field).reduce((item, word) => withoutWord({ is: item, language }, field, word), is);
  const less = withoutAt(withAt(gone, ["fields", field], undefined), ["unremarkable", field]);
  const path: Inside = ["texts", language, "fields"];
  return fieldsOf(less).length > 1 ? withoutAt(less, [...path, field]) : withAt(less, path, undefined);
}

/** The first is what a condition means by the point alone. */
export function fieldMoved(is: DraftItem, from: number, to: number): DraftItem {
  return withAt(is, ["fields"], Object.fromEntries(moved(entriesAt(is, ["fields"]), from, to)));
}

/** Reply words of a field: its words, or the results that stand beside a number. */
export const wordsPath = (is: DraftItem, field: string): Inside => [
  "fields",
  field,
  kindAt(is, field) === "words" ? "words" : "results",
];
export const wordsAt = (is: DraftItem, field: string): readonly string[] => namesAt(is, wordsPath(is, field));

type Worded = Omit<PointForm, "base">;
const othersSay = (is: DraftItem, field: string, word: string): boolean =>
  fieldsOf(is).some((other) => other !== field && wordsAt(is, other).includes(word));

/** Where a word's text stands: under its field where two fields mean different things by it. */
function wordPath({ is, language }: Worded, field: string, word: string): Inside {
  const words: Inside = ["texts", language, "words"];
  const own = `${field}.${word}`;
  return valueAt(is, [...words, own]) === undefined ? [...words, word] : [...words, own];
}

export interface Spoken {
  readonly technician: string;
  /** Where an owner reads something else. */
  readonly owner: string;
}
export function spokenAt(form: Worded, field: string, word: string): Spoken {
  const kept = valueAt(form.is, wordPath(form, field, word));
  if (typeof kept === "string") return { technician: kept, owner: "" };
  const path = wordPath(form, field, word);
  return { technician: textAt(form.is, [...path, "technician"]), owner: textAt(form.is, [...path, "owner"]) };
}

/** The word spoken otherwise: in this field alone where another has it too. Without owner's words both read one. */
export function withSpoken(form: Worded, field: string, word: string, { technician, owner }: Spoken): DraftItem {
  const shown = owner.trim() === "" || owner === technician ? technician : { technician, owner };
  const path = othersSay(form.is, field, word)
    ? (["texts", form.language, "words", `${field}.${word}`] as const)
    : wordPath(form, field, word);
  return withAt(form.is, path, shown);
}

/** A further reply word at the end. What cannot be told from a non-answer, or once was another word, is no id for it. */
export function withWord({ is, language, base }: PointForm, field: string, spoken: string): DraftItem {
  const ever = [is, ...(base ? [base] : [])].flatMap((one) => fieldsOf(one).flatMap((name) => wordsAt(one, name)));
  const word = freshSlug(spoken, "reply", [...NON_ANSWERS, ...ever]);
  const more = withAt(is, wordsPath(is, field), [...wordsAt(is, field), word]);
  return withSpoken({ is: more, language }, field, word, { technician: spoken, owner: "" });
}

/** Without the word wherever the field names it; its text goes unless another field says it too. */
export function withoutWord(form: Worded, field: string, word: string): DraftItem {
  const { is, language } = form;
  const without = (list: readonly string[]): readonly string[] => list.filter((one) => one !== word);
  const own: Inside = ["texts", language, "words", `${field}.${word}`];
  const left = without(wordsAt(is, field));
  const path = wordsPath(is, field);
  let less = withAt(is, path, left.length === 0 && path.at(-1) === "results" ? undefined : left);
  less = withAlone(less, field, without(namesAt(less, ["fields", field, "exclusive"])));
  less = withUnremarkable(less, field, without(unremarkableAt(less, field)));
  less = withoutAt(less, own);
  return othersSay(is, field, word) ? less : withoutAt(less, ["texts", language, "words", word]);
}

export const wordMoved = (is: DraftItem, field: string, from: number, to: number): DraftItem =>
  withAt(is, wordsPath(is, field), moved(wordsAt(is, field), from, to));

/** Words that stand alone among several. */
export const withAlone = (is: DraftItem, field: string, words: readonly string[]): DraftItem =>
  withAt(is, ["fields", field, "exclusive"], words.length === 0 ? undefined : words);

/** Whether several words may stand together; where only one may, none needs to stand alone. */
export function withSeveral(is: DraftItem, field: string, several: boolean): DraftItem {
  const entered = unremarkableAt(is, field);
  const changed = withAt(is, ["fields", field, "several"], several || undefined);
  return withUnremarkable(
    several ? changed : withAlone(changed, field, []),
    field,
    several ? entered : entered.slice(0, 1),
  );
}

/** What 'no fault seen' enters in this field; nothing where the point is answered by itself. */
export function unremarkableAt(is: DraftItem, field: string): readonly string[] {
  const entered = valueAt(is, ["unremarkable", field]);
  return typeof entered === "string" ? [entered] : namesAt(is, ["unremarkable", field]);
}
export function withUnremarkable(is: DraftItem, field: string, words: readonly string[]): DraftItem {
  const path: Inside = ["unremarkable", field];
  if (words.length === 0) return withoutAt(is, path);
  return withAt(is, path, valueAt(is, ["fields", field, "several"]) === true ? words : words[0]);
}

/** Another quantity is another reading: it begins in its usual unit, the window as it stands. */
export function withQuantity(is: DraftItem, field: string, quantity: string): DraftItem {
  if (!isQuantity(quantity)) return is;
  const path: Inside = ["fields", field];
  const changed = withAt(withAt(is, [...path, "quantity"], quantity), [...path, "unit"], canonicalUnit(quantity));
  return quantity === "duration" ? changed : withAt(changed, [...path, "stopwatch"], undefined);
}

/** Another unit for the same reading: window and set-up error go with it, so that none is read as another size. */
export function withUnit(is: DraftItem, field: string, unit: string): DraftItem {
  const path: Inside = ["fields", field];
  const [quantity, before] = [textAt(is, [...path, "quantity"]), textAt(is, [...path, "unit"])];
  const move = { quantity, from: before, to: unit };
  const window = [0, 1].map((end) => inUnit(valueAt(is, [...path, "window", end]), move));
  const changed = withAt(withAt(is, [...path, "unit"], unit), [...path, "window"], window);
  const setUp = valueAt(is, ["set-up-error"]);
  return setUp === undefined ? changed : withAt(changed, ["set-up-error"], stepInUnit(setUp, move));
}
