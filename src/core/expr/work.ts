/** The door for conditions under work: rows of terms, their text, what may be offered. Loads no parser. */
export { type Completions, completions, type Offer, type Spoken } from "./completions.js";
export * from "./condition.js";
export { askedIn, namesIn, writeCondition } from "./condition-write.js";
export type { Declarations, FactType, NameType, Relation, Use } from "./declarations.js";
