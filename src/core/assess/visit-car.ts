/** The car part of a visit file: facts, places, figures of the limits book. Sets aside what it cannot take. */
import {
  type BareCommon,
  buildPlaces,
  type CarLimit,
  type Limit,
  type PlaceChange,
  type PlaceTree,
} from "../sheet/run.js";
import { BASES, GRADES, type Grade } from "../terms/index.js";
import { isQuantity, readTyped, unitOf } from "../units/index.js";
import type { CarInput, FactValue } from "./contract.js";
import { plainId } from "./model.js";
import { placeKey } from "./visit-replies.js";
import {
  asFields,
  type Fields,
  listIn,
  type Noting,
  note,
  numberOf,
  shown,
  some,
  textOf,
  wordOf,
} from "./visit-shape.js";

export interface CarRead {
  readonly car: CarInput;
  readonly tree: PlaceTree;
  readonly places: ReadonlyMap<string, string>;
}

export function readCar(value: unknown, common: BareCommon, limits: readonly Limit[], at: Noting): CarRead {
  const of = value === undefined ? {} : asFields(value);
  if (of === undefined) note(at, "visit.car-shape", "car", { found: shown(value) });
  const car = of ?? {};
  const changes = readPlaces(car, common, at);
  const { tree } = buildPlaces(common.places, changes);
  const places = new Map(tree.all.map((p) => [placeKey(p.id), p.id]));
  const firstUsed = dateText(car["firstUsed"]);
  const country = textOf(car["country"]);
  const seat = wordOf(car["seat"], ["left", "right"]);
  if (car["firstUsed"] !== undefined && firstUsed === undefined)
    note(at, "visit.date", "car.firstUsed", { found: shown(car["firstUsed"]) });
  if (car["country"] !== undefined && country === undefined)
    note(at, "visit.text", "car.country", { found: shown(car["country"]) });
  if (car["seat"] !== undefined && seat === undefined)
    note(at, "visit.unknown-word", "car.seat", { found: shown(car["seat"]), expected: ["left", "right"] });
  return {
    tree,
    places,
    car: {
      ...(firstUsed === undefined ? {} : { firstUsed }),
      ...(country === undefined ? {} : { country }),
      ...(seat === undefined ? {} : { seat }),
      ...(changes.length === 0 ? {} : { places: changes }),
      facts: readFacts(car["facts"], common, at),
      limits: readLimits(car, limits, places, at),
    },
  };
}

/** A year, or an ISO date; a number counts as a year. */
function dateText(value: unknown): string | undefined {
  const text = typeof value === "number" ? String(value) : textOf(value);
  return text !== undefined && /^\d{4}(-\d{2}(-\d{2})?)?$/.test(text) ? text : undefined;
}

function readPlaces(car: Fields, common: BareCommon, at: Noting): readonly PlaceChange[] {
  const changes: PlaceChange[] = [];
  for (const [i, entry] of listIn(car, "places", "car.", at).entries()) {
    const path = `car.places[${i}]`;
    const change = placeChange(asFields(entry));
    if (change === undefined) {
      note(at, "visit.place-shape", path, { found: shown(entry) });
      continue;
    }
    // tried on top of those before it: a place that cannot be is told with its own entry
    const tried = buildPlaces(common.places, [...changes, change]).problems;
    for (const p of tried) at.problems.push({ ...p, where: { path } });
    if (tried.length === 0) changes.push(change);
  }
  return changes;
}

function placeChange(of: Fields | undefined): PlaceChange | undefined {
  const remove = textOf(of?.["remove"]);
  if (remove !== undefined) return { remove };
  const add = asFields(of?.["add"]);
  const id = textOf(add?.["id"]);
  const kind = textOf(add?.["kind"]);
  if (add === undefined || id === undefined || kind === undefined) return undefined;
  const inside = textOf(add["in"]);
  const relations = relationsOf(add["relations"]);
  return {
    add: {
      id,
      kind,
      ...(inside === undefined ? {} : { in: inside }),
      ...(relations === undefined ? {} : { relations }),
    },
  };
}

function relationsOf(value: unknown): Record<string, string | string[]> | undefined {
  const of = asFields(value);
  if (of === undefined) return undefined;
  const out: Record<string, string | string[]> = {};
  for (const [name, to] of Object.entries(of)) {
    if (typeof to === "string") out[name] = to;
    else if (Array.isArray(to)) out[name] = to.filter((x) => typeof x === "string");
  }
  return out;
}

