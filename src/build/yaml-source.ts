/**
 * YAML (or JSON) text → a plain value and the spot of everything in it. Takes only what reads the same to everyone: no
 * tag, alias, merge, directive, warning or key standing twice. Knows no sheet and touches no disk: the app's import
 * chunk uses it too.
 */
import {
  Composer,
  type CST,
  type Document,
  isMap,
  isScalar,
  isSeq,
  Lexer,
  LineCounter,
  type Node,
  Parser,
  Scalar,
} from "yaml";
import { type Path, pathText, type SpotOf } from "../core/sheet/author.js";
import { fail, ok, type Problem, problem, type Result } from "../core/terms/index.js";
import { offsetInSource } from "./yaml-offset.js";

/** Caps (ours): the whole of a large sheet is some 100 kB and 10 levels. */
export const MOST_BYTES = 1_048_576;
export const MOST_LEVELS = 40;
/** Entries in one list or mapping: the parser compares every key with every other. */
const MOST_ENTRIES = 5_000;
/** What the reader of the text counts: words, brackets, commas, blanks. The whole of a large sheet has some 40,000. */
const MOST_SIGNS = 150_000;
/** Enough to mend; a text may hold any number. */
const MOST_TOLD = 100;

export interface YamlText {
  readonly value: unknown;
  readonly spotOf: SpotOf;
}

export interface YamlOptions {
  /** Paths whose text is a condition: it must be quoted or a block, or `!x` and `#` would change it silently. */
  readonly isCondition?: (path: Path) => boolean;
}

/** Enough of a key to tell which it is. */
const LONGEST_KEY = 80;

/** Keys that would reach into every object. */
const NO_KEYS: ReadonlySet<string> = new Set(["__proto__", "constructor", "prototype", "<<"]);

/** Reads one document. `file` is how its spots name it. Every problem found is told, not only the first. */
export function readYaml(text: string, file: string, options: YamlOptions = {}): Result<YamlText> {
  const lines = new LineCounter();
  const spotAt = (offset: number) => {
    const { line, col } = lines.linePos(offset);
    return { file, line: Math.max(line, 1), column: Math.max(col, 1) };
  };
  if (new TextEncoder().encode(text).length > MOST_BYTES)
    return fail(problem("yaml-too-large", { file }, { most: MOST_BYTES, of: "bytes" }));
  if (hasTooManySigns(text))
    return fail(problem("yaml-too-large", { file }, { most: MOST_SIGNS, of: "signs and words" }));
  const tokens = [...new Parser(lines.addNewLine).parse(text)];
  const refused = refusedTokens(tokens, spotAt);
  if (refused.length > 0) return fail(...refused);
  const documents = [
    ...new Composer({ version: "1.2", schema: "core", stringKeys: true, prettyErrors: false }).compose(tokens),
  ];
  const [document, second] = documents;
  if (second) return fail(problem("yaml-documents", spotAt(second.range[0])));
  const faults = [...(document?.errors ?? []), ...(document?.warnings ?? [])].slice(0, MOST_TOLD);
  if (faults.length > 0) return fail(...faults.map((f) => faultOf(f, text, spotAt)));
  if (!document?.contents) return fail(problem("yaml-empty", { file, line: 1, column: 1 }));
  return take(document, text, file, spotAt, options);
}

/** Counted as they come, so that no more is read than is allowed. */
function hasTooManySigns(text: string): boolean {
  let count = 0;
  for (const _ of new Lexer().lex(text)) if (++count > MOST_SIGNS) return true;
  return false;
}

type SpotAt = (offset: number) => Problem["where"];

