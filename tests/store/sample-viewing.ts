/** One good body of every kind of a viewing, version 1, with every field it may have. */
import type { ViewingBodies } from "../../src/core/record/index.js";

export const VIEWING_BODIES: ViewingBodies = {
  claim: { claim: "c1", says: { text: "New belts two years ago", from: "advert" }, replaces: [] },
  "claim.seen": {
    claim: "c1",
    seen: { word: "not-shown", words: "No bill for them in the folder", on: "2026-03-14" },
    replaces: [],
  },
  "papers.until": { until: "2026-04-13", replaces: [] },
};
