/** The author door: CEL text to checked plan. Loads the parser; used at build, in the editor and on import only. */

export { compile } from "./compile.js";
export { readCondition } from "./condition-read.js";
export type {
  Declarations,
  FactType,
  Named,
  NameType,
  Relation,
  Signature,
  Use,
} from "./declarations.js";
export { EXPRESSION_MESSAGES, tellExpression } from "./messages.js";
export { print } from "./print.js";
