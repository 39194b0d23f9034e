/** Gates: tripped, cleared, or not cleared and what to do first; and the cautions that are due. Grades nothing. */

import { type Evaluate, type Outcome, Unknown } from "../expr/run.js";
import { DO_NOT_DRIVE } from "../terms/index.js";
import { underEveryChoice } from "./choices.js";
import type { CautionDue, Fault, Finding, GateState, Opened, TripCause } from "./contract.js";
import { spotsOfName } from "./findings.js";
import { eachOnce, openedOf } from "./keys.js";
import type { Kept } from "./ledger.js";
import type { GateInfo } from "./model.js";
import type { GateNode } from "./nodes.js";
import type { Site } from "./site.js";
import type { World } from "./world.js";

/** A gate condition at the car: any choice that trips, trips; it clears only when every choice clears. */
export interface ConditionRun {
  readonly is: "true" | "false" | "unknown";
  readonly missing: ReadonlySet<string>;
  readonly under: readonly number[];
  /** Of a trip that holds: the places at which it alone would. Empty where it speaks of the car as a whole. */
  readonly places: readonly string[];
}

const CAR = "car";

export function runCondition(world: World, node: GateNode): Kept<ConditionRun> {
  const when = node.gate[node.which][node.at]?.when;
  const under = new Set<number>();
  const problems = world.problems;
  world.problems = [];
  world.kindsAsked.clear();
  const asked = underEveryChoice(world, (): Outcome => {
    if (when === undefined) return new Unknown(new Set());
    const start = world.mark();
    const outcome = when(world, CAR);
    for (const id of world.slotsUnder(world.since(start))) under.add(id);
    return outcome;
  });
  const told = world.problems;
  world.problems = problems;
  const kinds = [...world.kindsAsked];
  const outcomes = asked.answers.map((a) => a.value);
  const missing = new Set<string>();
  for (const o of outcomes) if (o instanceof Unknown) for (const key of o.missing) missing.add(key);
  const every = outcomes.length > 0 && outcomes.every((o) => o === true);
  const any = outcomes.some((o) => o === true);
  const holds = node.which === "trips" ? any : every;
  const isFalse = outcomes.length > 0 && outcomes.every((o) => isNo(o, node.which));
  const is = holds
    ? "true"
    : isFalse || (node.which === "clears" && outcomes.some((o) => o === false))
      ? "false"
      : "unknown";
  // The whole is known by the first place that holds: what the others rest on is asked place by place.
  const at = holds && when !== undefined && node.which === "trips" ? holdingAt(world, when, kinds) : NOWHERE;
  return {
    value: { is, missing, under: [...new Set([...under, ...world.slotsUnder(at.reads)])], places: at.places },
    reads: [...new Set([...asked.reads, ...at.reads])],
    problems: told,
  };
}

const NOWHERE: { readonly places: readonly string[]; readonly reads: readonly number[] } = { places: [], reads: [] };

/** Where a condition over all places of a kind holds by one place alone. */
function holdingAt(world: World, when: Evaluate, kinds: readonly string[]): typeof NOWHERE {
  const reads: number[] = [];
  const problems = world.problems;
  const places = kinds
    .flatMap((kind) => world.site.tree.ofKind(kind))
    .filter((place) => {
      const asked = world.holding(place, () => underEveryChoice(world, () => when(world, CAR)));
      reads.push(...asked.reads);
      return asked.answers.some(({ value }) => value === true);
    });
  // What could not be worked out was told when the whole was asked.
  world.problems = problems;
  return { places, reads };
}

/** A trip that does not apply (nothing of the kind is fitted) does not trip; a clearing that does not apply is no 'no'. */
function isNo(outcome: Outcome, which: GateNode["which"]): boolean {
  if (!(outcome instanceof Unknown)) return outcome === false;
  return which === "trips" && (outcome.missing.size === 0 || outcome.only === false);
}

export interface GateInput {
  readonly site: Site;
  readonly runOf: (node: GateNode) => ConditionRun;
  readonly faults: readonly Fault[];
  readonly findings: readonly Finding[];
  /** Whether a point still has to be answered. */
  readonly isOpen: (o: Opened) => boolean;
}

/** Every gate, whatever sheets are open. */
export function gateStates(input: GateInput): readonly GateState[] {
  return input.site.model.gates.map((gate) => gateState(input, gate));
}

function gateState({ site, runOf, faults, findings, isOpen }: GateInput, gate: GateInfo): GateState {
  const nodes = site.gates.filter((n) => n.gate === gate);
  const trips = nodes.filter((n) => n.which === "trips");
  const clears = nodes.filter((n) => n.which === "clears");
  const tripping = trips.filter((n) => runOf(n).is === "true");
  const causes: TripCause[] = tripping.map((n) => ({
    kind: "condition",
    path: gate.trips[n.at]?.path ?? "",
    places: runOf(n).places,
  }));
  // A dangerous fault, or a caution not to drive, keeps the car off the road.
  if (gate.drives) causes.push(...drivingCauses(faults, findings));
  const otherwise = tripping.length > 0 ? "tripped" : isCleared(gate, trips, clears, runOf) ? "cleared" : "not cleared";
  const state = causes.length > 0 ? "tripped" : otherwise;
  const wanted =
    state === "cleared"
      ? []
      : state === "tripped"
        ? trippedBy(site, tripping, runOf, causes, findings, gate.id)
        : firstOf(site, gate, clears, trips, runOf, isOpen);
  return {
    gate: gate.id,
    guards: gate.guards,
    drives: gate.drives,
    state,
    first: eachOnce(wanted),
    trippedBy: causes,
    otherwise,
    missingSheets: state === "not cleared" ? gate.missingSheets : [],
    cautions: gate.cautions,
    signals: gate.cautions.map((c) => signalOf(site, c)),
  };
}

