/** Types a syntax tree node by node. Whatever is not listed here is refused by name. */
import { checkArithmetic, checkChoice, checkMinus } from "./calculating.js";
import { checkCall, checkMethod } from "./calls.js";
import { checkComparison, checkIn } from "./comparing.js";
import { checkName } from "./names.js";
import { type Checking, isCondition, type Piece, piece, refuse } from "./pieces.js";
import type { PlanNode } from "./plan.js";
import type { ASTNode, NodeOf } from "./syntax.js";

/** Types one node; `checking.check` comes back here for the nodes in it. */
export function checkNode(checking: Checking, node: ASTNode): Piece {
  switch (node.op) {
    case "value":
      return literal(checking, node);
    case "id":
    case ".":
      return checkName(checking, node);
    case "&&":
    case "||":
      return joined(checking, node);
    case "!_": {
      const part = checking.check(node.args);
      return isCondition(checking, part)
        ? piece(node, { is: "yes" }, ["!", part.code], [part])
        : piece(node, { is: "faulty" }, false);
    }
    case "==":
    case "!=":
    case "<":
    case "<=":
    case ">":
    case ">=":
      return checkComparison(checking, node);
    case "in":
      return checkIn(checking, node);
    case "+":
    case "-":
    case "*":
    case "/":
      return checkArithmetic(checking, node);
    case "-_":
      return checkMinus(checking, node);
    case "?:":
      return checkChoice(checking, node);
    case "list":
      return piece(node, { is: "literals", items: node.args.map(checking.check) }, false);
    case "call":
      return checkCall(checking, node);
    case "rcall":
      return checkMethod(checking, node);
    default:
      return refuse(checking, node, "expr.refused", { what: node.op === "map" ? "map_literal" : node.op });
  }
}

function literal(checking: Checking, node: NodeOf<"value">): Piece {
  const value = node.args;
  if (typeof value === "boolean") return piece(node, { is: "yes" }, value);
  if (typeof value === "string") return piece(node, { is: "text", text: value }, value);
  // Every number is a double: `2` and `2.0` are the same.
  if (typeof value === "number") return piece(node, { is: "number" }, value);
  if (typeof value !== "bigint")
    return refuse(checking, node, "expr.refused", { what: value === null ? "null" : "literal" });
  const number = Number(value);
  return Number.isSafeInteger(number)
    ? piece(node, { is: "number" }, number)
    : refuse(checking, node, "expr.number-range");
}

/** The operands of a row of the same sign, bracketed or not: `a && (b && c)` is one node with three. */
function operandsOf(node: NodeOf<"&&" | "||">): readonly ASTNode[] {
  const operands: ASTNode[] = [];
  const rest: ASTNode[] = [node];
  for (let next = rest.pop(); next !== undefined; next = rest.pop()) {
    if ((next.op === "&&" || next.op === "||") && next.op === node.op) rest.push(next.args[1], next.args[0]);
    else operands.push(next);
  }
  return operands;
}

function joined(checking: Checking, node: NodeOf<"&&" | "||">): Piece {
  const parts = operandsOf(node).map(checking.check);
  const fit = parts.filter((part) => isCondition(checking, part)).length === parts.length;
  if (!fit) return piece(node, { is: "faulty" }, false);
  const codes: readonly PlanNode[] = parts.map((part) => part.code);
  return piece(node, { is: "yes" }, [node.op, codes], parts);
}
