/** The door for sheets under work: an edition laid over with its changes. Knows no schema library, parser or check. */

export { declarationsFor } from "./declare.js";
export * from "./draft.js";
export { lookupFor, partOfSheet } from "./lookup.js";
export type { Path } from "./source.js";
