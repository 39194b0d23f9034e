/** The door of the hand-over: a judged visit in, one model out, and from it pages, text, tables and dates. Pure. */
export type * from "./input.js";
export type * from "./model.js";
export type * from "./page.js";
