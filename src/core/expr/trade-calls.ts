/**
 * Types calls of trade functions and the fixed amounts handed to them: how many arguments, of which quantity, in which
 * range, which words. Works nothing out.
 */

import { isWithin, nearest, rangeText } from "../terms/author.js";
import { canonicalUnit, type Quantity, toCanonical, unitOf } from "../units/index.js";
import type { ArgumentTaken, Signature } from "./declarations.js";
import { type Checking, isFaulty, named, type Piece, piece, refuse, type Type, tell } from "./pieces.js";
import type { ASTNode, NodeOf } from "./syntax.js";

const silent = (node: ASTNode): Piece => piece(node, { is: "faulty" }, false);

/** `amount(12.0, "mm")`: a plain number with its unit. It stands as an argument of a trade function, or below a line. */
export function checkAmount(checking: Checking, node: NodeOf<"call">, args: readonly ASTNode[]): Piece {
  const [value, unit] = args.map(checking.check);
  if (value === undefined || unit === undefined || args.length !== 2)
    return refuse(checking, node, "expr.arguments", { text: "amount", expected: '2 (a number, "unit")' });
  if (isFaulty(value, unit)) return silent(node);
  if (value.type.is !== "number") return refuse(checking, value.node, "expr.amount", { found: named(value.type) });
  if (unit.type.is !== "text") return refuse(checking, unit.node, "expr.amount", { found: named(unit.type) });
  if (unitOf(unit.type.text) === undefined && unit.type.text !== "1")
    return refuse(checking, unit.node, "expr.unknown-unit", { text: unit.type.text });
  return piece(node, { is: "amount", value, unit: unit.type.text }, false);
}

/**
 * An amount as a figure of the quantity its place wants, in the canonical unit; undefined where its unit is another's. A
 * number that hangs on a reply (a count of millimetres) stands in the canonical unit already: only a fixed one is brought
 * to it.
 */
export function amountAs({ node, type }: Piece, quantity: Quantity): Piece | undefined {
  if (type.is !== "amount" || unitOf(type.unit === "1" ? "" : type.unit, quantity) === undefined) return undefined;
  const { value, unit } = type;
  const own = canonicalUnit(quantity);
  if (typeof value.code !== "number" && unit !== own) return undefined;
  const code = typeof value.code === "number" ? toCanonical(value.code, unit, quantity) : value.code;
  return piece(node, { is: "reading", quantity, results: [] }, ["amount", code, own], [value]);
}

/** A call of a declared trade function; every argument that does not fit is told by its name. */
export function checkTrade(
  checking: Checking,
  node: ASTNode,
  name: string,
  args: readonly ASTNode[],
  signature: Signature,
): Piece {
  const pieces = args.map(checking.check);
  if (args.length !== signature.arguments.length) {
    const names = signature.arguments.map((argument) => argument.name).join(", ");
    return refuse(checking, node, "expr.arguments", {
      text: name,
      expected: `${signature.arguments.length} (${names})`,
    });
  }
  if (isFaulty(...pieces)) return silent(node);
  const taken = pieces.map((part, index) => {
    const argument = signature.arguments[index];
    return argument && takenBy({ checking, name, argument }, part);
  });
  const fitting = taken.filter((part) => part !== undefined);
  if (fitting.length < pieces.length) return silent(node);
  return piece(node, givenBy(signature), ["call", name, fitting.map((part) => part.code)], fitting);
}

function givenBy({ gives, words = [] }: Signature): Type {
  if (gives === "yes" || gives === "number") return { is: gives };
  return gives === "word" ? { is: "word", words } : { is: "reading", quantity: gives, results: [] };
}

interface Taking {
  readonly checking: Checking;
  readonly name: string;
  readonly argument: ArgumentTaken;
}

/** What the function is handed for one argument; undefined (and told) where it does not fit. */
function takenBy(taking: Taking, part: Piece): Piece | undefined {
  if (taking.argument.atLeast === undefined) return single(taking, part);
  const items = part.type.is === "literals" ? part.type.items : [part];
  const fitting = items.map((item) => single(taking, item)).filter((item) => item !== undefined);
  if (fitting.length < items.length) return undefined;
  if (fitting.length < taking.argument.atLeast && part.type.is === "literals")
    return misfit(taking, part, "expr.argument-few", { expected: taking.argument.atLeast });
  return piece(part.node, part.type, ["list", fitting.map((item) => item.code)], fitting);
}

function single(taking: Taking, part: Piece): Piece | undefined {
  const { kind } = taking.argument;
  if (kind === "word") return word(taking, part);
  const figure = kind === "number" ? part : (amountAs(part, kind) ?? part);
  const { type } = figure;
  const fits = kind === "number" ? type.is === "number" : type.is === "reading" && type.quantity === kind;
  if (!fits) return misfit(taking, part, "expr.argument", { found: named(type), expected: kind });
  const { code } = figure;
  const fixed = typeof code === "number" ? code : Array.isArray(code) && code[0] === "amount" ? code[1] : undefined;
  if (typeof fixed !== "number") return figure;
  if (!isWithin(fixed, taking.argument))
    return misfit(taking, part, "expr.argument-range", { expected: rangeIn(taking.argument) });
  return taking.argument.whole === true && !Number.isInteger(fixed)
    ? misfit(taking, part, "expr.argument-range", { expected: "a whole number" })
    : figure;
}

const rangeIn = (argument: ArgumentTaken): string =>
  argument.kind === "number" || argument.kind === "word"
    ? rangeText(argument)
    : `${rangeText(argument)} ${canonicalUnit(argument.kind)}`.trim();

/** A word in quotes must be one the function knows; of a point that gives words, all of them must. */
function word(taking: Taking, part: Piece): Piece | undefined {
  const { words } = taking.argument;
  const { type } = part;
  if (type.is === "date-code" && words === undefined) return part;
  if (type.is !== "text" && type.is !== "word")
    return misfit(taking, part, "expr.argument", { found: named(type), expected: "word" });
  const unknown = (type.is === "text" ? [type.text] : type.words).find((one) => words?.includes(one) === false);
  if (unknown === undefined) return part;
  return misfit(taking, part, "expr.argument-word", { found: unknown, expected: nearest(unknown, words ?? []) });
}

function misfit(
  { checking, name, argument }: Taking,
  part: Piece,
  code: string,
  params: Readonly<Record<string, string | number | readonly string[]>>,
): undefined {
  tell(checking, part.node, code, { of: name, argument: argument.name, ...params });
  return undefined;
}
