/** What differs between two editions of a sheet, item by item, each with what differs in it. Pure; words are the screen's. */
import { DRAFT_LISTS, type DraftItem, type DraftList, itemsOf } from "./draft.js";
import { canonicalText } from "./edition.js";
import type { Sheet } from "./schema-types.js";
import type { Path } from "./source.js";

/** One thing that differs inside an item; absent on the side where it is not there. */
export interface PartDifference {
  readonly path: Path;
  readonly before?: unknown;
  readonly after?: unknown;
}
export interface ItemDifference {
  readonly list: DraftList;
  /** Its id; of numbered items the number after, or before where it is gone. */
  readonly item: string;
  /** Of a changed item: its name before; another one only where items have numbers. */
  readonly was?: string;
  readonly is: "added" | "taken-out" | "changed";
  readonly before?: DraftItem;
  readonly after?: DraftItem;
  /** Of a changed item, in the order of its keys. */
  readonly parts: readonly PartDifference[];
}
export interface SheetDifference {
  readonly items: readonly ItemDifference[];
  /** Lists whose items stand in another order. */
  readonly reordered: readonly DraftList[];
}

export function sheetDifference(before: Sheet, after: Sheet): SheetDifference {
  const lists = DRAFT_LISTS as readonly DraftList[];
  return {
    items: lists.flatMap((list) => listDifference(list, itemsOf(before, list), itemsOf(after, list))),
    reordered: lists.filter((list) => isReordered(list, itemsOf(before, list), itemsOf(after, list))),
  };
}

type Items = ReadonlyMap<string, DraftItem>;
const isNumbered = (list: DraftList): boolean => list === "cases" || list === "nextLooks";

function listDifference(list: DraftList, before: Items, after: Items): readonly ItemDifference[] {
  const pairs = isNumbered(list) ? paired(before, after) : new Map([...after.keys()].map((key) => [key, key]));
  const partners = new Set(pairs.values());
  const now = [...after].flatMap(([item, is]): readonly ItemDifference[] => {
    const name = pairs.get(item) ?? "";
    const was = before.get(name);
    if (was === undefined) return [{ list, item, is: "added", after: is, parts: [] }];
    const parts = partsOf(was, is);
    return parts.length === 0 ? [] : [{ list, item, was: name, is: "changed", before: was, after: is, parts }];
  });
  const gone = [...before].flatMap(([item, was]): readonly ItemDifference[] =>
    partners.has(item) && (isNumbered(list) || after.has(item))
      ? []
      : [{ list, item, is: "taken-out", before: was, parts: [] }],
  );
  return [...now, ...gone];
}

/** Items without an id: the same first, then those about the same thing, in their order. */
function paired(before: Items, after: Items): ReadonlyMap<string, string> {
  const pairs = new Map<string, string>();
  const open = new Set(before.keys());
  for (const by of [canonicalText, subjectOf])
    for (const [item, is] of after) {
      if (pairs.has(item)) continue;
      const wanted = by(is.value);
      const found = [...open].find((key) => by(before.get(key)?.value) === wanted);
      if (found === undefined) continue;
      pairs.set(item, found);
      open.delete(found);
    }
  return pairs;
}

/** A case is about its rule, a next look about its fault, job or grade. */
function subjectOf(value: unknown): string {
  const { fires, fault, job, grade } = (value ?? {}) as Readonly<Record<string, unknown>>;
  return canonicalText([fires ?? null, fault ?? null, job ?? null, grade ?? null]);
}

function isReordered(list: DraftList, before: Items, after: Items): boolean {
  if (isNumbered(list)) return false;
  const kept = [...after.keys()].filter((key) => before.has(key));
  return canonicalText(kept) !== canonicalText([...before.keys()].filter((key) => after.has(key)));
}

const partsOf = (before: DraftItem, after: DraftItem): readonly PartDifference[] => [
  ...inside(before.value, after.value, []),
  ...inside(before.texts, after.texts, ["texts"]),
];

type Mapping = Readonly<Record<string, unknown>>;
const isMapping = (value: unknown): value is Mapping =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Mappings are told key by key, everything else as a whole. The order of a point's fields counts. */
function inside(before: unknown, after: unknown, path: Path): readonly PartDifference[] {
  const whole = { path, ...(before === undefined ? {} : { before }), ...(after === undefined ? {} : { after }) };
  const isFields = path.length === 1 && path[0] === "fields";
  if (!isMapping(before) || !isMapping(after))
    return canonicalText(before ?? null) === canonicalText(after ?? null) ? [] : [whole];
  if (isFields && isTurned(before, after)) return [whole];
  return [...new Set([...Object.keys(before), ...Object.keys(after)])].flatMap((key) =>
    inside(before[key], after[key], [...path, key]),
  );
}

/** The first field is what the point's bare name means, so another order is another meaning. */
function isTurned(before: Mapping, after: Mapping): boolean {
  const kept = Object.keys(before).filter((key) => key in after);
  return canonicalText(kept) !== canonicalText(Object.keys(after).filter((key) => key in before));
}
