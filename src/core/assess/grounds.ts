/**
 * Every reading and worked-out value of an assessed visit with what was typed for it: which points, which figures, by
 * which gauge. For comparing one visit with another. Judges nothing anew.
 */
import type { GaugeUsed, ReplyKey, ReplyValue } from "../terms/index.js";
import type { JudgedReading } from "./contract.js";
import type { ValueNode } from "./nodes.js";
import type { Judged } from "./readings.js";
import { type Session, worldOf } from "./session.js";
import type { World } from "./world.js";

/** What was typed at one point, as it was typed. */
export interface Typed {
  readonly key: ReplyKey;
  readonly values: readonly string[];
  /** UCUM; `1` of a count. */
  readonly unit: string;
  /** The gauge named, or the tool the point declares. */
  readonly gauge?: GaugeUsed;
}
export interface Grounded {
  readonly reading: JudgedReading;
  /** In the order the value asks for them; where replies differ, all that stand. */
  readonly typed: readonly Typed[];
}

/** Readings as judged, each with the figures it rests on. */
export function groundsOf(session: Session): readonly Grounded[] {
  const world = worldOf(session);
  return world.site.nodes.flatMap((node): readonly Grounded[] => {
    if (node.kind !== "judged") return [];
    // records of judged nodes are only ever written by assemble
    const reading = (world.records[node.id]?.value as Judged | undefined)?.reading;
    return reading === undefined ? [] : [{ reading, typed: typedUnder(world, node) }];
  });
}

function typedUnder(world: World, { ref, place }: ValueNode): readonly Typed[] {
  const { site, given } = world;
  const derived = ref.is === "derived" ? site.derivedAt(ref, place) : undefined;
  const own = ref.is === "field" ? site.slotFor(ref, place) : undefined;
  const slots = own ? [own.id] : world.slotsUnder((derived && world.records[derived.id]?.reads) ?? []);
  return slots.flatMap((id) => (given.replies[id] ?? []).flatMap(({ key, value }) => typedOf(key, value)));
}

function typedOf(key: ReplyKey, value: ReplyValue): readonly Typed[] {
  if (value.type === "count") return [{ key, values: [String(value.count)], unit: "1" }];
  if (value.type !== "reading") return [];
  return [{ key, values: value.values, unit: value.unit, ...(value.gauge ? { gauge: value.gauge } : {}) }];
}
