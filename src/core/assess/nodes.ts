/** The nodes conclusions rest on: slots, facts, rules where they stand, values worked out. Types only. */
import type { Unknown } from "../expr/run.js";
import type { FieldInfo, GateInfo, LimitInfo, PointInfo, RefInfo, RuleInfo } from "./model.js";

/** A point at a place. */
export interface Spot {
  readonly index: number;
  readonly point: PointInfo;
  readonly place: string;
  readonly slots: readonly SlotNode[];
  /** Position in the walk round the car. */
  readonly walk: number;
}

/** One field of a point at a place: what a reply fills. */
export interface SlotNode {
  readonly kind: "slot";
  readonly id: number;
  readonly spot: Spot;
  readonly field: FieldInfo;
  readonly ref: RefInfo;
  /** `keyText` in the point's first car state. */
  readonly key: string;
  readonly unknown: Unknown;
  /** Rules that may discard this reading. */
  readonly discards: readonly DiscardNode[];
}
export interface FactNode {
  readonly kind: "fact";
  readonly id: number;
  readonly name: string;
  readonly key: string;
  readonly unknown: Unknown;
}
/** A slot as it was last replied to in one car state, before this visit. */
export interface LastNode {
  readonly kind: "last";
  readonly id: number;
  readonly slot: SlotNode;
  readonly state: string;
}
export interface RuleNode {
  readonly kind: "rule";
  readonly id: number;
  readonly rule: RuleInfo;
  readonly place: string;
}
export interface DiscardNode {
  readonly kind: "discard";
  readonly id: number;
  readonly rule: RuleInfo;
  readonly place: string;
}
export interface ValueNode {
  readonly kind: "derived" | "band" | "judged";
  readonly id: number;
  readonly ref: RefInfo;
  readonly place: string;
}
export interface AppliesNode {
  readonly kind: "applies";
  readonly id: number;
  readonly limit: LimitInfo;
  readonly place: string;
}
export interface AskedNode {
  readonly kind: "asked";
  readonly id: number;
  readonly spot: Spot;
}
export interface GateNode {
  readonly kind: "gate";
  readonly id: number;
  readonly gate: GateInfo;
  readonly which: "trips" | "clears";
  readonly at: number;
}
/** Things given or found before: figures of the limits book, this visit's odometer, faults of the second pass. */
export interface GivenNode {
  readonly kind: "book" | "odometer" | "found";
  readonly id: number;
  readonly name: string;
  readonly place: string;
}
export type Node =
  | SlotNode
  | FactNode
  | LastNode
  | RuleNode
  | DiscardNode
  | ValueNode
  | AppliesNode
  | AskedNode
  | GateNode
  | GivenNode;
