/** The door for sheets under work: changes laid over an edition, copies, new ids, differences. No schema library, parser or check. */

export { readCaseReply, type Typed } from "./case-replies.js";
export { copiedSheet } from "./copied.js";
export { declarationsFor } from "./declare.js";
export * from "./difference.js";
export * from "./draft.js";
export { type Lookup, lookupFor, partOfSheet } from "./lookup.js";
export { freshId, freshNumber, freshSheetId, idPrefix } from "./new-ids.js";
export type { Path } from "./source.js";
