/** The limits book as one part of the door: what is told of figures, their lines, and the drafts of both. */
export * from "./draft-limit-told.js";
export * from "./limit-bodies.js";
export * from "./limit-line.js";
