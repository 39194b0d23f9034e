/**
 * A condition as it is kept: plain JSON made by the author door, linked into closures by the run door.
 * Knows no CEL text and no sheet; `spans` is the only tie back to the text.
 */

/** Raised whenever nodes change meaning; a plan of another version is made again from its text. */
export const PLAN_VERSION = 3;
/** Quantifiers inside one another: every axle, every corner. More would multiply places without end. */
export const DEEPEST_QUANTIFIERS = 2;
/** Nodes inside one another. */
export const DEEPEST_NODES = 64;

/**
 * Where something is read: 0 is the place where the rule stands, 1, 2 the places bound by the quantifiers
 * around it from the outside in, `[place, relation]` the one place that relation names.
 */
export type PlaceNode = number | readonly [place: PlaceNode, relation: string];

/** The places a quantifier goes through: a many-valued relation, or every place of a kind. */
export type ListNode = readonly ["rel", PlaceNode, string] | readonly ["kind", string];

export type Comparison = "==" | "!=" | "<" | "<=" | ">" | ">=";
export type Arithmetic = "+" | "-" | "*" | "/";

/** At the end of a node that reads a reply: not this visit's, but the last one before it. */
export type Last = "last";

/** What a reply must be: one word, several, a count, yes or no, or a reading's word-instead-of-number. */
export type ReplyNodeName = "word" | "words" | "count" | "yes" | "result";
/** A reading or derived value as a number in its canonical unit; `last`: of the last visit that has it. */
export type NumNode = readonly ["num", point: string, field: string, PlaceNode, last?: Last];
export type GradeNode = number | readonly ["band", point: string, field: string, PlaceNode];
/** A fixed factor times a reading. */
export type ScaledNode = readonly [factor: number, point: string, field: string, PlaceNode, last?: Last];

/** One node: a literal is a bare boolean, number or text; everything else is a list that starts with its name. */
export type PlanNode =
  | boolean
  | number
  | string
  | readonly [ReplyNodeName, point: string, field: string, PlaceNode, last?: Last]
  | NumNode
  /** A car fact and what it must be: "string", "number" or "boolean". */
  | readonly ["fact", name: string, is: string]
  | readonly ["!" | "neg", PlanNode]
  | readonly ["&&" | "||", readonly PlanNode[]]
  | readonly ["?:", PlanNode, PlanNode, PlanNode]
  | readonly [Comparison | Arithmetic, PlanNode, PlanNode]
  /** A word or count among literals. */
  | readonly ["in", PlanNode, readonly (string | number)[]]
  /** A word among the several words replied. */
  | readonly ["among", word: string, PlanNode]
  /** Grades compared; a bare number is a grade level. */
  | readonly ["grade", Comparison, GradeNode, GradeNode]
  /** Difference above twice the joint uncertainty. */
  | readonly ["more", ScaledNode, ScaledNode]
  | readonly ["exists" | "all", ListNode, PlanNode]
  /** The middle one of a reading over places. */
  | readonly ["median", ListNode, NumNode]
  | readonly ["at_least", number, readonly PlanNode[]]
  | readonly ["unanswered", point: string, field: string, PlaceNode]
  /** Distance in km since the reply was last given. */
  | readonly ["since", point: string, field: string, PlaceNode]
  | readonly ["found", fault: string, PlaceNode]
  /** A trade function. */
  | readonly ["call", name: string, readonly PlanNode[]]
  /** The figures of one argument of a call, and nowhere else. */
  | ListedNode
  /** A plain number taken as a figure in this canonical unit. */
  | readonly ["amount", value: PlanNode, unit: string];

/** The figures of one argument. */
export type ListedNode = readonly ["list", readonly PlanNode[]];

/** A checked condition or formula. Plain JSON: goes through a file unchanged. */
export interface Plan {
  readonly v: number;
  /** A condition gives yes or no; a formula gives a number in the canonical unit of its quantity. */
  readonly gives: "yes" | "number";
  readonly code: PlanNode;
  /** Offset and length in the text for every node, in the order they are written. */
  readonly spans: readonly number[];
}

const REPLIES: ReadonlySet<unknown> = new Set([
  "word",
  "words",
  "count",
  "yes",
  "result",
  "num",
  "band",
  "unanswered",
  "since",
]);

export const isListed = (node: PlanNode): node is ListedNode => typeof node === "object" && node[0] === "list";
export const isNum = (node: PlanNode | undefined): node is NumNode => typeof node === "object" && node[0] === "num";

/** What a node reads. */
export interface ReplyRead {
  readonly point: string;
  readonly field: string;
  readonly place: unknown;
  /** The reply of an earlier visit, or how far back it lies. */
  readonly last: boolean;
}

/** Point, field and place of a node that reads a reply or derived value; undefined for any other part of a plan. */
export function replyOf(part: readonly unknown[]): ReplyRead | undefined {
  const [name, point, field, place, end] = part;
  const scaled = typeof name === "number" && part.length >= 4;
  return (scaled || REPLIES.has(name)) && typeof point === "string" && typeof field === "string"
    ? { point, field, place, last: name === "since" || end === "last" }
    : undefined;
}
