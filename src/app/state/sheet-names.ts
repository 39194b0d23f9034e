/**
 * What the conditions of a sheet under work may name, in spoken words: points and their fields, worked-out values, car
 * facts, places and relations. Pure; judges no condition.
 */
import type { Declarations, FactType, NameType, Spoken } from "../../core/expr/work.js";
import { type Common, celName, mainField, type Sheet, type SheetTexts, withBrought } from "../../core/sheet/run.js";
import { declarationsFor, lookupFor, partOfSheet } from "../../core/sheet/work.js";
import { replyWord } from "./knowledge.js";
import { LANGUAGE } from "./shelf.js";

/** What the names are taken from: the sheet as it stands, the shared files with what it brings, the sheets at hand. */
interface NamesGround {
  readonly sheet: Sheet;
  readonly common: Common;
  readonly others: readonly Sheet[];
}

export interface NamedThing {
  readonly name: string;
  readonly words: string;
  /** Kind of place it is asked at; "" of a car fact. */
  readonly kind: string;
  readonly type: NameType | FactType;
}

export interface SheetNames {
  readonly declared: Declarations;
  readonly things: ReadonlyMap<string, NamedThing>;
  readonly spoken: Spoken;
  /** Names that can be read at such a place, those of the sheet under work first. */
  readonly at: (kind: string) => readonly NamedThing[];
  readonly place: (place: string) => string;
  readonly fault: (fault: string) => string;
  readonly job: (job: string) => string;
  readonly caution: (caution: string) => string;
  readonly point: (point: string) => string;
  /** Title of the other sheet a name belongs to; undefined of the sheet's own and of what belongs to the car. */
  readonly from: (name: string) => string | undefined;
}

const wordsIn = (texts: Sheet["texts"]): SheetTexts | undefined => texts[LANGUAGE] ?? Object.values(texts)[0];
/** An id nobody put into words, as words. */
const plainWords = (id: string): string => (id.split(".").at(-1) ?? id).replaceAll(/[_-]/g, " ");
export const kindWords = (kind: string): string => (kind === "car" ? "car" : kind.replaceAll("-", " "));

/** The trade's functions as they may be called: handed in, since they are a piece of their own. */
export function namesOf({ sheet, common, others }: NamesGround, functions: Declarations["functions"] = {}): SheetNames {
  const { places } = withBrought(common, [...others]);
  const beside = others.filter(({ id }) => id !== sheet.id);
  const look = lookupFor(partOfSheet(sheet), { ...common, places }, beside.map(partOfSheet));
  const declared = declarationsFor(look, { functions });
  const sheets = [sheet, ...beside];
  const own = wordsIn(sheet.texts);
  const shared = common.texts[LANGUAGE] ?? Object.values(common.texts)[0];
  const things = new Map<string, NamedThing>();
  const words = new Map<string, (word: string) => string>();
  for (const one of sheets) {
    const texts = wordsIn(one.texts);
    for (const point of one.points)
      for (const field of Object.keys(point.fields)) {
        const name = celName(point, field);
        const found = declared.names[name];
        const text = texts?.points[point.id];
        if (!found || things.has(name)) continue;
        const called = text?.name || plainWords(point.id);
        const more = field === mainField(point) ? "" : `, ${text?.fields?.[field] ?? plainWords(field)}`;
        things.set(name, { name, words: `${called}${more}`, kind: found.kind, type: found.type });
        words.set(name, (word) => (text ? replyWord(text, field, word, "technician") : plainWords(word)));
      }
    for (const derived of one.derived) {
      const name = derived.id.replaceAll("-", "_");
      const found = declared.names[name];
      const called = texts?.derived?.[derived.id] || plainWords(derived.id);
      if (found && !things.has(name)) things.set(name, { name, words: called, kind: found.kind, type: found.type });
    }
  }
  for (const fact of common.facts) {
    const name = `car.${fact.id.replaceAll("-", "_")}`;
    const type = declared.facts[fact.id.replaceAll("-", "_")];
    const text = shared?.facts[fact.id];
    if (type) things.set(name, { name, words: text?.name || plainWords(fact.id), kind: "", type });
    words.set(name, (word) => text?.words?.[word] ?? plainWords(word));
  }
  const titles = new Map(beside.map(({ id, texts }) => [id, wordsIn(texts)?.title || id]));
  const found = (pick: (texts: SheetTexts) => string | undefined): string | undefined =>
    sheets.map(({ texts }) => wordsIn(texts)).flatMap((texts) => (texts ? (pick(texts) ?? []) : []))[0];
  const spoken: Spoken = {
    name: (name) => things.get(name)?.words ?? shared?.places[name] ?? plainWords(name),
    word: (name, word) => words.get(name)?.(word) ?? plainWords(word),
  };
  return {
    declared,
    things,
    spoken,
    at: (kind) => {
      const around = new Set([kind, "", ...(declared.kinds[kind] ?? [])]);
      return [...things.values()].filter((one) => around.has(one.kind));
    },
    place: (place) => own?.brings?.places?.[place] ?? shared?.places[place] ?? plainWords(place),
    fault: (fault) => found((texts) => texts.faults[fault]?.says) ?? shared?.faults?.[fault]?.says ?? plainWords(fault),
    job: (job) => found((texts) => texts.jobs[job]?.name) ?? plainWords(job),
    caution: (caution) =>
      own?.brings?.cautions?.[caution]?.not ?? shared?.cautions[caution]?.not ?? plainWords(caution),
    point: (point) => found((texts) => texts.points[point]?.name) ?? plainWords(point),
    from: (name) => titles.get(name.split(".")[0] ?? ""),
  };
}

/** Relations that lead from one kind of place to a single other, and those that lead to several. */
export function relationsFrom(
  { declared }: Pick<SheetNames, "declared">,
  kind: string,
  many: boolean,
): readonly { readonly name: string; readonly to: string }[] {
  const seen = new Set<string>();
  return declared.relations.flatMap(({ name, from, to, many: several }) => {
    if (from !== kind || several !== many || seen.has(name)) return [];
    seen.add(name);
    return [{ name, to }];
  });
}

/** The kind of place a chain of relations ends at, begun at `from`; undefined where it leads nowhere. */
export function kindAt(
  { declared }: Pick<SheetNames, "declared">,
  from: string,
  chain: readonly string[],
): string | undefined {
  return chain.reduce<string | undefined>(
    (kind, name) => declared.relations.find((one) => one.name === name && one.from === kind)?.to,
    from,
  );
}
