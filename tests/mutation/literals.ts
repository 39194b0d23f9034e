/**
 * The numbers written in a source file, and the file with each of them switchable from outside. Literals of types, of
 * keys and of plain places in a list are left alone: they are no figures. Knows nothing of what the file does.
 */
import ts from "typescript";
import { steps, wholeSteps } from "./tally.js";

/** One number and what it is changed to. */
export interface Switch {
  readonly id: number;
  readonly line: number;
  readonly from: string;
  readonly to: number;
  /** An end of what an argument may be, not a figure that is reckoned with. */
  readonly range: boolean;
  /** The line it stands in, trimmed. */
  readonly text: string;
}
export interface Switchable {
  readonly source: string;
  readonly switches: readonly Switch[];
}

/** Read once, as the file is loaded. */
export const WHICH = "leadlampMutant";

/** The file with every number asking whether it is the one to be changed. */
export function switchable(file: string, source: string): Switchable {
  const tree = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true);
  const lines = source.split("\n");
  const switches: Switch[] = [];
  const pieces: string[] = [];
  let done = 0;
  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node) || ts.isImportDeclaration(node)) return;
    if (ts.isNumericLiteral(node) && !isPlace(node)) {
      const { line } = tree.getLineAndCharacterOfPosition(node.getStart());
      const from = node.getText();
      const step = isCounted(node) ? wholeSteps : steps;
      const made = step(Number(node.text)).map((to, i) => ({
        id: 1 + switches.length + i,
        line: line + 1,
        from,
        to,
        range: isRange(node),
        text: (lines[line] ?? "").trim(),
      }));
      switches.push(...made);
      const asked = made.map(({ id, to }) => `${WHICH}Here === ${id} ? ${to} : `).join("");
      pieces.push(source.slice(done, node.getStart()), `(${asked}${from})`);
      done = node.getEnd();
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  const head = `const ${WHICH}Here: unknown = Reflect.get(globalThis, "${WHICH}"); `;
  return { source: head + pieces.join("") + source.slice(done), switches };
}

/** The place in a list, or the name of a key: no figure. */
function isPlace(node: ts.NumericLiteral): boolean {
  const { parent } = node;
  return (
    (ts.isElementAccessExpression(parent) && parent.argumentExpression === node) ||
    (ts.isPropertyAssignment(parent) && parent.name === node)
  );
}

/** What takes whole numbers only and cuts a fraction off. */
const CUTTERS: ReadonlySet<string> = new Set(["at", "slice", "toFixed"]);

/**
 * Whether the number counts or points at something, so that a tenth more or less is the same number: part of a place
 * in a list or text, or held against how long a list is. Such a one is changed by a whole step at the least.
 */
function isCounted(node: ts.NumericLiteral): boolean {
  const signed = ts.isPrefixUnaryExpression(node.parent) ? node.parent : node;
  const { parent } = signed;
  if (ts.isCallExpression(parent))
    return ts.isPropertyAccessExpression(parent.expression) && CUTTERS.has(parent.expression.name.text);
  if (!ts.isBinaryExpression(parent)) return false;
  const isInBrackets = ts.isElementAccessExpression(parent.parent) && parent.parent.argumentExpression === parent;
  const other = parent.left === signed ? parent.right : parent.left;
  return isInBrackets || (ts.isPropertyAccessExpression(other) && other.name.text === "length");
}

/** As the signatures of the trade functions name the ends of an argument. */
const ENDS: ReadonlySet<string> = new Set(["from", "to", "over", "under", "atLeast"]);

function isRange(node: ts.NumericLiteral): boolean {
  const signed = ts.isPrefixUnaryExpression(node.parent) ? node.parent : node;
  return ts.isPropertyAssignment(signed.parent) && ENDS.has(signed.parent.name.getText());
}
