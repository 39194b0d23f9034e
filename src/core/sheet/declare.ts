/** Tells the condition language what may be named: points, derived values, car facts, places and faults. Checks nothing. */
import type { Declarations, FactType, Named, NameType, Relation } from "../expr/author.js";
import type { Trade } from "../expr/run.js";
import { isQuantity } from "../units/index.js";
import { CROSS, type Lookup } from "./lookup.js";
import { celName } from "./names.js";
import type { PlaceTree } from "./places.js";
import type { Fact, Field } from "./schema-types.js";

/**
 * Trade functions conditions may call, by name, and what works them out (without it the bands of values that rest on
 * one go unchecked); the sheets that are known but not loaded.
 */
export interface Surroundings {
  readonly functions?: Declarations["functions"];
  readonly work?: Trade;
  readonly otherSheets?: readonly string[];
}

/** Declarations for every condition of the part looked up; build once per part. */
export function declarationsFor(lookup: Lookup, around: Surroundings = {}): Declarations {
  return {
    names: namesOf(lookup),
    facts: Object.fromEntries(lookup.common.facts.map((f) => [f.id.replaceAll("-", "_"), factType(f)])),
    kinds: kindsOf(lookup.tree),
    relations: relationsOf(lookup.tree),
    faults: [...lookup.faults],
    functions: around.functions ?? {},
    sheets: lookup.parts.map((p) => p.prefix).filter((prefix) => prefix !== CROSS),
    ...(around.otherSheets ? { otherSheets: around.otherSheets } : {}),
  };
}

function namesOf(lookup: Lookup): Readonly<Record<string, Named>> {
  const names: Record<string, Named> = {};
  for (const part of lookup.parts) {
    for (const point of part.points)
      for (const [field, declared] of Object.entries(point.fields)) {
        const type = nameType(declared);
        if (type) names[celName(point, field)] = { ref: { point: point.id, field }, kind: point.place, type };
      }
    for (const d of part.derived)
      if (isQuantity(d.quantity))
        names[d.id.replaceAll("-", "_")] = {
          ref: { point: d.id, field: "" },
          kind: d.place,
          type: { is: "reading", quantity: d.quantity },
        };
  }
  return names;
}

/** Undefined for a quantity nobody knows: that is told where the field is checked. */
function nameType(field: Field): NameType | undefined {
  if ("words" in field) return { is: field.several ? "words" : "word", words: field.words };
  if ("count" in field) return { is: "count" };
  if ("yes" in field) return { is: "yes" };
  if ("dateCode" in field) return { is: "date-code" };
  if (!isQuantity(field.quantity)) return undefined;
  return { is: "reading", quantity: field.quantity, ...(field.results ? { results: field.results } : {}) };
}

function factType(fact: Fact): FactType {
  if (fact.kind === "word") return { is: "word", words: fact.words ?? [] };
  if (fact.kind === "yes") return { is: "yes" };
  const { quantity } = fact;
  return quantity !== undefined && isQuantity(quantity) ? { is: "reading", quantity } : { is: "count" };
}

/** For each kind the wider kinds every such place lies in; those of few places first, the car last. */
function kindsOf(tree: PlaceTree): Readonly<Record<string, readonly string[]>> {
  const kinds = [...new Set(tree.all.map((p) => p.kind))];
  const size = (kind: string) => tree.ofKind(kind).length;
  return Object.fromEntries(
    kinds.map((kind) => {
      const wider = kinds.filter(
        (k) => k !== kind && tree.ofKind(kind).every((place) => tree.around(place, k) !== undefined),
      );
      return [kind, wider.sort((a, b) => size(b) - size(a))];
    }),
  );
}

/** By place the relations it names or is named in: no other leads from it, unless the name is a kind of place. */
function namedAt(tree: PlaceTree): ReadonlyMap<string, ReadonlySet<string>> {
  const at = new Map<string, Set<string>>();
  for (const place of tree.all)
    for (const [name, to] of Object.entries(place.relations ?? {}))
      for (const id of [place.id, ...(typeof to === "string" ? [to] : to)])
        at.set(id, (at.get(id) ?? new Set()).add(name));
  return at;
}

/** What the tree offers from each kind: relations places name, and the built-in `axle`, `side` and `corner`. */
function relationsOf(tree: PlaceTree): readonly Relation[] {
  const found = new Map<string, Relation>();
  const named = namedAt(tree);
  const names = new Set(["axle", "side", "corner", ...tree.all.flatMap((p) => Object.keys(p.relations ?? {}))]);
  const anywhere = new Set([...names].filter((name) => tree.ofKind(name).length > 0));
  for (const place of tree.all)
    for (const name of names) {
      if (!anywhere.has(name) && !named.get(place.id)?.has(name)) continue;
      const to = tree.related(name, place.id);
      const listed = name === "axle" || name === "side" || Array.isArray(place.relations?.[name]);
      for (const target of to) {
        const relation = { name, from: place.kind, to: tree.kindOf(target) ?? "car", many: listed };
        const key = `${name} ${relation.from} ${relation.to}`;
        if (!found.get(key)?.many) found.set(key, relation);
      }
    }
  return [...found.values()];
}
