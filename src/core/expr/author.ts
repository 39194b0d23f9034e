/** The author door: CEL text to checked plan. Loads the parser; used at build, in the editor and on import only. */
export type { ArgumentType, Declarations, FactType, NameType, Named, Relation, Signature, Use } from "./declarations.js";
export { compile } from "./compile.js";
