/**
 * What the sheets say to somebody who goes round a sound car: what is asked, which reply is the unremarkable one, a
 * reading inside all limits, how long a look takes. Read off the sheets; knows no screen.
 */

import {
  fieldName,
  type Knowledge,
  knowledgeOf,
  pointName,
  replyWord,
  requiredFields,
} from "../../src/app/state/knowledge.js";
import { isAskedHere } from "../../src/app/state/stops.js";
import { loadChecklists } from "../../src/build/load-checklists.js";
import { type Asked, assess, prepare, type Worth, worthOf } from "../../src/core/assess/index.js";
import type { Field, Limit, Point } from "../../src/core/sheet/run.js";
import type { Audience } from "../../src/core/terms/index.js";
import { convert, type Quantity } from "../../src/core/units/index.js";
import { visit } from "../support/small-car.js";

/** A field as it is met on the screen. */
export interface MetField {
  readonly point: string;
  readonly field: string;
  readonly label: string;
  /** The reply of a sound car, as it is shown; of a reading or a typed count its figure. */
  readonly sound: string;
  readonly required: boolean;
  readonly shots: number;
}

export interface SheetsOfRound {
  readonly titles: readonly string[];
  readonly known: Knowledge;
  readonly asked: readonly Asked[];
  readonly worths: ReadonlyMap<string, Worth>;
  /** Fields whose replies are these words, in order. */
  readonly byReplies: ReadonlyMap<string, readonly MetField[]>;
  /** `point field` → the field. */
  readonly byName: ReadonlyMap<string, MetField>;
  readonly pointCalled: ReadonlyMap<string, string>;
}

const isOver = (limit: Limit, point: string, field: string, first: string): boolean => {
  const plain = limit.of.replaceAll("_", "-");
  return plain === `${point}.${field}` || (plain === point && field === first);
};

/** Midway between the window's end and the mildest edges: clear of every default limit over the reading. */
function plausible(point: Point, name: string, limits: readonly Limit[]): string {
  const field = point.fields[name];
  if (!field || !("quantity" in field)) return "";
  let [from, to] = field.window;
  const first = Object.keys(point.fields)[0] ?? "";
  for (const limit of limits.filter((one) => isOver(one, point.id, name, first))) {
    for (const edge of Object.values(limit.bands)) {
      if (typeof edge !== "number") continue;
      const here = convert(edge, limit.unit, field.unit, field.quantity as Quantity);
      if (limit.direction === "over") to = Math.min(to, here);
      else from = Math.max(from, here);
    }
  }
  return String(Number((from + (to - from) / 2).toPrecision(2)));
}

function soundReply(
  point: Point,
  name: string,
  field: Field,
  said: (word: string) => string,
  limits: readonly Limit[],
): string {
  const given = point.unremarkable?.[name];
  const word = typeof given === "string" ? given : given?.[0];
  if ("words" in field) return said(word ?? field.words[0] ?? "");
  if ("yes" in field) return word === "yes" ? "Yes" : "No";
  if ("count" in field) return word ?? String(field.count.from);
  if ("dateCode" in field)
    return field.dateCode === "year" ? "2019" : field.dateCode === "month-year" ? "04/19" : "1419";
  return plausible(point, name, limits);
}

/** The words of a field's replies as they stand on the screen; none where it is typed. */
export const repliesText = (words: readonly string[]): string => words.join(" | ");

function shownReplies(field: Field, said: (word: string) => string): readonly string[] {
  if ("words" in field) return field.words.map(said);
  if ("yes" in field) return ["Yes", "No"];
  if ("count" in field)
    return Array.from({ length: field.count.to - field.count.from + 1 }, (_, index) =>
      String(field.count.from + index),
    );
  return [];
}

/** The sheets of a round, by id; all where none is named. */
export async function sheetsOfRound(who: Audience, ids?: readonly string[]): Promise<SheetsOfRound> {
  const { result } = await loadChecklists("checklists");
  if (!result.ok) throw new Error("the sheets do not load");
  const { common, commonWithTexts, sheets } = result.value;
  const wanted = sheets.filter(({ sheet }) => ids === undefined || ids.includes(sheet.id));
  const built = wanted.map((one) => one.built);
  const words = commonWithTexts.texts["en"];
  if (!words) throw new Error("the sheets speak English");
  const open = wanted.map(({ sheet }) => {
    const texts = sheet.texts["en"];
    if (!texts) throw new Error("the sheets speak English");
    return { sheet, texts };
  });
  const known = knowledgeOf(common.common, words, open);
  const engine = prepare(common, built);
  const { asked } = assess(engine, visit([], { who, sheets: built.map(({ sheet }) => sheet.id) }));
  const limits = [...known.limits.values()];
  const byReplies = new Map<string, MetField[]>();
  const byName = new Map<string, MetField>();
  for (const { point, text } of known.points.values()) {
    for (const [name, field] of Object.entries(point.fields)) {
      const said = (word: string): string => replyWord(text, name, word, who);
      const met: MetField = {
        point: point.id,
        field: name,
        label: fieldName(text, name),
        sound: soundReply(point, name, field, said, limits),
        required: requiredFields(point).includes(name),
        shots: "quantity" in field ? (field.shots ?? 1) : 1,
      };
      byName.set(`${point.id} ${name}`, met);
      const shown = repliesText(shownReplies(field, said));
      byReplies.set(shown, [...(byReplies.get(shown) ?? []), met]);
    }
  }
  return {
    titles: open.map(({ texts }) => texts.title),
    known,
    asked: asked.filter((one) => isAskedHere(known, who, one)),
    worths: worthOf(engine, common, built),
    byReplies,
    byName,
    pointCalled: new Map([...known.points.keys()].map((id) => [pointName(known, id), id])),
  };
}