function readFacts(value: unknown, common: BareCommon, at: Noting): Record<string, FactValue> {
  const facts: Record<string, FactValue> = {};
  if (value === undefined) return facts;
  const of = asFields(value);
  if (of === undefined) return note(at, "visit.facts-shape", "car.facts", { found: shown(value) }) ?? facts;
  const declared = new Map(common.facts.map((f) => [plainId(f.id), f]));
  for (const [name, said] of Object.entries(of)) {
    const path = `car.facts.${name}`;
    const fact = declared.get(plainId(name));
    if (fact === undefined) {
      note(at, "visit.unknown-fact", path, { found: name, expected: some(common.facts.map((f) => f.id)) });
      continue;
    }
    const read = factFor(fact, said);
    if (read === undefined)
      note(at, "visit.fact-value", path, { found: shown(said), expected: fact.words ?? [fact.kind] });
    else facts[fact.id] = read;
  }
  return facts;
}

function factFor(fact: BareCommon["facts"][number], said: unknown): FactValue | undefined {
  if (fact.kind === "word") return wordOf(typeof said === "boolean" ? (said ? "yes" : "no") : said, fact.words ?? []);
  if (fact.kind === "yes")
    return said === true || said === "yes" ? true : said === false || said === "no" ? false : undefined;
  if (fact.quantity !== undefined && fact.unit !== undefined && typeof said === "string") {
    if (!isQuantity(fact.quantity)) return undefined;
    return readTyped(said, { quantity: fact.quantity, unit: fact.unit }).ok ? said : undefined;
  }
  return numberOf(said);
}

function readLimits(
  car: Fields,
  limits: readonly Limit[],
  places: ReadonlyMap<string, string>,
  at: Noting,
): readonly CarLimit[] {
  const known = new Map(limits.map((l) => [plainId(l.id), l]));
  return listIn(car, "limits", "car.", at).flatMap((entry, i): readonly CarLimit[] => {
    const path = `car.limits[${i}]`;
    const of = asFields(entry);
    const limit = known.get(plainId(textOf(of?.["limit"]) ?? ""));
    if (of === undefined || limit === undefined)
      return (
        note(at, "visit.unknown-limit", path, {
          found: shown(of?.["limit"] ?? entry),
          expected: some([...known.values()].map((l) => l.id)),
        }) ?? []
      );
    const figure = figureOf(of, limit, path, at);
    const place = of["place"] === undefined ? undefined : places.get(placeKey(textOf(of["place"]) ?? ""));
    if (of["place"] !== undefined && place === undefined)
      return note(at, "visit.unknown-place", path, { found: shown(of["place"]), point: limit.of, expected: [] }) ?? [];
    return figure === undefined ? [] : [{ ...figure, ...(place === undefined ? {} : { place }) }];
  });
}

function figureOf(of: Fields, limit: Limit, path: string, at: Noting): CarLimit | undefined {
  const { quantity } = limit;
  const unit = isQuantity(quantity) ? unitOf(textOf(of["unit"]) ?? limit.unit, quantity)?.code : undefined;
  const grade = of["grade"] === undefined ? undefined : wordOf(of["grade"], GRADES);
  const basis = of["basis"] === undefined ? "maker" : wordOf(of["basis"], BASES);
  if (unit === undefined || !isQuantity(quantity))
    return note(at, "visit.unit", path, { found: shown(of["unit"]), quantity, expected: [limit.unit] });
  if (of["grade"] !== undefined && grade === undefined)
    return note(at, "visit.unknown-word", path, { found: shown(of["grade"]), expected: GRADES });
  if (basis === undefined) return note(at, "visit.unknown-word", path, { found: shown(of["basis"]), expected: BASES });
  const typed = (said: unknown): string | undefined => {
    if (typeof said !== "string" && typeof said !== "number") return undefined;
    const read = readTyped(String(said), { quantity, unit });
    return read.ok && read.value.unit === unit ? read.value.text : undefined;
  };
  const source = textOf(of["source"]);
  const base = {
    limit: limit.id,
    unit,
    basis,
    ...(grade === undefined ? {} : { grade }),
    ...(source === undefined ? {} : { source }),
  };
  if (of["bands"] === undefined) {
    const value = typed(of["value"]);
    return value === undefined ? note(at, "visit.reading", path, { found: shown(of["value"]) }) : { ...base, value };
  }
  const bands: Partial<Record<Grade, string>> = {};
  for (const [name, said] of Object.entries(asFields(of["bands"]) ?? {})) {
    const of_ = wordOf(name, GRADES);
    const value = typed(said);
    if (of_ === undefined || value === undefined)
      return note(at, "visit.reading", `${path}.bands`, { found: `${name}: ${shown(said)}` });
    bands[of_] = value;
  }
  return Object.keys(bands).length === 0
    ? note(at, "visit.reading", `${path}.bands`, { found: shown(of["bands"]) })
    : { ...base, bands };
}
