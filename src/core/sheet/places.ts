/**
 * The places of one car: the shared tree with what this car has more or less. Knows relations and order;
 * refuses to know what is looked at there.
 */
import { type Problem, problem } from "../terms/index.js";
import type { PlaceChange } from "./car.js";
import type { PlaceDef } from "./schema-types.js";

/** Wider kinds a place lies in besides its `in`: the relation carries the kind's name. */
const WIDER = ["corner", "axle", "side"] as const;
/** Relations that hold both ways, so one of the two need state them. */
const MUTUAL = new Set(["opposite"]);
const LEFT = "side-L";
const RIGHT = "side-R";

export interface PlaceTree {
  readonly has: (place: string) => boolean;
  readonly kindOf: (place: string) => string | undefined;
  /** The place of `kind` this one is or lies in, or the one of that kind it names as a relation; the car holds all. */
  readonly around: (place: string, kind: string) => string | undefined;
  /**
   * Places a relation leads to, in walking order; empty without one. `axle` and `side`: the places of this kind with
   * the same axle (side) around them, this one included; from the axle or side itself its corners. Else what
   * places.yaml names, else the place of that kind around this one (`corner`, `car`).
   */
  readonly related: (relation: string, place: string) => readonly string[];
  /** Every place of a kind this car has, in walking order. */
  readonly ofKind: (kind: string) => readonly string[];
  /** Whether `inner` is `outer` or lies in it. */
  readonly within: (outer: string, inner: string) => boolean;
  /** As seen from the driver's seat facing forward. */
  readonly sideOf: (place: string) => "left" | "right" | "middle";
  /** Centre on the plan, 0–100 nose to tail and 0–100 left to right: its own, else that of what it lies in. */
  readonly at: (place: string) => readonly [number, number] | undefined;
  /** Position in walking order; unknown places come last. */
  readonly order: (place: string) => number;
  readonly all: readonly PlaceDef[];
}

/**
 * The tree of one car. A change that cannot be (adding an id that is or was in use, removing or hanging a place
 * on what is not there) is told and left out; the rest stands.
 */
export function buildPlaces(
  defs: readonly PlaceDef[],
  changes: readonly PlaceChange[] = [],
): { readonly tree: PlaceTree; readonly problems: readonly Problem[] } {
  const { list, problems } = applyChanges(defs, changes);
  return { tree: treeOf(byCorner(list)), problems };
}

/**
 * The list as one walks it: what lies in a corner, or names one (a pick-up, a jacking point), comes with that corner,
 * so that one goes round the car once in each car state. All else stays in the order of the list.
 */
function byCorner(list: readonly PlaceDef[]): readonly PlaceDef[] {
  const byId = byIdOf(list);
  const position = new Map(list.map((d, i) => [d.id, i]));
  const isCorner = (id: string | undefined) => id !== undefined && byId.get(id)?.kind === "corner";
  const stationOf = (place: PlaceDef): number => {
    const seen = new Set<string>();
    for (let d: PlaceDef | undefined = place; d && !seen.has(d.id); d = byId.get(d.in ?? "")) {
      seen.add(d.id);
      const corner = [d.id, ...asList(d.relations?.["corner"])].find(isCorner);
      if (corner !== undefined) return position.get(corner) ?? list.length;
    }
    return position.get(place.id) ?? list.length;
  };
  return list
    .map((place) => ({ place, station: stationOf(place) }))
    .sort((a, b) => a.station - b.station)
    .map(({ place }) => place);
}

function applyChanges(defs: readonly PlaceDef[], changes: readonly PlaceChange[]) {
  const problems: Problem[] = [];
  const used = new Set(defs.map((d) => d.id));
  let list = [...defs];
  const add = (place: PlaceDef, path: string) => {
    if (used.has(place.id)) return problems.push(problem("place-id-used", { path }, { place: place.id }));
    const parent = place.in ?? "car";
    if (!list.some((d) => d.id === parent))
      return problems.push(
        problem("unknown-place", { path }, { place: parent, found: parent, expected: list.map((d) => d.id) }),
      );
    used.add(place.id);
    const byId = byIdOf(list);
    const last = list.findLastIndex((d) => d.id === parent || liesIn(byId, d, parent));
    list = [...list.slice(0, last + 1), place, ...list.slice(last + 1)];
  };
  const remove = (id: string, path: string) => {
    if (id === "car" || !list.some((d) => d.id === id))
      return problems.push(
        problem("unknown-place", { path }, { place: id, found: id, expected: list.map((d) => d.id) }),
      );
    const byId = byIdOf(list);
    list = list.filter((d) => d.id !== id && !liesIn(byId, d, id));
  };
  parentsFirst(changes).forEach(({ change, index }) => {
    if ("add" in change) add(change.add, `places[${index}].add`);
    else remove(change.remove, `places[${index}].remove`);
  });
  return { list, problems };
}

