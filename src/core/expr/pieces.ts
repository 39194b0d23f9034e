/** A checked part of a condition: its type, its node of the plan, where it stands. Knows no rule of typing. */
import type { Problem, Spot } from "../terms/index.js";
import type { Quantity } from "../units/index.js";
import type { Declarations, Use } from "./declarations.js";
import type { GradeNode, ListNode, PlaceNode, PlanNode } from "./plan.js";
import type { ASTNode } from "./syntax.js";

export type Type =
  | { readonly is: "yes" }
  | { readonly is: "number" }
  | { readonly is: "reading"; readonly quantity: Quantity; readonly results: readonly string[] }
  | { readonly is: "word"; readonly words: readonly string[] }
  | { readonly is: "words"; readonly words: readonly string[] }
  | { readonly is: "date-code" }
  | { readonly is: "grade"; readonly grade: GradeNode }
  /** A fixed figure with its unit: takes the quantity its place wants. */
  | { readonly is: "amount"; readonly value: Piece; readonly unit: string }
  /** A literal text, and literals in square brackets. */
  | { readonly is: "text"; readonly text: string }
  | { readonly is: "literals"; readonly items: readonly Piece[] }
  | { readonly is: "place"; readonly place: PlaceNode; readonly kind: string }
  | { readonly is: "list"; readonly list: ListNode; readonly kind: string }
  /** Already told; nothing more is said about what contains it. */
  | { readonly is: "faulty" };

export interface Piece {
  readonly type: Type;
  readonly code: PlanNode;
  /** Offset and length of every node in `code`, in the order written. */
  readonly spans: readonly number[];
  readonly node: ASTNode;
}

/** A place bound by a quantifier. */
export interface Bound {
  readonly name: string;
  readonly kind: string;
}

/** Where something stands in the text. */
export interface Range {
  readonly start: number;
  readonly end: number;
}

/** One check under way. */
export interface Checking {
  readonly text: string;
  readonly declared: Declarations;
  readonly use: Use;
  readonly where: Spot;
  readonly problems: Problem[];
  readonly bound: Bound[];
  /** Types one syntax node. */
  readonly check: (node: ASTNode) => Piece;
}

const SHOWN = 60;
/** More would not be read. */
const MOST_PROBLEMS = 50;

/** Offset (from 0) as line and column (from 1) inside a text. */
export function spotIn(text: string, offset: number): { readonly line: number; readonly column: number } {
  const before = text.slice(0, offset).split("\n");
  return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}

/** Notes a problem at a range; `text` there is the words concerned unless given. */
export function tell(checking: Checking, { start, end }: Range, code: string, params: Problem["params"] = {}): void {
  if (checking.problems.length >= MOST_PROBLEMS) return;
  const { text, where } = checking;
  const words = text.slice(start, end).slice(0, SHOWN);
  const place = { offset: start, length: Math.max(0, end - start), ...spotIn(text, start) };
  checking.problems.push({ code, where, params: { text: words, ...place, ...params } });
}

/** A piece about which all is said. */
export const faulty = (node: ASTNode): Piece => ({ type: { is: "faulty" }, code: false, spans: spanOf(node), node });

/** Tells a problem of a whole node and gives a faulty piece. */
export function refuse(checking: Checking, node: ASTNode, code: string, params: Problem["params"] = {}): Piece {
  tell(checking, node, code, params);
  return faulty(node);
}

export const spanOf = (node: Range): readonly number[] => [node.start, node.end - node.start];

/** A piece made of the pieces in it. */
export const piece = (node: ASTNode, type: Type, code: PlanNode, parts: readonly Piece[] = []): Piece => ({
  type,
  code,
  spans: [...spanOf(node), ...parts.flatMap((part) => part.spans)],
  node,
});

export const isFaulty = (...pieces: readonly Piece[]): boolean => pieces.some((part) => part.type.is === "faulty");

/** A type in words, for messages. */
export function named(type: Type): string {
  switch (type.is) {
    case "yes":
      return "yes or no";
    case "reading":
      return type.quantity;
    case "words":
      return "several words";
    case "date-code":
      return "date code";
    case "list":
      return "list of places";
    case "literals":
      return "a list";
    case "amount":
      return `an amount in ${type.unit}`;
    default:
      return type.is;
  }
}

/** Whether the piece is a yes or no; else tells why it cannot stand as a condition. */
export function isCondition(checking: Checking, part: Piece): boolean {
  if (part.type.is === "yes") return true;
  if (part.type.is === "faulty") return false;
  const expected = part.type.is === "word" || part.type.is === "words" ? part.type.words : [];
  tell(checking, part.node, "expr.not-yes-or-no", { found: named(part.type), expected });
  return false;
}
