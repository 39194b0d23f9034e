/** Types arithmetic: plain numbers, and readings by quantity. Knows no unit: all figures are canonical. */
import type { Quantity } from "../units/index.js";
import { type Checking, isCondition, isFaulty, named, type Piece, piece, refuse, type Type } from "./pieces.js";
import type { Arithmetic } from "./plan.js";
import type { NodeOf } from "./syntax.js";
import { amountAs } from "./trade-calls.js";

const NUMBER: Type = { is: "number" };
const reading = (quantity: Quantity): Type => ({ is: "reading", quantity, results: [] });

const isWhole = (node: Piece["node"]): boolean =>
  node.op === "value" ? typeof node.args === "bigint" : node.op === "-_" && isWhole(node.args);

/** `a + b`, `a - b`, `a * b`, `a / b`. */
export function checkArithmetic(checking: Checking, node: NodeOf<Arithmetic>): Piece {
  const [a, below] = [checking.check(node.args[0]), checking.check(node.args[1])];
  const b = (node.op === "/" && a.type.is === "reading" && amountAs(below, a.type.quantity)) || below;
  if (isFaulty(a, b)) return refuseQuietly(node);
  if (node.op === "/" && isZero(b)) return refuse(checking, b.node, "expr.zero-below");
  if (node.op === "/" && isWhole(a.node) && isWhole(b.node)) return refuse(checking, node, "expr.whole-division");
  const type = resultOf(node.op, a.type, b.type);
  if (type === "expr.not-a-figure") {
    const wrong = isFigure(a.type) ? b : a;
    return refuse(checking, wrong.node, type, { found: named(wrong.type) });
  }
  if (typeof type === "string")
    return refuse(checking, node, type, { sign: node.op, left: named(a.type), right: named(b.type) });
  return piece(node, type, [node.op, a.code, b.code], [a, b]);
}

const isZero = ({ code }: Piece): boolean =>
  code === 0 || (Array.isArray(code) && code[0] === "amount" && code[1] === 0);
const refuseQuietly = (node: Piece["node"]): Piece => piece(node, { is: "faulty" }, false);
const isFigure = (type: Type): boolean => type.is === "number" || type.is === "reading";

/** The type of the result, or the code that says why there is none. */
function resultOf(op: Arithmetic, a: Type, b: Type): Type | string {
  if (!isFigure(a) || !isFigure(b)) return "expr.not-a-figure";
  const left = a.is === "reading" ? a.quantity : undefined;
  const right = b.is === "reading" ? b.quantity : undefined;
  if (op === "+" || op === "-") return sumOf(op, left, right);
  if (left === "temperature" || right === "temperature") return "expr.temperature-scaled";
  if (left === undefined && right === undefined) return NUMBER;
  if (op === "*") return productOf(left, right);
  if (right === undefined || right === "ratio") return left === undefined ? "expr.no-such-quantity" : reading(left);
  return left === right ? NUMBER : "expr.no-such-quantity";
}

function sumOf(op: "+" | "-", left: Quantity | undefined, right: Quantity | undefined): Type | string {
  if (left === undefined || right === undefined) return left === right ? NUMBER : "expr.bare-number";
  const warm = "temperature";
  const difference = "temperature_difference";
  if (left === warm && right === warm) return op === "-" ? reading(difference) : "expr.temperatures-added";
  if (left === warm && right === difference) return reading(warm);
  if (left === difference && right === warm && op === "+") return reading(warm);
  return left === right ? reading(left) : "expr.other-quantity";
}

function productOf(left: Quantity | undefined, right: Quantity | undefined): Type | string {
  if (left === undefined || left === "ratio") return right === undefined ? reading("ratio") : reading(right);
  return right === undefined || right === "ratio" ? reading(left) : "expr.no-such-quantity";
}

/** `-a` */
export function checkMinus(checking: Checking, node: NodeOf<"-_">): Piece {
  const a = checking.check(node.args);
  if (isFaulty(a)) return refuseQuietly(node);
  if (!isFigure(a.type)) return refuse(checking, node, "expr.not-a-figure", { found: named(a.type) });
  if (a.type.is === "reading" && a.type.quantity === "temperature")
    return refuse(checking, node, "expr.temperature-scaled");
  if (typeof a.code === "number") return piece(node, NUMBER, -a.code);
  return piece(node, a.type, ["neg", a.code], [a]);
}

/** `test ? a : b` */
export function checkChoice(checking: Checking, node: NodeOf<"?:">): Piece {
  const [test, a, b] = [checking.check(node.args[0]), checking.check(node.args[1]), checking.check(node.args[2])];
  const fits = isCondition(checking, test);
  if (!fits || isFaulty(a, b)) return refuseQuietly(node);
  const alike =
    (a.type.is === "reading" && b.type.is === "reading" && a.type.quantity === b.type.quantity) ||
    (a.type.is === b.type.is && (a.type.is === "yes" || a.type.is === "number"));
  if (!alike) return refuse(checking, node, "expr.choice-apart", { left: named(a.type), right: named(b.type) });
  return piece(node, a.type, ["?:", test.code, a.code, b.code], [test, a, b]);
}
