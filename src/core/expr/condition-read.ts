/** CEL text back to the usual shapes of a condition; undefined where it has none. Checks no name. */
import { GRADES, type Grade } from "../terms/index.js";
import {
  type Asked,
  type Condition,
  DEEPEST_GROUPS,
  EACH,
  EACH_WITHIN,
  type PlaceList,
  type Scaled,
  SIGNS,
  type Term,
} from "./condition.js";
import type { Comparison } from "./plan.js";
import { type ASTNode, parseText } from "./syntax.js";

/** The condition as rows of terms, or undefined when the text is of no usual shape (or none at all). */
export function readCondition(cel: string): Condition | undefined {
  const tree = parseText(cel);
  return "code" in tree ? undefined : conditionOf(tree, { bound: [], deep: 0 });
}

/** Variables of the quantifiers around, from the outside in, and how many groups. */
interface Around {
  readonly bound: readonly string[];
  readonly deep: number;
}
const BOUND = [EACH, EACH_WITHIN];

function conditionOf(node: ASTNode, around: Around): Condition | undefined {
  if (around.deep > DEEPEST_GROUPS) return undefined;
  if (node.op === "&&" || node.op === "||")
    return joined(node.op === "&&" ? "all" : "any", operandsOf(node, node.op), around);
  if (node.op === "call" && node.args[0] === "at_least") {
    const [need, ...rest] = node.args[1];
    const least = need && numberOf(need);
    return least === undefined ? undefined : joined(least, rest, around);
  }
  return joined("all", [node], around);
}

function joined(join: Condition["join"], nodes: readonly ASTNode[], around: Around): Condition | undefined {
  const terms = allOf(nodes, (node) => termOf(node, around));
  return terms && { join, terms };
}

/** Every one read, or undefined when one cannot be. */
function allOf<T, U>(things: readonly T[], read: (thing: T) => U | undefined): readonly U[] | undefined {
  const found = things.flatMap((thing) => read(thing) ?? []);
  return found.length === things.length ? found : undefined;
}

function operandsOf(node: ASTNode, sign: "&&" | "||"): readonly ASTNode[] {
  if (node.op !== sign) return [node];
  return (node.args as readonly ASTNode[]).flatMap((part) => operandsOf(part, sign));
}

function termOf(node: ASTNode, around: Around): Term | undefined {
  if (node.op === "!_") {
    const inner = node.args.op === "!_" ? grouped(node.args, around) : bareTerm(node.args, around);
    return inner && { not: true, ...inner };
  }
  return bareTerm(node, around);
}

function bareTerm(node: ASTNode, around: Around): Term | undefined {
  switch (node.op) {
    case "&&":
    case "||":
      return grouped(node, around);
    case "id":
    case ".": {
      const of = askedOf(node, around);
      return of && { is: "yes", of };
    }
    case "in":
      return amongOf(node.args[0], node.args[1], around);
    case "call":
      return called(node.args[0], node.args[1], node, around);
    case "rcall":
      return quantified(node.args[0], node.args[1], node.args[2], around);
    default:
      return SIGNS.some((sign) => sign === node.op) ? compared(node, around) : undefined;
  }
}

function grouped(node: ASTNode, around: Around): Term | undefined {
  const hold = conditionOf(node, { ...around, deep: around.deep + 1 });
  return hold && { is: "group", hold };
}

function called(name: string, args: readonly ASTNode[], node: ASTNode, around: Around): Term | undefined {
  const [first, second] = args;
  if (first === undefined) return undefined;
  if (name === "at_least") return grouped(node, around);
  if (name === "unanswered" && second === undefined) {
    const of = askedOf(first, around);
    return of && { is: "unanswered", of };
  }
  if (name === "found") {
    const fault = textOf(first);
    const at = second === undefined ? "" : placeOf(pathOf(second), around);
    return fault === undefined || (second !== undefined && at === "") ? undefined : { is: "found", fault, at };
  }
  if (name === "clearly_more" && second !== undefined) {
    const [of, than] = [scaledOf(first, around), scaledOf(second, around)];
    return of && than && { is: "more", of, than };
  }
  const of = askedOf(node, around);
  return of && { is: "yes", of };
}

