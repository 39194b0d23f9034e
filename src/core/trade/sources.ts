/** Documents several subjects lean on. What was really seen of each stands in `note`. */
import type { Source } from "./contract.js";

/** A step that follows from geometry or arithmetic alone. */
export const ARITHMETIC: Source = { basis: "arithmetic" };
/** A habit of the trade without a document behind it. */
export const practice = (note: string): Source => ({ basis: "practice", note });
/** Read in a document. */
export const published = (document: string, clause?: string, note?: string): Source => ({
  basis: "published",
  document,
  ...(clause === undefined ? {} : { clause }),
  ...(note === undefined ? {} : { note }),
});
/** Remembered, not looked up. */
export const fromMemory = (note: string): Source => ({ basis: "memory", note });
