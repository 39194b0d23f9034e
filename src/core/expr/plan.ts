/**
 * A condition as it is kept: plain JSON made by the author door, linked into closures by the run door.
 * Knows no CEL text and no sheet; `spans` is the only tie back to the text.
 */

/** Raised whenever nodes change meaning; a plan of another version is made again from its text. */
export const PLAN_VERSION = 1;

/**
 * Where something is read: 0 is the place where the rule stands, 1, 2 … the places bound by the
 * quantifiers around it from the outside in, `[place, relation]` the one place that relation names.
 */
export type PlaceNode = number | readonly [place: PlaceNode, relation: string];

/** The places a quantifier goes through: a many-valued relation, or every place of a kind. */
export type ListNode = readonly ["rel", PlaceNode, string] | readonly ["kind", string];

export type Comparison = "==" | "!=" | "<" | "<=" | ">" | ">=";
export type Arithmetic = "+" | "-" | "*" | "/";

/** One node: a literal is a bare boolean, number or text; everything else is a list that starts with its name. */
export type PlanNode =
  | boolean
  | number
  | string
  /** A word, several words, count, yes or date code as replied. */
  | readonly ["read", string, string, PlaceNode]
  /** A reading or derived value as a number in its canonical unit. */
  | readonly ["num", string, string, PlaceNode]
  | readonly ["fact", string]
  | readonly ["!", PlanNode]
  | readonly ["&&" | "||", readonly PlanNode[]]
  | readonly ["?:", PlanNode, PlanNode, PlanNode]
  | readonly [Comparison, PlanNode, PlanNode]
  | readonly [Arithmetic, PlanNode, PlanNode]
  | readonly ["neg", PlanNode]
  /** Word among words. */
  | readonly ["in", PlanNode, readonly (string | number)[]]
  /** Word among the several words replied. */
  | readonly ["among", string, PlanNode]
  /** Grades compared; a bare number is a grade level. */
  | readonly ["grade", Comparison, GradeNode, GradeNode]
  /** Difference above twice the joint uncertainty. */
  | readonly ["more", ScaledNode, ScaledNode]
  | readonly ["exists" | "all", ListNode, PlanNode]
  | readonly ["at_least", number, readonly PlanNode[]]
  | readonly ["unanswered", string, string, PlaceNode]
  | readonly ["found", string, PlaceNode]
  | readonly ["call", string, readonly PlanNode[]];

export type GradeNode = number | readonly ["band", string, string, PlaceNode];
/** A fixed factor times a reading. */
export type ScaledNode = readonly [factor: number, point: string, field: string, place: PlaceNode];

/** A checked condition or formula. Plain JSON: goes through a file unchanged. */
export interface Plan {
  readonly v: number;
  /** A condition gives yes or no; a formula gives a number in the canonical unit of its quantity. */
  readonly gives: "yes" | "number";
  readonly code: PlanNode;
  /** Offset and length in the text for every node, in the order they are written. */
  readonly spans: readonly number[];
}
