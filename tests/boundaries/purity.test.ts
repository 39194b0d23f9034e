/**
 * Proves that core takes no clock and no chance from its surroundings, by reading every file of it as a syntax
 * tree. What the compiler forbids (DOM, Node) is its own affair.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { expect, test } from "vitest";

const core = fileURLToPath(new URL("../../src/core", import.meta.url));

/** Names that differ from one run, machine or country to the next. */
const IMPURE_CALLS = new Set(["Date.now", "Math.random", "Intl.DateTimeFormat", "Intl.NumberFormat"]);
const IMPURE_NAMES = new Set(["performance", "crypto", "setTimeout", "setInterval", "queueMicrotask", "navigator"]);
const IMPURE_METHODS = new Set([
  "toLocaleString",
  "toLocaleDateString",
  "toLocaleTimeString",
  "localeCompare",
  "getTimezoneOffset",
]);
/** Date parts in the machine's own time zone: take the getUTC… ones. */
const ZONED_METHODS = /^(get|set)(FullYear|Month|Date|Day|Hours|Minutes)$/;

/** What takes something from the surroundings, as `line: text`. */
function impurities(name: string, text: string): string[] {
  const file = ts.createSourceFile(name, text, ts.ScriptTarget.ES2023, true);
  const found: string[] = [];
  const accuse = (node: ts.Node): void => {
    const { line } = file.getLineAndCharacterOfPosition(node.getStart());
    found.push(`${name}:${line + 1}: ${node.getText().slice(0, 60)}`);
  };
  const look = (node: ts.Node): void => {
    if (ts.isNewExpression(node) && node.expression.getText() === "Date") {
      if ((node.arguments?.length ?? 0) === 0) accuse(node);
    } else if (ts.isCallExpression(node) && node.expression.getText() === "Date") {
      accuse(node);
    } else if (ts.isPropertyAccessExpression(node)) {
      const called = node.name.text;
      if (IMPURE_CALLS.has(node.getText()) || IMPURE_METHODS.has(called) || ZONED_METHODS.test(called)) accuse(node);
    } else if (ts.isIdentifier(node) && IMPURE_NAMES.has(node.text)) {
      const parent = node.parent;
      const isMember = ts.isPropertyAccessExpression(parent) && parent.name === node;
      const isKey = (ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent)) && parent.name === node;
      if (!isMember && !isKey) accuse(node);
    }
    ts.forEachChild(node, look);
  };
  look(file);
  return found;
}

const files = readdirSync(core, { recursive: true, encoding: "utf8" }).filter(
  (name) => name.endsWith(".ts") && !name.endsWith(".test.ts"),
);

test("core takes no clock, chance, time zone or locale from its surroundings", () => {
  expect(files.length).toBeGreaterThan(25);
  expect(files.flatMap((name) => impurities(name, readFileSync(join(core, name), "utf8")))).toEqual([]);
});

test.each([
  "const at = Date.now();",
  "const at = new Date();",
  "const at = Date();",
  "const chance = Math.random();",
  "const id = crypto.randomUUID();",
  "const at = performance.now();",
  "setTimeout(() => {}, 1);",
  "const text = (3.5).toLocaleString();",
  "const order = a.localeCompare(b);",
  "const year = new Date(iso).getFullYear();",
])("the purity check catches: %s", (line) => {
  expect(impurities("planted.ts", line)).toHaveLength(1);
});

test("the purity check leaves arithmetic on a given date alone", () => {
  expect(
    impurities("planted.ts", "const year = new Date(iso).getUTCFullYear() + Date.UTC(2020, 1) + Date.parse(iso);"),
  ).toEqual([]);
});
