/**
 * One car's places laid over the open sheets: every point at every place, every rule where it stands, and the
 * nodes conclusions rest on. Knows no replies; shared by all sessions with the same sheets and places.
 */
import { Unknown } from "../expr/run.js";
import { buildPlaces, type PlaceChange, type PlaceTree } from "../sheet/run.js";
import { keyText, type Problem } from "../terms/index.js";
import { cached1, cached2 } from "./cached.js";
import type { FieldInfo, LimitInfo, Model, PointInfo, RefInfo, RuleInfo } from "./model.js";
import { plainId } from "./model.js";
import type {
  AppliesNode,
  AskedNode,
  DiscardNode,
  FactNode,
  GateNode,
  GivenNode,
  LastNode,
  Node,
  RuleNode,
  SlotNode,
  Spot,
  ValueNode,
} from "./nodes.js";

export interface Site {
  readonly model: Model;
  readonly tree: PlaceTree;
  readonly problems: readonly Problem[];
  readonly open: ReadonlySet<string>;
  readonly nodes: readonly Node[];
  /** Nodes below this id are slots and declared facts. */
  readonly leaves: number;
  readonly spots: readonly Spot[];
  /** Spots of open sheets and of gates' sets, in walking order. */
  readonly walk: readonly Spot[];
  readonly readingSlots: readonly SlotNode[];
  /** Whether a place is another or lies in it. */
  readonly within: (outer: string, inner: string) => boolean;
  /** By place, of one point. */
  readonly spotsOf: (point: PointInfo) => ReadonlyMap<string, Spot>;
  /** Rules of open sheets where they stand, in sheet and walking order. */
  readonly rules: readonly RuleNode[];
  readonly gates: readonly GateNode[];
  readonly asked: readonly AskedNode[];
  /** The slot a field name means at a place: there or at the wider place around it. */
  readonly slotFor: (ref: RefInfo, place: string) => SlotNode | undefined;
  /** Slots and places seen from a wider place: itself or around, else every one within. */
  readonly spotsFor: (point: PointInfo, place: string) => readonly Spot[];
  readonly factFor: (name: string) => FactNode;
  readonly derivedAt: (ref: RefInfo, place: string) => ValueNode | undefined;
  readonly bandAt: (ref: RefInfo, place: string) => ValueNode | undefined;
  /** Where a reading as judged for the screen is kept. */
  readonly judgedAt: (ref: RefInfo, place: string) => ValueNode | undefined;
  readonly appliesAt: (limit: LimitInfo, place: string) => AppliesNode;
  readonly bookOf: (limit: LimitInfo) => GivenNode;
  /** A slot as it was last replied to in a car state. */
  readonly lastAt: (slot: SlotNode, state: string) => LastNode;
  readonly odometer: GivenNode;
  readonly foundAt: (fault: string, place: string) => GivenNode;
  readonly related: (relation: string, place: string) => readonly string[];
}

/** The state written in keys of points no loaded sheet declares. */
const NO_STATE = "";
export const factKey = (name: string): string => keyText({ point: "car", place: "car", state: NO_STATE, field: name });

/** Lays sheets over a car. `open`: ids of the sheets whose rules run. */
export function buildSite(model: Model, open: readonly string[], changes: readonly PlaceChange[]): Site {
  const { tree, problems } = buildPlaces(model.common.places, changes);
  const nodes: Node[] = [];
  const add = <N extends Node>(make: (id: number) => N): N => {
    const node = make(nodes.length);
    nodes.push(node);
    return node;
  };
  const openSheets = new Set(open);
  const ranks = stateRanks(model, tree);
  const spots: Spot[] = [];
  const byPoint = new Map<PointInfo, Map<string, Spot>>();
  for (const point of model.points) {
    const here = new Map<string, Spot>();
    byPoint.set(point, here);
    for (const place of tree.ofKind(point.point.place)) {
      const slots: SlotNode[] = [];
      const spot: Spot = { index: spots.length, point, place, slots, walk: ranks(point, place) };
      for (const field of point.fields) slots.push(add((id) => slotNode(id, model, spot, field)));
      spots.push(spot);
      here.set(place, spot);
    }
  }
  const facts = new Map<string, FactNode>();
  const factFor = (name: string): FactNode => {
    const plain = plainId(name);
    const before = facts.get(plain);
    if (before !== undefined) return before;
    const key = factKey(plain);
    const node = add((id): FactNode => ({ kind: "fact", id, name: plain, key, unknown: new Unknown(new Set([key])) }));
    facts.set(plain, node);
    return node;
  };
  for (const fact of model.common.facts) factFor(fact.id);
  const leaves = nodes.length;
  const inSets = new Set(model.gates.flatMap((g) => g.set.map((name) => plainId(name.split("@")[0] ?? ""))));
  const isWalked = (spot: Spot) => openSheets.has(spot.point.sheet) || inSets.has(plainId(spot.point.id));
  const runs = model.rules.filter((r) => r.sheets.every((s) => openSheets.has(s)));
  const rules = runs.flatMap((rule) =>
    tree.ofKind(rule.rule.scope).map((place) => add((id): RuleNode => ({ kind: "rule", id, rule, place }))),
  );
  const related = cached2((relation: string, place: string) => tree.related(relation, place));
  const resolve = cached2((kind: string, place: string) =>
    tree.kindOf(place) === kind ? place : tree.around(place, kind),
  );
  const none = new Map<string, Spot>();
  const spotsOf = (point: PointInfo): ReadonlyMap<string, Spot> => byPoint.get(point) ?? none;
  const spotsFor = (point: PointInfo, place: string): readonly Spot[] => {
    const here = spotsOf(point);
    const at = resolve(point.point.place, place);
    if (at !== undefined) {
      const spot = here.get(at);
      return spot === undefined ? [] : [spot];
    }
    return [...here.values()].filter((s) => tree.within(place, s.place));
  };
  const site: Site = {
    model,
    tree,
    problems,
    open: openSheets,
    nodes,
    leaves,
    spots,
    walk: spots.filter(isWalked).sort((a, b) => a.walk - b.walk),
    readingSlots: spots.flatMap((s) => s.slots.filter((slot) => slot.field.kind === "reading")),
    within: cached2((outer: string, inner: string) => tree.within(outer, inner)),
    spotsOf,
    rules,
    gates: model.gates.flatMap((gate) => [
      ...gate.trips.map((_, at) => add((id): GateNode => ({ kind: "gate", id, gate, which: "trips", at }))),
      ...gate.clears.map((_, at) => add((id): GateNode => ({ kind: "gate", id, gate, which: "clears", at }))),
    ]),
    asked: spots.flatMap((spot) =>
      spot.point.askedWhen === undefined ? [] : [add((id): AskedNode => ({ kind: "asked", id, spot }))],
    ),
    slotFor: slotTable(model, spotsOf, resolve),
    spotsFor,
    factFor,
    derivedAt: valueNodes("derived", add, resolve),
    bandAt: valueNodes("band", add, resolve),
    judgedAt: valueNodes("judged", add, resolve),
    appliesAt: cached2((limit: LimitInfo, place: string) =>
      add((id): AppliesNode => ({ kind: "applies", id, limit, place })),
    ),
    bookOf: cached1((limit: LimitInfo) =>
      add((id): GivenNode => ({ kind: "book", id, name: limit.limit.id, place: "" })),
    ),
    lastAt: cached2((slot: SlotNode, state: string) => add((id): LastNode => ({ kind: "last", id, slot, state }))),
    odometer: add((id): GivenNode => ({ kind: "odometer", id, name: "", place: "" })),
    foundAt: cached2((fault: string, place: string) =>
      add((id): GivenNode => ({ kind: "found", id, name: fault, place })),
    ),
    related,
  };
  addDiscards(site, runs, add);
  return site;
}

