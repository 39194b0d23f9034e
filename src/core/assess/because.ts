/** Turns what a conclusion rested on into the steps a person reads. Judges nothing. */
import { Unknown } from "../expr/run.js";
import { gradeOf } from "../terms/index.js";
import { canonicalUnit, convertStep, fromCanonical, isQuantity } from "../units/index.js";
import { COVERAGE } from "./band.js";
import type { Because } from "./contract.js";
import { decisive, type JudgedBy } from "./limits.js";
import type { LastNode, ValueNode } from "./nodes.js";
import type { DerivedRecord, World } from "./world.js";

/** The steps behind a list of reads, in the order they were asked, each once. */
export function becauseOf(world: World, reads: readonly number[], supports = false): readonly Because[] {
  const out: Because[] = [];
  const seen = new Set<number>();
  const walk = (ids: readonly number[]): void => {
    for (const id of ids) {
      if (seen.has(id)) continue;
      seen.add(id);
      const node = world.site.nodes[id];
      if (node === undefined || node.kind === "discard") continue;
      if (node.kind === "slot") {
        const standing = world.given.replies[id]?.[world.choice.get(id) ?? 0];
        if (standing !== undefined && standing.nonAnswer === undefined)
          out.push({ kind: "reply", key: standing.key, value: standing.value, id: standing.id, supports });
      } else if (node.kind === "fact") {
        const fact = world.given.facts[id]?.[world.choice.get(id) ?? 0];
        if (fact !== undefined) out.push({ kind: "fact", name: fact.name, value: fact.value });
      } else if (node.kind === "last") {
        pushLast(world, node, out);
      } else if (node.kind === "found") {
        if (world.founds?.has(node.name) === true) out.push({ kind: "found", fault: node.name, place: node.place });
      } else {
        if (node.kind === "band") pushLimit(world, node, out);
        if (node.kind === "derived") pushDerived(world, node, out);
        walk(world.keptOf(id)?.reads ?? []);
      }
    }
  };
  walk(reads);
  return out;
}

function pushLast(world: World, node: LastNode, out: Because[]): void {
  const last = world.given.earlier(node);
  const standing = last?.standing[world.choice.get(node.id) ?? 0];
  if (last === undefined || standing === undefined) return;
  const { at, odometer } = last;
  const { key, value } = standing;
  out.push({ kind: "earlier", at, ...(odometer === undefined ? {} : { odometer }), key, value });
}

function pushLimit(world: World, node: ValueNode, out: Because[]): void {
  const record = world.bandRecordOf(node.id);
  if (record === undefined) return;
  const found = decisive(record);
  const grade = found && gradeOf(found.by.span.high);
  if (found === undefined || grade === undefined || grade === null) return;
  out.push({
    kind: "limit",
    limit: found.by.limit.limit.id,
    place: node.place,
    of: node.ref.is === "field" ? node.ref.point.id : node.ref.name,
    field: node.ref.is === "field" ? node.ref.field.name : "",
    ...inUnit(found.by),
    edge: edgeInUnit(found.by, found.edge),
    grade,
    basis: found.by.basis,
    source: found.by.source,
    isDefault: found.by.isDefault,
  });
}

/** Value and ±U in the unit of the limit. */
export function inUnit(by: JudgedBy): { readonly value: number; readonly uncertainty: number; readonly unit: string } {
  const { unit } = by.limit.limit;
  return { ...measuredIn(by.measured.value, by.measured.u, unit, by.limit.limit.quantity), unit };
}

/** A canonical edge in the unit of its limit. */
export function edgeInUnit(by: { readonly limit: JudgedBy["limit"] }, edge: number): number {
  const { unit, quantity } = by.limit.limit;
  return isQuantity(quantity) ? fromCanonical(edge, unit, quantity) : edge;
}

/** A canonical value and its ±U (k = 2) in a unit. */
export function measuredIn(
  value: number,
  u: number,
  unit: string,
  quantity: string,
): { readonly value: number; readonly uncertainty: number } {
  if (!isQuantity(quantity)) return { value, uncertainty: COVERAGE * u };
  return {
    value: fromCanonical(value, unit, quantity),
    uncertainty: convertStep(COVERAGE * u, canonicalUnit(quantity), unit, quantity),
  };
}

function pushDerived(world: World, node: ValueNode, out: Because[]): void {
  const kept = world.keptOf(node.id);
  const record = kept?.value as DerivedRecord | undefined;
  if (kept === undefined || record === undefined || record.outcome instanceof Unknown || node.ref.is !== "derived")
    return;
  const { derived } = node.ref.derived;
  const from = world.slotsUnder(kept.reads).flatMap((id) => {
    const standing = world.given.replies[id]?.[world.choice.get(id) ?? 0];
    return standing === undefined ? [] : [standing.key];
  });
  out.push({
    kind: "derived",
    id: derived.id,
    place: node.place,
    ...measuredIn(record.outcome.value, record.outcome.u, derived.unit, derived.quantity),
    unit: derived.unit,
    ...(derived.formula === undefined ? {} : { formula: derived.formula }),
    ...(record.used === undefined ? {} : { used: record.used }),
    from,
    insteadOf: record.insteadOf,
  });
}