/** The changes in their order, but places added into added ones come last. */
function parentsFirst(changes: readonly PlaceChange[]): readonly { change: PlaceChange; index: number }[] {
  const added = new Set(changes.map((change) => ("add" in change ? change.add.id : "")));
  const isInner = (change: PlaceChange) => "add" in change && added.has(change.add.in ?? "car");
  return changes
    .map((change, index) => ({ change, index }))
    .sort((a, b) => Number(isInner(a.change)) - Number(isInner(b.change)));
}

type ById = ReadonlyMap<string, PlaceDef>;
const byIdOf = (list: readonly PlaceDef[]): ById => new Map(list.map((d) => [d.id, d]));

function liesIn(byId: ById, def: PlaceDef, outer: string): boolean {
  const seen = new Set<string>();
  for (let at = def.in; at !== undefined && !seen.has(at); at = byId.get(at)?.in) {
    if (at === outer) return true;
    seen.add(at);
  }
  return false;
}

const asList = (x: string | readonly string[] | undefined): readonly string[] =>
  x === undefined ? [] : typeof x === "string" ? [x] : x;

function treeOf(list: readonly PlaceDef[]): PlaceTree {
  const byId = byIdOf(list);
  const position = new Map(list.map((d, i) => [d.id, i]));
  const kinds = new Map<string, string[]>();
  for (const d of list) kinds.set(d.kind, [...(kinds.get(d.kind) ?? []), d.id]);
  const order = (place: string) => position.get(place) ?? list.length;
  const inOrder = (ids: Iterable<string>) =>
    [...new Set(ids)].filter((id) => byId.has(id)).sort((a, b) => order(a) - order(b));
  const named = namedRelations(list);
  const kindOf = (place: string) => byId.get(place)?.kind;
  const ofKind = (kind: string) => kinds.get(kind) ?? [];

  /** What a place lies in: the wider places it names, then its parent. */
  const wider = (place: string): readonly string[] => {
    const parent = byId.get(place)?.in;
    const by = WIDER.flatMap((kind) => (named.get(place)?.get(kind) ?? []).filter((id) => kindOf(id) === kind));
    return parent === undefined ? by : [...by, parent];
  };

  const around = (place: string, kind: string): string | undefined => {
    if (!byId.has(place)) return undefined;
    if (kind === "car") return byId.has("car") ? "car" : undefined;
    const queue = [place];
    for (const at of queue) {
      if (kindOf(at) === kind) return at;
      const by = named
        .get(at)
        ?.get(kind)
        ?.find((id) => kindOf(id) === kind);
      if (by !== undefined) return by;
      queue.push(...wider(at).filter((id) => byId.has(id) && !queue.includes(id)));
    }
    return undefined;
  };

  const within = (outer: string, inner: string): boolean => {
    const def = byId.get(inner);
    if (!byId.has(outer) || def === undefined) return false;
    if (outer === inner || outer === "car" || liesIn(byId, def, outer)) return true;
    return WIDER.some((kind) => kindOf(outer) === kind && around(inner, kind) === outer);
  };

  const related = (relation: string, place: string): readonly string[] => {
    if (!byId.has(place)) return [];
    if (relation === "here") return [place];
    if (relation === "axle" || relation === "side") {
      const hub = around(place, relation);
      const kind = hub === place ? "corner" : kindOf(place);
      return hub === undefined || kind === undefined ? [] : ofKind(kind).filter((id) => within(hub, id));
    }
    const hub = around(place, relation);
    return inOrder(named.get(place)?.get(relation) ?? (hub === undefined ? [] : [hub]));
  };

  const at = (place: string) => {
    const seen = new Set<string>();
    for (let d = byId.get(place); d && !seen.has(d.id); d = d.in === undefined ? undefined : byId.get(d.in)) {
      if (d.at) return d.at;
      seen.add(d.id);
    }
    return undefined;
  };

  const sideOf = (place: string) => {
    const side = around(place, "side");
    return side === LEFT ? "left" : side === RIGHT ? "right" : "middle";
  };

  return {
    has: (place) => byId.has(place),
    kindOf,
    around,
    related,
    ofKind,
    within,
    sideOf,
    at,
    order,
    all: list,
  };
}

/** What each place names, with mutual relations filled in from the other end; a place's own word wins. */
function namedRelations(list: readonly PlaceDef[]): ReadonlyMap<string, ReadonlyMap<string, readonly string[]>> {
  const out = new Map<string, Map<string, readonly string[]>>();
  for (const d of list)
    out.set(d.id, new Map(Object.entries(d.relations ?? {}).map(([name, to]) => [name, asList(to)])));
  for (const d of list)
    for (const [name, to] of Object.entries(d.relations ?? {}))
      if (MUTUAL.has(name))
        for (const id of asList(to)) {
          const back = out.get(id);
          if (back && !back.has(name)) back.set(name, [d.id]);
        }
  return out;
}
