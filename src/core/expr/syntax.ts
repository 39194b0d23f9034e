/** CEL text to syntax tree, by the library, within limits. Knows no name and no type. */
import { type ASTNode, Environment, ParseError } from "@marcbachmann/cel-js";

export type { ASTNode };
/** One kind of syntax node. */
export type NodeOf<Op extends ASTNode["op"]> = Extract<ASTNode, { readonly op: Op }>;

/** As the sheet schema allows for one condition. */
const LONGEST_TEXT = 2000;

// Optional types are switched on so that `.?` parses and can be refused by name.
const parser = new Environment({
  enableOptionalTypes: true,
  limits: { maxAstNodes: 1000, maxDepth: 40, maxListElements: 100, maxMapEntries: 10, maxCallArguments: 32 },
});

export interface NotParsed {
  readonly code: "expr.too-long" | "expr.too-deep" | "expr.syntax";
  readonly start: number;
  readonly end: number;
  /** The parser's own words. */
  readonly says: string;
}

/** The syntax tree, or where and why there is none. */
export function parseText(text: string): ASTNode | NotParsed {
  if (text.length > LONGEST_TEXT)
    return { code: "expr.too-long", start: LONGEST_TEXT, end: text.length, says: String(LONGEST_TEXT) };
  try {
    return parser.parse(text).ast;
  } catch (error) {
    if (!(error instanceof ParseError)) throw error;
    const { start, end } = error.range ?? { start: 0, end: text.length };
    return { code: error.code === "limit_exceeded" ? "expr.too-deep" : "expr.syntax", start, end, says: error.summary };
  }
}
