/**
 * What may be chosen in a form of a sheet under work, each by the name it is spoken of: points, readings, places, car
 * states, gauges, jobs. What another open sheet holds stands behind the sheet's own, with that sheet's title. Pure.
 */
import {
  buildPlaces,
  type CommonTexts,
  celName,
  type Point,
  type Sheet,
  type SheetTexts,
} from "../../core/sheet/run.js";
import { BASES } from "../../core/terms/index.js";
import { isQuantity, QUANTITIES } from "../../core/units/index.js";
import { kindOfPlace } from "../texts/kinds.js";
import { t as shared } from "../texts/reading.js";
import { relationWords } from "../texts/relations.js";
import { t } from "../texts/sheet-forms.js";
import { unitWords } from "../texts/units.js";
import { capital, plainWord } from "./knowledge.js";
import { languageOf } from "./sheet-forms.js";
import type { SheetWork } from "./sheet-work.js";
import { LANGUAGE } from "./shelf.js";
import { tradeUnits } from "./trade-units.js";

export interface Choice {
  readonly value: string;
  readonly words: string;
  readonly says?: string;
}
type Known = Pick<SheetWork, "sheet" | "common" | "others">;

const wordsOf = (sheet: Sheet): SheetTexts | undefined => sheet.texts[languageOf(sheet)];
const sharedWords = ({ common }: Pick<Known, "common">): CommonTexts | undefined =>
  common.texts[LANGUAGE] ?? Object.values(common.texts)[0];

/** A name as it may be shown: blank ones count for nothing, and what nobody named is told by its id's own words. */
const named = (name: string | undefined, id: string): string => capital(name?.trim() || plainWord(id));
const inSheet = (sheet: Sheet): string => wordsOf(sheet)?.title || sheet.id;

/** Something of every sheet: the sheet's own first and plain, the others' with the title of their sheet. */
function fromSheets(
  { sheet, others }: Known,
  of: (sheet: Sheet, words: SheetTexts | undefined) => readonly Choice[],
): readonly Choice[] {
  const own = of(sheet, wordsOf(sheet));
  return [
    ...own,
    ...others.flatMap((other) => of(other, wordsOf(other)).map((one) => ({ ...one, says: inSheet(other) }))),
  ];
}

export const pointChoices = (work: Known): readonly Choice[] =>
  fromSheets(work, (sheet, words) =>
    sheet.points.map(({ id }) => ({ value: id, words: named(words?.points[id]?.name, id) })),
  );

/** Readings of points and values worked out, by the names limits and conditions give them. */
export const readingChoices = (work: Known): readonly Choice[] =>
  fromSheets(work, (sheet, words) => [
    ...sheet.points.flatMap((point) => readingsOf(point, words)),
    ...sheet.derived.map(({ id }) => ({ value: id, words: named(words?.derived?.[id], id) })),
  ]);

function readingsOf(point: Point, words: SheetTexts | undefined): readonly Choice[] {
  const text = words?.points[point.id];
  const name = named(text?.name, point.id);
  const isOneOfSeveral = Object.keys(point.fields).length > 1;
  return Object.entries(point.fields).flatMap(([field, is]) => {
    if (!("quantity" in is)) return [];
    const of = isOneOfSeveral ? `, ${text?.fields?.[field] ?? plainWord(field)}` : "";
    return [{ value: celName(point, field), words: name + of }];
  });
}

/** What a reading or worked-out value measures; undefined for a name that is neither. `-` and `_` are equal in names. */
export function measureOf(
  { sheet, others }: Known,
  name: string,
): { readonly quantity: string; readonly unit: string; readonly place: string } | undefined {
  const wanted = name.replaceAll("-", "_");
  for (const one of [sheet, ...others]) {
    const derived = one.derived.find(({ id }) => id.replaceAll("-", "_") === wanted);
    if (derived) return derived;
    for (const point of one.points)
      for (const [field, is] of Object.entries(point.fields))
        if ("quantity" in is && celName(point, field) === wanted)
          return { quantity: is.quantity, unit: is.unit, place: point.place };
  }
  return undefined;
}

export const jobChoices = (work: Known): readonly Choice[] =>
  fromSheets(work, (sheet, words) =>
    sheet.jobs.map(({ id }) => ({ value: id, words: named(words?.jobs[id]?.name, id) })),
  );

/** Faults that some rule names, or that have words already. */
export const faultChoices = (work: Known): readonly Choice[] =>
  fromSheets(work, (sheet, words) => {
    const ids = new Set([...Object.keys(words?.faults ?? {}), ...sheet.rules.flatMap(({ fault }) => fault ?? [])]);
    return [...ids].map((id) => ({ value: id, words: named(words?.faults[id]?.says, id) }));
  });

