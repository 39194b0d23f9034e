/** CEL text → checked plan, with every problem found. Knows no file: the caller turns offsets into lines. */
import type { Problem, Result, Spot } from "../terms/index.js";
import { checkNode } from "./checking.js";
import type { Declarations, Use } from "./declarations.js";
import { type Checking, isCondition, named, type Piece, tell } from "./pieces.js";
import { DEEPEST_NODES, PLAN_VERSION, type Plan } from "./plan.js";
import { type ASTNode, parseText } from "./syntax.js";

/**
 * Parses and checks one condition or formula. On failure every problem carries `where` as given and in
 * `params`: `offset`, `length`, `line`, `column` inside the text (offset from 0, line and column from 1), the
 * words in question as `text`, and what was expected as `expected` (nearest first). Codes and texts: messages.ts.
 */
export function compile(text: string, declared: Declarations, use: Use, where: Spot = {}): Result<Plan> {
  const problems: Problem[] = [];
  let depth = 0;
  const checking: Checking = {
    text,
    declared,
    use,
    where,
    problems,
    bound: [],
    check: (node) => {
      depth++;
      const part = depth > DEEPEST_NODES ? tooDeep(checking, node) : checkNode(checking, node);
      depth--;
      return part;
    },
  };
  const tree = parseText(text);
  if ("code" in tree) tell(checking, tree, tree.code, { says: tree.says });
  else {
    const whole = checking.check(tree);
    const gives = givenBy(checking, whole);
    if (problems.length === 0 && gives !== undefined) {
      return { ok: true, value: { v: PLAN_VERSION, gives, code: whole.code, spans: whole.spans } };
    }
  }
  return { ok: false, problems };
}

function tooDeep(checking: Checking, node: ASTNode): Piece {
  if (!checking.problems.some(({ code }) => code === "expr.too-deep")) tell(checking, node, "expr.too-deep");
  return { type: { is: "faulty" }, code: false, spans: [], node };
}

/** What the whole gives, where that is what it is used for; else tells. */
function givenBy(checking: Checking, whole: Piece): Plan["gives"] | undefined {
  const wanted = checking.use.gives ?? "condition";
  if (wanted === "condition") return isCondition(checking, whole) ? "yes" : undefined;
  const { type } = whole;
  if (type.is === "reading" && type.quantity === wanted) return "number";
  // A length over a length is a plain number, and a ratio.
  if (type.is === "number" && (wanted === "number" || wanted === "ratio")) return "number";
  if (type.is !== "faulty") tell(checking, whole.node, "expr.gives", { found: named(type), expected: wanted });
  return undefined;
}
