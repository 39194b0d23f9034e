/** One good body of every kind of a check sheet under work, version 1, with every field it may have. */
import type { SheetDraftBodies } from "../../src/core/record/index.js";
import { HASH_A } from "./sample.js";

export const SHEET_DRAFT_BODIES: SheetDraftBodies = {
  "house.draft": { draft: "d-1", base: { id: "own", edition: "e1", label: "Ours", blob: HASH_A }, replaces: [] },
  "house.draft-item": {
    draft: "d-1",
    list: "points",
    item: "own.hinge",
    to: { value: { id: "own.hinge", place: "door", who: ["owner"] }, texts: { en: { name: "Hinge", ask: {} } } },
    replaces: [],
  },
  "house.draft-order": { draft: "d-1", list: "points", order: ["own.hinge", "own.latch"], replaces: [] },
};