function isCleared(
  gate: GateInfo,
  trips: readonly GateNode[],
  clears: readonly GateNode[],
  runOf: (n: GateNode) => ConditionRun,
): boolean {
  if (gate.starts === "cleared") return true;
  if (clears.length > 0) return clears.every((n) => runOf(n).is === "true");
  return trips.length > 0 && trips.every((n) => runOf(n).is === "false");
}

/** Why the car may not be driven: every dangerous fault, and every rule that says do not drive. */
export function drivingCauses(
  faults: readonly Pick<Fault, "fault" | "place" | "grade">[],
  findings: readonly Pick<Finding, "rule" | "place" | "cautions">[],
): readonly TripCause[] {
  return [
    ...faults
      .filter((f) => f.grade === "dangerous")
      .map((f) => ({ kind: "dangerous", fault: f.fault, place: f.place }) as const),
    ...findings
      .filter((f) => f.cautions.includes(DO_NOT_DRIVE))
      .map((f) => ({ kind: "caution", rule: f.rule, place: f.place }) as const),
  ];
}

function trippedBy(
  site: Site,
  tripping: readonly GateNode[],
  runOf: (n: GateNode) => ConditionRun,
  causes: readonly TripCause[],
  findings: readonly Finding[],
  gate: string,
): readonly Opened[] {
  const replies = tripping.flatMap((n) => {
    const { under, places } = runOf(n);
    const opened = under.flatMap((id) => openedSlot(site, id, gate));
    return places.length === 0 ? opened : opened.filter(({ place }) => places.some((at) => site.within(at, place)));
  });
  const rules = new Set(
    causes.flatMap((c) =>
      c.kind === "caution"
        ? [`${c.rule}@${c.place}`]
        : c.kind === "dangerous"
          ? findings.filter((f) => f.fault === c.fault && f.grade === "dangerous").map((f) => `${f.rule}@${f.place}`)
          : [],
    ),
  );
  const found = findings
    .filter((f) => rules.has(`${f.rule}@${f.place}`))
    .flatMap((f) =>
      f.because.flatMap((b) =>
        b.kind === "reply" && !b.supports ? [{ point: b.key.point, place: b.key.place, because: f.rule }] : [],
      ),
    );
  return [...replies, ...found];
}

function openedSlot(site: Site, id: number, because: string): readonly Opened[] {
  const node = site.nodes[id];
  return node?.kind === "slot" ? [{ point: node.spot.point.id, place: node.spot.place, because }] : [];
}

/** Points of the set not answered yet, then what the clearing conditions wait for or were answered against. */
function firstOf(
  site: Site,
  gate: GateInfo,
  clears: readonly GateNode[],
  trips: readonly GateNode[],
  runOf: (n: GateNode) => ConditionRun,
  isOpen: (o: Opened) => boolean,
): readonly Opened[] {
  const set = gate.set.flatMap((name) => {
    const spots = spotsOfName(site, name, CAR);
    const [id = ""] = name.split("@");
    return spots.length > 0
      ? spots.map((s) => ({ point: s.point.id, place: s.place, because: gate.id }))
      : [{ point: id, place: CAR, because: gate.id }];
  });
  const conditions = clears.length > 0 ? clears : trips;
  const waiting = conditions.flatMap((n) => openedOf(runOf(n).missing, gate.id));
  const against = clears
    .filter((n) => runOf(n).is === "false")
    .flatMap((n) => runOf(n).under.flatMap((id) => openedSlot(site, id, gate.id)));
  return [...[...set, ...waiting].filter(isOpen), ...against];
}

const SIGNALS = ["danger", "warning", "caution", "notice"] as const;

/** Cautions of firing rules and tripped gates, gravest first. */
export function cautionsDue(
  site: Site,
  findings: readonly Finding[],
  gates: readonly GateState[],
): readonly CautionDue[] {
  const due = new Map<string, { places: Set<string>; because: Set<string> }>();
  const add = (caution: string, because: string, place: string | undefined) => {
    const row = due.get(caution) ?? { places: new Set<string>(), because: new Set<string>() };
    if (place !== undefined) row.places.add(place);
    row.because.add(because);
    due.set(caution, row);
  };
  for (const f of findings) for (const c of f.cautions) add(c, f.rule, f.place);
  for (const g of gates) {
    if (g.state !== "tripped") continue;
    const places = g.trippedBy.flatMap((cause) => (cause.kind === "condition" ? cause.places : [cause.place]));
    for (const c of g.cautions) for (const place of places.length > 0 ? places : [undefined]) add(c, g.gate, place);
  }
  return [...due]
    .map(
      ([caution, row]): CautionDue => ({
        caution,
        signal: signalOf(site, caution),
        places: [...row.places],
        because: [...row.because],
      }),
    )
    .sort(compareCautions);
}

/** A caution nobody declared is told as the gravest; checking the sheet names it. */
const signalOf = (site: Site, caution: string): CautionDue["signal"] => site.model.signals.get(caution) ?? "danger";

/** Gravest first. */
export function compareCautions(a: CautionDue, b: CautionDue): number {
  return (
    SIGNALS.indexOf(a.signal) - SIGNALS.indexOf(b.signal) ||
    (a.caution < b.caution ? -1 : a.caution > b.caution ? 1 : 0)
  );
}
