/** The door for sheets under work: an edition laid over with its changes. Knows no schema library, parser or check. */

export { readCaseReply, type Typed } from "./case-replies.js";
export { declarationsFor } from "./declare.js";
export * from "./draft.js";
export { type Lookup, lookupFor, partOfSheet } from "./lookup.js";
export type { Path } from "./source.js";
