/** Types comparisons and `in`: like with like only, a word only with a point that has it. */
import { nearest } from "../terms/author.js";
import { type Checking, isFaulty, named, type Piece, piece, refuse, tell } from "./pieces.js";
import { type Comparison, isNum, type PlanNode } from "./plan.js";
import type { NodeOf } from "./syntax.js";

const YES = { is: "yes" } as const;
const silent = (node: Piece["node"]): Piece => piece(node, { is: "faulty" }, false);
const isEquality = (op: Comparison): op is "==" | "!=" => op === "==" || op === "!=";

/** `a == b` and its like. */
export function checkComparison(checking: Checking, node: NodeOf<Comparison>): Piece {
  const [a, b] = [checking.check(node.args[0]), checking.check(node.args[1])];
  if (isFaulty(a, b)) return silent(node);
  const is = [a.type.is, b.type.is];
  if (is.includes("grade")) return grades(checking, node, a, b);
  if (is.includes("text") || is.includes("word")) return words(checking, node, a, b);
  if (is.includes("words"))
    return refuse(checking, node, "expr.several-words", { text: nameIn(checking, a.type.is === "words" ? a : b) });
  if (is.includes("reading")) return readings(checking, node, a, b);
  if (a.type.is === "number" && b.type.is === "number") return piece(node, YES, [node.op, a.code, b.code], [a, b]);
  if (a.type.is === "yes" && b.type.is === "yes") return yesses(checking, node, a, b);
  return refuse(checking, node, "expr.not-comparable", { left: named(a.type), right: named(b.type) });
}

const nameIn = ({ text }: Checking, part: Piece): string => text.slice(part.node.start, part.node.end);

function grades(checking: Checking, node: NodeOf<Comparison>, a: Piece, b: Piece): Piece {
  if (a.type.is === "grade" && b.type.is === "grade")
    return piece(node, YES, ["grade", node.op, a.type.grade, b.type.grade]);
  const other = a.type.is === "grade" ? b : a;
  return refuse(checking, other.node, "expr.grade-with-other", { found: named(other.type) });
}

function readings(checking: Checking, node: NodeOf<Comparison>, a: Piece, b: Piece): Piece {
  if (a.type.is !== "reading" || b.type.is !== "reading") {
    const other = a.type.is === "reading" ? b : a;
    const code = other.type.is === "number" ? "expr.bare-number" : "expr.not-comparable";
    return refuse(checking, node, code, { left: named(a.type), right: named(b.type) });
  }
  if (a.type.quantity !== b.type.quantity)
    return refuse(checking, node, "expr.other-quantity", { sign: node.op, left: named(a.type), right: named(b.type) });
  if (isEquality(node.op)) return refuse(checking, node, "expr.reading-equal");
  return piece(node, YES, [node.op, a.code, b.code], [a, b]);
}

/** Equality of yes-or-no only between names and literals: for conditions the open way is written out. */
function yesses(checking: Checking, node: NodeOf<Comparison>, a: Piece, b: Piece): Piece {
  const plain = ({ code }: Piece) =>
    typeof code === "boolean" || (Array.isArray(code) && (code[0] === "yes" || code[0] === "fact"));
  if (!isEquality(node.op)) return refuse(checking, node, "expr.no-order", { found: named(a.type) });
  if (!plain(a) || !plain(b)) return refuse(checking, node, "expr.yes-equal");
  return piece(node, YES, [node.op, a.code, b.code], [a, b]);
}

/** The words a piece may be, and its node read as a word. */
function wordy(part: Piece): { readonly words: readonly string[]; readonly code: PlanNode } | undefined {
  const { type, code } = part;
  if (type.is === "word") return { words: type.words, code };
  if (type.is !== "reading" || type.results.length === 0 || !isNum(code)) return undefined;
  const [, point, field, place, ...last] = code;
  return { words: type.results, code: ["result", point, field, place, ...last] };
}

/** Tells a word a point does not have. */
function hasWord(checking: Checking, literal: Piece, words: readonly string[]): boolean {
  if (literal.type.is !== "text") return false;
  const { text } = literal.type;
  if (words.includes(text)) return true;
  tell(checking, literal.node, "expr.unknown-word", { text, expected: nearest(text, words, 12) });
  return false;
}

function words(checking: Checking, node: NodeOf<Comparison>, a: Piece, b: Piece): Piece {
  const several = [a, b].find((part) => part.type.is === "words");
  if (several) return refuse(checking, node, "expr.several-words", { text: nameIn(checking, several) });
  const [left, right] = [wordy(a), wordy(b)];
  if (!isEquality(node.op)) return refuse(checking, node, "expr.no-order", { found: "word" });
  if (left && right) {
    const shared = left.words.some((word) => right.words.includes(word));
    if (!shared) return refuse(checking, node, "expr.words-apart", { expected: left.words });
    return piece(node, YES, [node.op, left.code, right.code], [a, b]);
  }
  const subject = left ?? right;
  const literal = left ? b : a;
  if (!subject || literal.type.is !== "text") {
    return refuse(checking, node, "expr.not-comparable", { left: named(a.type), right: named(b.type) });
  }
  if (!hasWord(checking, literal, subject.words)) return silent(node);
  const sides = left ? ([left.code, literal.type.text] as const) : ([literal.type.text, subject.code] as const);
  return piece(node, YES, [node.op, ...sides], [a, b]);
}

/** `name in ["a", "b"]` and `"a" in name`. */
export function checkIn(checking: Checking, node: NodeOf<"in">): Piece {
  const [a, b] = [checking.check(node.args[0]), checking.check(node.args[1])];
  if (isFaulty(a, b)) return silent(node);
  if (b.type.is === "words") {
    if (a.type.is !== "text")
      return refuse(checking, node, "expr.not-comparable", { left: named(a.type), right: named(b.type) });
    if (!hasWord(checking, a, b.type.words)) return silent(node);
    return piece(node, YES, ["among", a.type.text, b.code], [b]);
  }
  if (b.type.is !== "literals") return refuse(checking, b.node, "expr.not-a-list", { found: named(b.type) });
  const { items } = b.type;
  if (items.length === 0) return refuse(checking, b.node, "expr.empty-list");
  if (a.type.is === "words") return refuse(checking, node, "expr.several-words", { text: nameIn(checking, a) });
  const subject = wordy(a);
  if (subject) {
    const texts = items.map((item) => (item.type.is === "text" ? item.type.text : undefined));
    const wrong = items.find((item) => item.type.is !== "text");
    if (wrong) return refuse(checking, wrong.node, "expr.not-comparable", { left: "word", right: named(wrong.type) });
    const all = items.filter((item) => !hasWord(checking, item, subject.words));
    return all.length > 0
      ? silent(node)
      : piece(node, YES, ["in", subject.code, texts.filter((text) => text !== undefined)], [a]);
  }
  const numbers = items.map((item) => item.code).filter((code) => typeof code === "number");
  if (a.type.is === "number" && numbers.length === items.length) return piece(node, YES, ["in", a.code, numbers], [a]);
  return refuse(checking, node, a.type.is === "reading" ? "expr.bare-number" : "expr.not-comparable", {
    left: named(a.type),
    right: named(b.type),
  });
}