function quantified(
  method: string,
  receiver: ASTNode,
  [variable, body]: readonly ASTNode[],
  around: Around,
): Term | undefined {
  if (method !== "exists" && method !== "all") return undefined;
  const list = listOf(receiver, around);
  if (list === undefined || variable?.op !== "id" || body === undefined) return undefined;
  if (around.bound.length >= BOUND.length) return undefined;
  const every = method === "all";
  if (body.op === "value" && body.args === true) return { is: "places", list, every, hold: null };
  const hold = conditionOf(body, { bound: [...around.bound, variable.args], deep: around.deep + 1 });
  return hold && { is: "places", list, every, hold };
}

function listOf(node: ASTNode, around: Around): PlaceList | undefined {
  if (node.op === "call" && node.args[0] === "places") {
    const kind = node.args[1][0] && textOf(node.args[1][0]);
    return kind === undefined ? undefined : { kind };
  }
  const relation = placeOf(pathOf(node), around);
  return relation === "" ? undefined : { relation };
}

function amongOf(left: ASTNode, right: ASTNode, around: Around): Term | undefined {
  if (right.op === "list") {
    const of = askedOf(left, around);
    const words = allOf(right.args, (item) => textOf(item) ?? numberOf(item));
    return of && words && { is: "one-of", of, words };
  }
  const word = textOf(left);
  const of = askedOf(right, around);
  return of && word !== undefined ? { is: "includes", of, word } : undefined;
}

function compared(node: ASTNode, around: Around): Term | undefined {
  const sign = node.op as Comparison;
  const [left, right] = node.args as readonly [ASTNode, ASTNode];
  const word = textOf(right);
  if (word !== undefined) {
    const of = askedOf(left, around);
    return of && (sign === "==" || sign === "!=") ? { is: "word", of, sign, word } : undefined;
  }
  if (left.op === "call" && left.args[0] === "band" && left.args[1].length === 1) {
    const [inner] = left.args[1];
    const of = inner && askedOf(inner, around);
    const grade = gradeOf(right);
    return of && grade && { is: "band", of, sign, grade };
  }
  const of = scaledOf(left, around);
  const than = numberOf(right) ?? scaledOf(right, around);
  return of && than !== undefined ? { is: "figure", of, sign, than } : undefined;
}

const gradeOf = (node: ASTNode): Grade | undefined =>
  node.op === "id" ? GRADES.find((grade) => grade === node.args) : undefined;

function scaledOf(node: ASTNode, around: Around): Scaled | undefined {
  if (node.op === "*") {
    const [left, right] = node.args;
    const [factor, read] = numberOf(left) === undefined ? [numberOf(right), left] : [numberOf(left), right];
    const of = askedOf(read, around);
    return of && factor !== undefined ? { factor, of } : undefined;
  }
  const of = askedOf(node, around);
  return of && { factor: 1, of };
}

function askedOf(node: ASTNode, around: Around): Asked | undefined {
  if (node.op === "call") {
    const [name, [inner, ...more]] = node.args;
    const when = name === "last" ? "last" : name === "since_last_km" ? "since" : undefined;
    const of = inner && more.length === 0 ? askedOf(inner, around) : undefined;
    return of && when && of.when === undefined ? { ...of, when } : undefined;
  }
  const path = pathOf(node);
  // A name is a sheet and a point of it; what stands before them says where.
  if (path.length < 2) return undefined;
  return { name: path.slice(-2).join("."), at: placeOf(path.slice(0, -2), around) };
}

/** Names joined by points; empty where it is something else. */
function pathOf(node: ASTNode): readonly string[] {
  if (node.op === "id") return [node.args];
  if (node.op !== ".") return [];
  const front = pathOf(node.args[0]);
  return front.length === 0 ? [] : [...front, node.args[1]];
}

/** A place as terms say it; "" for nowhere named. */
function placeOf(path: readonly string[], { bound }: Around): string {
  const [first, ...rest] = path;
  if (first === undefined) return "";
  const level = bound.lastIndexOf(first);
  return [level < 0 ? first : (BOUND[level] ?? first), ...rest].join(".");
}

const textOf = (node: ASTNode): string | undefined =>
  node.op === "value" && typeof node.args === "string" ? node.args : undefined;

function numberOf(node: ASTNode): number | undefined {
  if (node.op === "-_") {
    const value = numberOf(node.args);
    return value === undefined ? undefined : -value;
  }
  if (node.op !== "value") return undefined;
  if (typeof node.args === "number") return node.args;
  return typeof node.args === "bigint" && Number.isSafeInteger(Number(node.args)) ? Number(node.args) : undefined;
}
