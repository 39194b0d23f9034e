/** The door for sheets under work: an edition laid over with its changes. Knows no schema library, parser or check. */

export * from "./draft.js";
export type { Path } from "./source.js";