function slotNode(id: number, model: Model, spot: Spot, field: FieldInfo): SlotNode {
  const state = spot.point.states[0] ?? NO_STATE;
  const key = keyText({ point: spot.point.id, place: spot.place, state, field: field.name });
  const ref = model.refOf({ point: spot.point.id, field: field.name });
  return { kind: "slot", id, spot, field, ref, key, unknown: new Unknown(new Set([key])), discards: [] };
}

/** Walking order: car state, then place, then as the sheets list their points. */
function stateRanks(model: Model, tree: PlaceTree): (point: PointInfo, place: string) => number {
  const places = tree.all.length + 1;
  const points = model.points.length + 1;
  return (point, place) => {
    const state = model.stateOrder.get(point.states[0] ?? NO_STATE) ?? model.stateOrder.size;
    return (state * places + tree.order(place)) * points + point.order;
  };
}

function slotTable(
  model: Model,
  spotsOf: Site["spotsOf"],
  resolve: (kind: string, place: string) => string | undefined,
): Site["slotFor"] {
  const tables: (Map<string, SlotNode | undefined> | undefined)[] = model.refs.map(() => undefined);
  return (ref, place) => {
    if (ref.is !== "field") return undefined;
    let table = tables[ref.index];
    if (table === undefined) {
      table = new Map();
      tables[ref.index] = table;
    }
    const before = table.get(place);
    if (before !== undefined || table.has(place)) return before;
    const at = resolve(ref.point.point.place, place);
    const spot = at === undefined ? undefined : spotsOf(ref.point).get(at);
    const slot = spot?.slots.find((s) => s.field === ref.field);
    table.set(place, slot);
    return slot;
  };
}

/** Values of a reference at the place of its kind there or around. */
function valueNodes(
  kind: ValueNode["kind"],
  add: (make: (id: number) => ValueNode) => ValueNode,
  resolve: (kind: string, place: string) => string | undefined,
): (ref: RefInfo, place: string) => ValueNode | undefined {
  const nodes = cached2((ref: RefInfo, place: string) => add((id) => ({ kind, id, ref, place })));
  return cached2((ref: RefInfo, place: string) => {
    if (ref.is === "stranger") return undefined;
    const at = resolve(ref.is === "field" ? ref.point.point.place : ref.derived.derived.place, place);
    return at === undefined ? undefined : nodes(ref, at);
  });
}

/** Hangs every discarding rule on the readings it may discard. */
function addDiscards(
  site: Site,
  runs: readonly RuleInfo[],
  add: (make: (id: number) => DiscardNode) => DiscardNode,
): void {
  for (const rule of runs) {
    const { effect, at } = rule.rule;
    if (typeof effect !== "object" || !("discard-reading" in effect)) continue;
    const ref = site.model.named(effect["discard-reading"]);
    if (ref?.is !== "field") continue;
    for (const place of site.tree.ofKind(rule.rule.scope)) {
      const node = add((id) => ({ kind: "discard", id, rule, place }));
      const concluded = typeof at === "string" ? site.related(at, place) : [place];
      const spots = concluded.flatMap((p) => site.spotsFor(ref.point, p));
      for (const slot of spots.flatMap((s) => s.slots))
        if (slot.field.kind === "reading" && (ref.field.kind !== "reading" || slot.field === ref.field))
          // the one place where slots are completed after being made: rules come after points
          (slot.discards as DiscardNode[]).push(node);
    }
  }
}
