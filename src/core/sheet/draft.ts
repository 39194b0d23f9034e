/**
 * A sheet under work: the edition it was begun from, laid over with what was changed item by item. An item stands with
 * its words, in whatever corner of the sheet these are kept. Judges nothing: `checkSheet` says whether the outcome stands.
 */
import { idOf } from "./brings.js";
import type { Sheet, SheetTexts } from "./schema-types.js";
import type { Path } from "./source.js";

/** What a sheet is changed by. `faults`, `parts` and `notes` are words alone; `head` is what stands over the whole: label, titles, which visits open with it. */
export const DRAFT_LISTS = [
  ...[
    "head",
    "points",
    "limits",
    "derived",
    "rules",
    "faults",
    "jobs",
    "parts",
    "gates",
    "nextLooks",
    "cases",
    "notes",
  ],
  ...["places", "states", "gauges", "aids", "cautions", "access", "facts"],
] as const satisfies readonly string[];
export type DraftList =
  | ("head" | "points" | "limits" | "derived" | "rules" | "faults" | "jobs" | "parts" | "gates" | "nextLooks" | "cases")
  | ("notes" | "places" | "states" | "gauges" | "aids" | "cautions" | "access" | "facts");

/** One item as it stands: its data (undefined where it is words alone) and its words by language. */
export interface DraftItem {
  readonly value?: unknown;
  readonly texts: Readonly<Record<string, unknown>>;
}
/** By item: what it is now, or null where it was taken out. */
export type ItemChanges = ReadonlyMap<string, DraftItem | null>;
export interface DraftChanges {
  readonly items: ReadonlyMap<DraftList, ItemChanges>;
  /** Items in the order they are wanted in; those it does not name follow as they stood. */
  readonly orders: ReadonlyMap<DraftList, readonly string[]>;
}
export const NO_CHANGES: DraftChanges = { items: new Map(), orders: new Map() };

type Loose = Readonly<Record<string, unknown>>;
const isLoose = (value: unknown): value is Loose =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const BROUGHT: ReadonlySet<string> = new Set(["places", "states", "gauges", "aids", "cautions", "access", "facts"]);
const WORDS_ALONE: ReadonlySet<string> = new Set(["faults", "parts", "notes"]);
/** Their items have no id and no words. */
const NUMBERED: ReadonlySet<string> = new Set(["nextLooks", "cases"]);
const HEAD = "head";

/** Where the list stands in a sheet, and its words within one language. */
const dataPath = (list: DraftList): Path => (BROUGHT.has(list) ? ["brings", list] : [list]);
const textPath = dataPath;

const at = (value: unknown, path: Path): unknown =>
  path.reduce<unknown>((inner, part) => (isLoose(inner) ? inner[String(part)] : undefined), value);
function withAt(value: Loose, [first, ...rest]: Path, put: unknown): Loose {
  if (first === undefined) return value;
  const inner = value[String(first)];
  return { ...value, [String(first)]: rest.length === 0 ? put : withAt(isLoose(inner) ? inner : {}, rest, put) };
}

/** What an item is called in its list: its id, or its number where it has none. */
const keyOf = (list: DraftList, thing: unknown, index: number): string =>
  NUMBERED.has(list) ? `#${index}` : idOf(thing as string | { readonly id: string });

/** Items of one list in their order, each with its words. */
export function itemsOf(sheet: Sheet, list: DraftList): ReadonlyMap<string, DraftItem> {
  const languages = Object.entries(sheet.texts);
  if (list === HEAD) {
    const texts = Object.fromEntries(languages.map(([name, { title, about }]) => [name, { title, about }]));
    const opensFor = sheet["opens-for"];
    return new Map([[HEAD, { value: { label: sheet.label, ...(opensFor && { "opens-for": opensFor }) }, texts }]]);
  }
  const wordsOf = (key: string): Loose =>
    Object.fromEntries(
      languages.flatMap(([name, texts]) => {
        const words = at(texts, [...textPath(list), key]);
        return words === undefined ? [] : [[name, words]];
      }),
    );
  if (WORDS_ALONE.has(list)) {
    const keys = new Set(languages.flatMap(([, texts]) => Object.keys((at(texts, [list]) as Loose | undefined) ?? {})));
    return new Map([...keys].map((key) => [key, { texts: wordsOf(key) }]));
  }
  const things = (at(sheet, dataPath(list)) as readonly unknown[] | undefined) ?? [];
  return new Map(
    things.map((value, i) => {
      const key = keyOf(list, value, i);
      return [key, { value, texts: NUMBERED.has(list) ? {} : wordsOf(key) }];
    }),
  );
}