function faultOf(
  fault: { readonly code: string; readonly message: string; readonly pos: readonly [number, number] },
  text: string,
  spotAt: SpotAt,
): Problem {
  const at = spotAt(fault.pos[0]);
  if (fault.code !== "DUPLICATE_KEY") return problem("yaml-syntax", at, { message: fault.message });
  const [, key = ""] = /^["']?([^"':\n]*)/.exec(text.slice(fault.pos[0], fault.pos[0] + LONGEST_KEY)) ?? [];
  return problem("yaml-duplicate-key", at, { key });
}

/** What is refused as soon as it is written, found without recursion so that no depth can hurt. */
function refusedTokens(tokens: readonly CST.Token[], spotAt: SpotAt): readonly Problem[] {
  const problems: Problem[] = [];
  const stack: { readonly token: CST.Token; readonly level: number }[] = tokens.map((token) => ({ token, level: 0 }));
  stack.reverse();
  for (let top = stack.pop(); top && problems.length < MOST_TOLD; top = stack.pop()) {
    const { token, level } = top;
    const found = "source" in token ? token.source : "";
    if (token.type === "tag") problems.push(problem("yaml-tag", spotAt(token.offset), { found }));
    if (token.type === "anchor" || token.type === "alias")
      problems.push(
        problem("yaml-alias", spotAt(token.offset), {
          found: token.type === "alias" ? `*${found.replace(/^\*/, "")}` : found,
        }),
      );
    if (token.type === "directive") problems.push(problem("yaml-directive", spotAt(token.offset), { found }));
    if (level > MOST_LEVELS)
      return [...problems, problem("yaml-too-deep", spotAt(token.offset), { most: MOST_LEVELS })];
    const inside = insideOf(token);
    if ("items" in token && token.items.length > MOST_ENTRIES)
      return [...problems, problem("yaml-too-large", spotAt(token.offset), { most: MOST_ENTRIES, of: "entries" })];
    const deeper = "items" in token ? level + 1 : level;
    for (let i = inside.length - 1; i >= 0; i--) {
      const next = inside[i];
      if (next) stack.push({ token: next, level: deeper });
    }
  }
  return problems;
}

function insideOf(token: CST.Token): readonly CST.Token[] {
  if (token.type === "document") return [...token.start, ...(token.value ? [token.value] : [])];
  if (token.type === "block-scalar") return token.props;
  if (!("items" in token)) return [];
  return token.items.flatMap((item) => {
    const { start, key, sep, value } = item;
    return [...start, ...(key ? [key] : []), ...(sep ?? []), ...(value ? [value] : [])];
  });
}

/** Where one value and its key stand. */
interface Standing {
  readonly key: number;
  readonly value: number;
  readonly scalar?: Scalar;
}

function take(
  document: Document.Parsed,
  text: string,
  file: string,
  spotAt: SpotAt,
  options: YamlOptions,
): Result<YamlText> {
  const standing = new Map<string, Standing>();
  const problems: Problem[] = [];
  const visit = (node: Node | null, path: Path, key: number): unknown => {
    const start = node?.range?.[0] ?? key;
    standing.set(JSON.stringify(path), { key, value: start, ...(isScalar(node) ? { scalar: node } : {}) });
    if (isSeq<Node | null>(node))
      return node.items.map((item, i) => visit(item, [...path, i], item?.range?.[0] ?? start));
    if (isMap<Scalar<string>, Node | null>(node)) {
      const entries = node.items.flatMap((pair): readonly (readonly [string, unknown])[] => {
        const name = pair.key.value;
        const at = pair.key.range?.[0] ?? start;
        if (NO_KEYS.has(name)) {
          problems.push(problem("yaml-key", spotAt(at), { key: name }));
          return [];
        }
        return [[name, visit(pair.value, [...path, name], at)]];
      });
      return Object.fromEntries(entries);
    }
    if (!isScalar(node)) return null;
    const found = node.source ?? String(node.value);
    if (typeof node.value === "number" && !Number.isFinite(node.value))
      problems.push(problem("yaml-number", spotAt(start), { found }));
    if (node.type === Scalar.PLAIN && options.isCondition?.(path))
      problems.push(problem("condition-unquoted", spotAt(start), { found }));
    return node.value;
  };
  const value = visit(document.contents, [], document.contents?.range?.[0] ?? 0);
  if (problems.length > 0) return fail(...problems);
  const spotOf: SpotOf = (path, at) => {
    for (let near = path; ; near = near.slice(0, -1)) {
      const there = standing.get(JSON.stringify(near));
      if (!there && near.length > 0) continue;
      const offset = there ? offsetOf(there, near === path ? at : undefined, text) : 0;
      return { ...spotAt(offset), file, path: pathText(path) };
    }
  };
  return ok({ value, spotOf });
}

/** A list or mapping is told by its key: what it begins with would say nothing. */
function offsetOf({ key, value, scalar }: Standing, at: number | "key" | undefined, text: string): number {
  if (at === "key" || !scalar) return key;
  if (at === undefined || typeof scalar.value !== "string") return value;
  return offsetInSource(text, scalar.range ?? [value, value, value], scalar.type, scalar.value, at);
}