/** Parts and sets this sheet has words for; another sheet's have no words here. */
export const partChoices = ({ sheet }: Pick<Known, "sheet">): readonly Choice[] =>
  Object.entries(wordsOf(sheet)?.parts ?? {}).map(([value, name]) => ({ value, words: named(name, value) }));

const fromShared = (
  { common }: Pick<Known, "common">,
  things: readonly { readonly id: string }[],
  name: (words: CommonTexts, id: string) => string | undefined,
): readonly Choice[] => {
  const words = sharedWords({ common });
  return things.map(({ id }) => ({ value: id, words: named(words && name(words, id), id) }));
};

/** In walking order. */
export const stateChoices = ({ common }: Known): readonly Choice[] =>
  fromShared(
    { common },
    common.states.toSorted((a, b) => a.order - b.order),
    (words, id) => words.states[id]?.name,
  );
export const cautionChoices = ({ common }: Known): readonly Choice[] =>
  fromShared({ common }, common.cautions, (words, id) => words.cautions[id]?.not);
export const accessChoices = ({ common }: Known): readonly Choice[] =>
  fromShared({ common }, common.access, (words, id) => words.access[id]);
export const placeChoices = ({ common }: Known): readonly Choice[] =>
  fromShared({ common }, common.places, (words, id) => words.places[id]);
/** Gauges first, then what is held in the hand and measures nothing. */
export const toolChoices = ({ common }: Known): readonly Choice[] => [
  ...fromShared({ common }, common.gauges, (words, id) => words.gauges[id]),
  ...fromShared(
    { common },
    (common.aids ?? []).map((id) => ({ id })),
    (words, id) => words.aids?.[id],
  ),
];

/** A kind of place as it is spoken of, `Wheels`. */
export const kindCalled = (kind: string): string => kindOfPlace(kind) ?? capital(plainWord(kind));

const NAMED_OF_A_KIND = 2;
/** Kinds of place, each with the first places that are of it. */
export function kindChoices({ common }: Known): readonly Choice[] {
  const words = sharedWords({ common });
  const kinds = new Set(common.places.map(({ kind }) => kind));
  return [...kinds].map((value) => {
    const names = common.places.flatMap(({ id, kind }) => (kind === value ? [words?.places[id] ?? plainWord(id)] : []));
    const says = names.slice(0, NAMED_OF_A_KIND).join(", ") + (names.length > NAMED_OF_A_KIND ? " …" : "");
    return { value, words: kindCalled(value), says };
  });
}

/** What a place is called from another: its twin, its corner, whatever places name. */
export const relationChoices = ({ common }: Known): readonly Choice[] => {
  const { tree } = buildPlaces(common.places);
  const there = tree.all.flatMap(({ relations }) => Object.keys(relations ?? {}));
  return [...new Set(["opposite", "axle", "side", "corner", "car", ...there])].map((value) => ({
    value,
    words: capital(relationWords(value)),
  }));
};

/** What can be measured, in the order of its words. */
export const quantityChoices = (): readonly Choice[] =>
  QUANTITIES.map((value) => ({ value, words: t(`quantity.${value}`) })).toSorted((a, b) =>
    a.words.localeCompare(b.words),
  );
export const basisChoices = (): readonly Choice[] =>
  BASES.map((value) => ({ value, words: capital(shared(`basis.${value}`)) }));

/** Units a figure of this quantity may be written in, the one that stands first. */
export const unitChoices = (quantity: string, unit: string): readonly Choice[] =>
  [...new Set([...(unit === "" ? [] : [unit]), ...(isQuantity(quantity) ? tradeUnits(quantity) : [])])].map(
    (value) => ({ value, words: unitWords(value) || "–" }),
  );

/** Choices whose words, or the sheet they stand in, hold every word that was typed. */
export function choicesFound(choices: readonly Choice[], typed: string): readonly Choice[] {
  const wanted = typed.toLowerCase().split(/\s+/).filter(Boolean);
  return choices.filter(({ words, says }) => {
    const text = `${words} ${says ?? ""}`.toLowerCase();
    return wanted.every((word) => text.includes(word));
  });
}

/** What a chosen one is called; one that is no longer there by its id's own words, so that it can be taken out. */
export const calledIn = (choices: readonly Choice[], value: string): string =>
  choices.find((one) => one.value === value)?.words ?? capital(plainWord(value));