/** Items of one list as they are wanted now, in the order they are wanted in. */
export function draftItems(
  base: Sheet,
  { items, orders }: DraftChanges,
  list: DraftList,
): ReadonlyMap<string, DraftItem> {
  const now = new Map(itemsOf(base, list));
  for (const [key, item] of items.get(list) ?? []) {
    if (item === null) now.delete(key);
    else now.set(key, item);
  }
  const first = (orders.get(list) ?? []).filter((key) => now.has(key));
  const keys = new Set([...first, ...now.keys()]);
  return new Map([...keys].flatMap((key) => [[key, now.get(key)] as const].filter(isThere)));
}
const isThere = (entry: readonly [string, DraftItem | undefined]): entry is readonly [string, DraftItem] =>
  entry[1] !== undefined;

/**
 * The sheet with its changes; what nobody changed is as it was. Its shape is whatever was put in: check it before it is
 * used.
 */
export function changedSheet(base: Sheet, changes: DraftChanges): Sheet {
  const touched = new Set<DraftList>([...changes.items.keys(), ...changes.orders.keys()]);
  let sheet: Loose = { ...base };
  for (const list of touched) sheet = withList(sheet, list, draftItems(base, changes, list));
  return sheet as unknown as Sheet;
}

function withList(sheet: Loose, list: DraftList, items: ReadonlyMap<string, DraftItem>): Loose {
  const texts = sheet["texts"] as Readonly<Record<string, Loose>>;
  const languages = new Set([...Object.keys(texts), ...[...items.values()].flatMap((item) => Object.keys(item.texts))]);
  const words = (name: string): Loose => {
    const own = texts[name] ?? noTexts(name);
    if (list === HEAD) return { ...own, ...(items.get(HEAD)?.texts[name] as Loose | undefined) };
    if (NUMBERED.has(list)) return own;
    const there = [...items].flatMap(([key, item]) =>
      Object.hasOwn(item.texts, name) ? [[key, item.texts[name]]] : [],
    );
    if (there.length === 0 && at(own, textPath(list)) === undefined) return own;
    return withAt(own, textPath(list), Object.fromEntries(there));
  };
  const said = Object.fromEntries([...languages].map((name) => [name, words(name)]));
  if (list === HEAD) return { ...sheet, ...(items.get(HEAD)?.value as Loose | undefined), texts: said };
  if (WORDS_ALONE.has(list)) return { ...sheet, texts: said };
  const things = [...items.values()].map(({ value }) => value);
  if (BROUGHT.has(list) && things.length === 0 && at(sheet, dataPath(list)) === undefined)
    return { ...sheet, texts: said };
  return { ...withAt(sheet, dataPath(list), things), texts: said };
}

const noTexts = (language: string): SheetTexts & Loose => ({
  language,
  title: "",
  about: "",
  points: {},
  faults: {},
  jobs: {},
});

/** Which item a problem is about, and where inside it; undefined for the sheet as a whole. */
export interface AboutItem {
  readonly list: DraftList;
  readonly item: string;
  readonly inside: Path;
}

/** The item a path of a whole sheet leads into, given the items of the sheet as it stands. */
export function aboutItem(sheet: Sheet, path: Path): AboutItem | undefined {
  const inTexts = path[0] === "texts";
  const language = inTexts ? String(path[1] ?? "") : "";
  const [head, ...rest] = inTexts ? path.slice(2) : path;
  if (head === "label" || head === "opens-for" || (inTexts && (head === "title" || head === "about")))
    return { list: HEAD, item: HEAD, inside: [String(head)] };
  const [name, ...more] = head === "brings" ? rest : [head ?? "", ...rest];
  const list = DRAFT_LISTS.find((one) => one === name) as DraftList | undefined;
  const [which, ...inside] = more;
  if (list === undefined || which === undefined) return undefined;
  if (inTexts) return { list, item: String(which), inside: ["texts", language, ...inside] };
  const item = [...itemsOf(sheet, list).keys()][Number(which)];
  return item === undefined ? undefined : { list, item, inside };
}
