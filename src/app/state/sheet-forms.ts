/**
 * An item of a sheet under work as its form sees it: every box stands at a path inside the item, spelled as problems
 * spell it (`limits`' `bands`, `major`; words below `texts` and their language). Pure; judges nothing.
 */
import type { AboutItem, DraftItem } from "../../core/sheet/draft.js";
import type { Sheet } from "../../core/sheet/run.js";
import { LANGUAGE } from "./shelf.js";

/** The language a sheet's words are changed in: the one shown, else the only one it has. */
export const languageOf = ({ texts }: Pick<Sheet, "texts">): string =>
  Object.hasOwn(texts, LANGUAGE) ? LANGUAGE : (Object.keys(texts)[0] ?? LANGUAGE);

export type Inside = readonly (string | number)[];
type Loose = Readonly<Record<string, unknown>>;

/** What is told of one item: the part of it that a form places under its boxes. */
export interface Told {
  readonly is: "problem" | "note";
  readonly says: string;
  readonly about?: AboutItem;
}

const isLoose = (value: unknown): value is Loose =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const within = (value: unknown, path: Inside): unknown =>
  path.reduce<unknown>((inner, step) => {
    if (Array.isArray(inner)) return inner[Number(step)];
    return isLoose(inner) && Object.hasOwn(inner, step) ? inner[step] : undefined;
  }, value);

/** What stands there; undefined where nothing does. */
export const valueAt = (item: DraftItem, [first, ...rest]: Inside): unknown =>
  first === "texts" ? within(item.texts, rest) : within(item.value, first === undefined ? [] : [first, ...rest]);

export const textAt = (item: DraftItem, path: Inside): string => {
  const value = valueAt(item, path);
  return typeof value === "string" ? value : typeof value === "number" ? String(value) : "";
};
export const isOnAt = (item: DraftItem, path: Inside): boolean => valueAt(item, path) === true;
export const listAt = (item: DraftItem, path: Inside): readonly unknown[] => {
  const value = valueAt(item, path);
  return Array.isArray(value) ? value : [];
};
export const namesAt = (item: DraftItem, path: Inside): readonly string[] =>
  listAt(item, path).filter((one) => typeof one === "string");
/** Entries of what is kept by name: fields of a point, relations of a place. */
export function entriesAt(item: DraftItem, path: Inside): readonly (readonly [string, unknown])[] {
  const value = valueAt(item, path);
  return isLoose(value) ? Object.entries(value) : [];
}

function withWithin(value: unknown, [first, ...rest]: Inside, put: unknown): unknown {
  if (first === undefined) return put;
  if (typeof first === "number") {
    const list: readonly unknown[] = Array.isArray(value) ? value : [];
    const next = withWithin(list[first], rest, put);
    if (next === undefined) return list.filter((_, i) => i !== first);
    return first < list.length ? list.with(first, next) : [...list, next];
  }
  const before = isLoose(value) ? value : {};
  const next = withWithin(before[first], rest, put);
  if (next !== undefined) return { ...before, [first]: next };
  const { [first]: _, ...without } = before;
  return without;
}

/** The item with something else there; with undefined, with nothing there. */
export function withAt(item: DraftItem, [first, ...rest]: Inside, put: unknown): DraftItem {
  if (first === undefined) return { ...item, value: put };
  if (first !== "texts") return { ...item, value: withWithin(item.value, [first, ...rest], put) };
  return { ...item, texts: withWithin(item.texts, rest, put) as DraftItem["texts"] };
}

/** The same, and what is left empty goes too: an optional part is there with something in it, or not at all. */
export function withoutAt(item: DraftItem, path: Inside): DraftItem {
  const [less, above] = [withAt(item, path, undefined), path.slice(0, -1)];
  return entriesAt(less, above).length > 0 || listAt(less, above).length > 0 ? less : withAt(less, above, undefined);
}

/** A list with the one at `from` standing at `to`; as it was where there is no such place. */
export function moved<One>(list: readonly One[], from: number, to: number): readonly One[] {
  const one = list[from];
  if (one === undefined || to < 0 || to >= list.length) return list;
  return list.toSpliced(from, 1).toSpliced(to, 0, one);
}

const COMBINING = /\p{Mn}/gu;
/** What a sheet written as text would read as no word but as yes, no or nothing. */
const NO_WORDS: ReadonlySet<string> = new Set(["true", "false", "null"]);
/**
 * A name as an id is written, `Nut at the hub` as `nut-at-the-hub`, `2 turns` as `n-2-turns`, since a field's name begins
 * with a letter and a word of digits alone is a figure; `otherwise` where nothing of it can be written so.
 */
export function slug(name: string, otherwise: string): string {
  const plain = name.normalize("NFD").replace(COMBINING, "").toLowerCase();
  const words = plain.match(/[a-z0-9]+/g) ?? [];
  const joined = words.join("-") || otherwise;
  return /^[a-z]/.test(joined) && !NO_WORDS.has(joined) ? joined : `n-${joined}`;
}

const FROM = 2;
/** The slug, with a number behind it while it is or ever was another's. */
export function freshSlug(name: string, otherwise: string, taken: Iterable<string>): string {
  const all = new Set(taken);
  const wanted = slug(name, otherwise);
  for (let n = FROM - 1; ; n += 1) {
    const one = n < FROM ? wanted : `${wanted}-${n}`;
    if (!all.has(one)) return one;
  }
}

const isUnder = (path: Inside, inside: Inside): boolean => path.every((step, i) => String(step) === String(inside[i]));

/** What is told of the box at a path, and of all that stands inside it. */
export const toldAt = (told: readonly Told[], path: Inside): string | undefined =>
  joined(told.filter(({ about }) => about !== undefined && isUnder(path, about.inside)));
/** What is told of the thing itself, not of what stands inside it. */
export const toldOf = (told: readonly Told[], path: Inside): string | undefined =>
  joined(told.filter(({ about }) => about && isUnder(path, about.inside) && about.inside.length === path.length));
const joined = (told: readonly Told[]): string | undefined =>
  told.length === 0 ? undefined : [...new Set(told.map(({ says }) => says))].join(" ");

/** A figure as typed, with point or comma; undefined for what is none. */
export function figureFrom(text: string): number | undefined {
  const plain = text.trim().replace(",", ".");
  const value = Number(plain);
  return plain === "" || !Number.isFinite(value) ? undefined : value;
}
