/** The door of the hand-over: a judged visit in, one model out, and from it pages, text, tables and dates. Pure. */
export { handover } from "./build.js";
export { type Causes, causesOfCaution, causesOfGate } from "./causes.js";
export { type CsvOptions, readingsCsv, workCsv } from "./csv.js";
export { english } from "./english.js";
export { type Fact, factsOf, missingFacts } from "./facts.js";
export { type FaultWording, faultWords, worstRules } from "./fault-words.js";
export { type Gathered, gathered } from "./gather.js";
export { type HtmlGiven, toHtml } from "./html.js";
export { toIcs } from "./ics.js";
export type * from "./input.js";
export type * from "./model.js";
export type * from "./names.js";
export type * from "./page.js";
export { handoverPages } from "./pages.js";
export { toText } from "./text.js";
export type { HandoverKey, HandoverWords } from "./words.js";
