/** Types what is asked of earlier visits: the last reply, and how far back it lies. Knows no visit. */

import type { Checking } from "./pieces.js";
import { isFaulty, named, type Piece, piece, refuse, tell } from "./pieces.js";
import { type PlaceNode, type PlanNode, replyOf } from "./plan.js";
import type { ASTNode, NodeOf } from "./syntax.js";

/** `last(x)`: what `x` was at the last visit that has it; of the type `x` is of. */
export function checkLast(checking: Checking, node: NodeOf<"call">, args: readonly ASTNode[]): Piece {
  const asked = onlyReply(checking, node, "last", args);
  if (asked === undefined) return piece(node, { is: "faulty" }, false);
  const { type, code } = asked.read;
  // A node that reads a reply takes `last` at its end; onlyReply has seen that this is one.
  return piece(node, type, [...(code as readonly PlanNode[]), "last"] as unknown as PlanNode);
}

/** `since_last_km(x)`: the distance since then, a plain number of kilometres. */
export function checkSince(checking: Checking, node: NodeOf<"call">, args: readonly ASTNode[]): Piece {
  const asked = onlyReply(checking, node, "since_last_km", args);
  if (asked === undefined) return piece(node, { is: "faulty" }, false);
  return piece(node, { is: "number" }, ["since", asked.point, asked.field, asked.place]);
}

interface AskedOf {
  readonly read: Piece;
  readonly point: string;
  readonly field: string;
  readonly place: PlaceNode;
}

/** The one argument: it must name a reply. Derived values and car facts are not kept visit by visit. */
function onlyReply(checking: Checking, node: ASTNode, name: string, args: readonly ASTNode[]): AskedOf | undefined {
  const [only] = args;
  if (only === undefined || args.length !== 1) {
    refuse(checking, node, "expr.arguments", { text: name, expected: "1" });
    return undefined;
  }
  const read = checking.check(only);
  if (isFaulty(read)) return undefined;
  const reply = Array.isArray(read.code) ? replyOf(read.code) : undefined;
  // The place of a node that was just made by names.ts.
  if (reply !== undefined && reply.field !== "" && !reply.last)
    return { read, point: reply.point, field: reply.field, place: reply.place as PlaceNode };
  const found = reply === undefined ? named(read.type) : reply.last ? "a reply of an earlier visit" : "a derived value";
  tell(checking, only, "expr.last-of", { of: name, found });
  return undefined;
}
