/** Types calls: bands, clearly_more, at_least, median, found, unanswered and quantifiers; hands trade functions on and refuses the rest. */

import { nearest } from "../terms/author.js";
import { checkLast, checkSince } from "./last.js";
import { isTaken } from "./names.js";
import { type Checking, isCondition, isFaulty, named, type Piece, piece, refuse, type Type, tell } from "./pieces.js";
import { DEEPEST_QUANTIFIERS, isNum, type NumNode, type PlaceNode, replyOf, type ScaledNode } from "./plan.js";
import type { ASTNode, NodeOf } from "./syntax.js";
import { checkAmount, checkTrade } from "./trade-calls.js";

const YES: Type = { is: "yes" };
const silent = (node: ASTNode): Piece => piece(node, { is: "faulty" }, false);

/** Constructs that flip or fail on one missing reply, and what to write instead. */
const REFUSED: readonly string[] = ["has", "map", "filter", "exists_one", "known"];
const BUILT_IN: readonly string[] = [
  "amount",
  "at_least",
  "band",
  "clearly_more",
  "found",
  "last",
  "median",
  "places",
  "since_last_km",
  "unanswered",
];

type Check = (checking: Checking, node: NodeOf<"call">, args: readonly ASTNode[]) => Piece;

/** `name(…)` */
export function checkCall(checking: Checking, node: NodeOf<"call">): Piece {
  const [name, args] = node.args;
  if (REFUSED.includes(name)) return refuse(checking, node, "expr.refused", { what: name });
  const own = Object.hasOwn(OWN, name) ? OWN[name] : undefined;
  if (own !== undefined) return own(checking, node, args);
  const { functions } = checking.declared;
  const signature = Object.hasOwn(functions, name) ? functions[name] : undefined;
  if (signature !== undefined) return checkTrade(checking, node, name, args, signature);
  const expected = nearest(name, [...BUILT_IN, ...Object.keys(functions)]);
  tell(checking, { start: node.start, end: node.start + name.length }, "expr.unknown-function", {
    text: name,
    expected,
  });
  return silent(node);
}

/** `list.exists(c, …)`, `list.all(c, …)`; no other method. */
export function checkMethod(checking: Checking, node: NodeOf<"rcall">): Piece {
  const [name, receiver, args] = node.args;
  if (name !== "exists" && name !== "all") {
    const code = REFUSED.includes(name) ? "expr.refused" : "expr.unknown-function";
    return refuse(checking, node, code, { what: name, text: name, expected: ["exists", "all"] });
  }
  const [variable, body] = args;
  if (args.length !== 2 || variable?.op !== "id" || body === undefined) return wrongCount(checking, node, name, 2);
  const over = checking.check(receiver);
  if (isFaulty(over)) return silent(node);
  if (over.type.is !== "list") return refuse(checking, receiver, "expr.not-places", { found: named(over.type) });
  if (isTaken(checking, variable.args)) return refuse(checking, variable, "expr.name-taken", { text: variable.args });
  if (checking.bound.length >= DEEPEST_QUANTIFIERS)
    return refuse(checking, node, "expr.too-nested", { most: DEEPEST_QUANTIFIERS });
  checking.bound.push({ name: variable.args, kind: over.type.kind });
  const inner = checking.check(body);
  checking.bound.pop();
  if (!isCondition(checking, inner)) return silent(node);
  return piece(node, YES, [name, over.type.list, inner.code], [inner]);
}

const wrongCount = (checking: Checking, node: ASTNode, name: string, expected: number | string): Piece =>
  refuse(checking, node, "expr.arguments", { text: name, expected: String(expected) });

