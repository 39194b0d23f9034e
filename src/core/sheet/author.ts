/** The door for building, importing and editing sheets: everything that checks. Never on the way to the first reply. */

export { type CaseReply, readCaseReply, type Typed } from "./case-replies.js";
export { type Checked, checkSheet } from "./check.js";
export { type CheckedCommon, checkCommon } from "./check-common.js";
export { checkSameMeaning } from "./checks/same-meaning.js";
export type { Surroundings } from "./declare.js";
export { COMMON_LISTS, isCondition, SHEET_LISTS, withEmptyLists } from "./format.js";
export { type Lookup, lookupFor, partOfCommon, partOfSheet } from "./lookup.js";
export { MESSAGES, tell } from "./messages.js";
export { planAgain } from "./plan-again.js";
export { Common, Sheet } from "./schema.js";
export { type Digest, sealCommon, sealSheet } from "./seal.js";
export { parseCommon, parseSheet } from "./shape.js";
export { type Path, pathText, type SpotOf } from "./source.js";
export { weave } from "./weave.js";
