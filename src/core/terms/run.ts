/** The second door of the shared words: what is asked only after the first reply, so that nothing before it carries it. */
export * from "./driving.js";
export * from "./person.js";