const OWN: Readonly<Record<string, Check>> = {
  amount: checkAmount,

  at_least: (checking, node, args) => {
    const [first, ...rest] = args;
    const kids = rest.map(checking.check);
    const need = first === undefined ? undefined : checking.check(first).code;
    const fit = kids.filter((kid) => isCondition(checking, kid)).length === kids.length;
    if (first === undefined || kids.length === 0) return wrongCount(checking, node, "at_least", "2 …");
    if (typeof need !== "number" || !Number.isInteger(need) || need < 1 || need > kids.length)
      return refuse(checking, first, "expr.at-least-count", { most: kids.length });
    return fit ? piece(node, YES, ["at_least", need, kids.map((kid) => kid.code)], kids) : silent(node);
  },

  band: (checking, node, args) => {
    const [only] = args;
    if (only === undefined || args.length !== 1) return wrongCount(checking, node, "band", 1);
    const read = checking.check(only);
    if (isFaulty(read)) return silent(node);
    const { code } = read;
    if (isNum(code) && code[4] === "last") return refuse(checking, only, "expr.last-band");
    if (!isNum(code)) return refuse(checking, only, "expr.band-of", { found: named(read.type) });
    return piece(node, { is: "grade", grade: ["band", code[1], code[2], code[3]] }, false);
  },

  clearly_more: (checking, node, args) => {
    if (args.length !== 2) return wrongCount(checking, node, "clearly_more", 2);
    const [a, b] = args.map(checking.check);
    if (!a || !b || isFaulty(a, b)) return silent(node);
    const [left, right] = [scaledOf(a), scaledOf(b)];
    if (!left || !right)
      return refuse(checking, (left ? b : a).node, "expr.not-scaled", { found: named((left ? b : a).type) });
    if (a.type.is === "reading" && b.type.is === "reading" && a.type.quantity !== b.type.quantity)
      return refuse(checking, node, "expr.other-quantity", {
        sign: "clearly_more",
        left: named(a.type),
        right: named(b.type),
      });
    return piece(node, YES, ["more", left, right]);
  },

  found: (checking, node, args) => {
    const { declared, use } = checking;
    if (use.findings !== true) return refuse(checking, node, "expr.only-findings");
    const [what, where] = args;
    if (what === undefined || args.length > 2) return wrongCount(checking, node, "found", "1 or 2");
    if (what.op !== "value" || typeof what.args !== "string") return refuse(checking, what, "expr.fault-text");
    const place = placeArgument(checking, where);
    if (place === undefined) return silent(node);
    const fault = what.args;
    if (declared.faults.includes(fault)) return piece(node, YES, ["found", fault, place]);
    const [sheet = ""] = fault.split(".");
    const elsewhere =
      !declared.sheets.includes(sheet) && (declared.otherSheets?.includes(sheet) ?? fault.includes("."));
    const expected = nearest(fault, declared.faults);
    return refuse(checking, what, elsewhere ? "expr.sheet-not-loaded" : "expr.unknown-fault", {
      text: fault,
      sheet,
      expected,
    });
  },

  last: checkLast,

  median: (checking, node, args) => {
    const [only] = args;
    if (only === undefined || args.length !== 1) return wrongCount(checking, node, "median", 1);
    const read = checking.check(only);
    if (isFaulty(read)) return silent(node);
    const { code, type } = read;
    const kind = isNum(code) && code[3] === 0 && code[4] === undefined ? kindOf(checking, code) : undefined;
    if (!isNum(code) || kind === undefined || type.is !== "reading")
      return refuse(checking, only, "expr.median-of", { found: named(type) });
    const level = checking.bound.length + 1;
    if (level > DEEPEST_QUANTIFIERS) return refuse(checking, node, "expr.too-nested", { most: DEEPEST_QUANTIFIERS });
    const [, point, field] = code;
    const there: NumNode = ["num", point, field, level];
    return piece(node, { ...type, results: [] }, ["median", ["kind", kind], there], [piece(only, type, there)]);
  },

  places: (checking, node, args) => {
    const [only] = args;
    if (only === undefined || args.length !== 1) return wrongCount(checking, node, "places", 1);
    const kinds = Object.keys(checking.declared.kinds);
    const kind = only.op === "value" ? only.args : undefined;
    if (typeof kind !== "string" || !kinds.includes(kind)) {
      const text = typeof kind === "string" ? kind : checking.text.slice(only.start, only.end);
      return refuse(checking, only, "expr.unknown-kind", { text, expected: nearest(text, kinds) });
    }
    return piece(node, { is: "list", list: ["kind", kind], kind }, false);
  },

  since_last_km: checkSince,

  unanswered: (checking, node, args) => {
    if (checking.use.provisional !== true) return refuse(checking, node, "expr.only-provisional");
    const [only] = args;
    if (only === undefined || args.length !== 1) return wrongCount(checking, node, "unanswered", 1);
    const read = checking.check(only);
    if (isFaulty(read)) return silent(node);
    const reply = Array.isArray(read.code) ? replyOf(read.code) : undefined;
    if (reply === undefined || reply.field === "" || reply.last)
      return refuse(checking, only, "expr.unanswered-of", { found: named(read.type) });
    // The place of a node that was just made by names.ts.
    return piece(node, YES, ["unanswered", reply.point, reply.field, reply.place as PlaceNode]);
  },
};

/** The kind of place a reading or derived value belongs to; a fact of the car has none. */
const kindOf = ({ declared }: Checking, [, point, field]: NumNode): string | undefined =>
  Object.values(declared.names).find(({ ref }) => ref.point === point && ref.field === field)?.kind;

function placeArgument(checking: Checking, node: ASTNode | undefined): PlaceNode | undefined {
  if (node === undefined) return 0;
  const { type } = checking.check(node);
  if (type.is === "place") return type.place;
  if (type.is !== "faulty") tell(checking, node, "expr.not-a-place", { found: named(type) });
  return undefined;
}

/** A reading, or a fixed factor times one. */
function scaledOf({ code }: Piece): ScaledNode | undefined {
  if (isNum(code)) return [1, ...readBy(code)];
  if (typeof code !== "object" || (code[0] !== "*" && code[0] !== "/")) return undefined;
  const [sign, a, b] = code;
  const [factor, inner] = typeof a === "number" ? [a, b] : [b, a];
  if (typeof factor !== "number" || !isNum(inner)) return undefined;
  if (sign === "*") return [factor, ...readBy(inner)];
  return inner === a ? [1 / factor, ...readBy(inner)] : undefined;
}

const readBy = ([, point, field, place, ...last]: NumNode) => [point, field, place, ...last] as const;
