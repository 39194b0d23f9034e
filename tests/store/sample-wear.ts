/** One good body of the kind that compares visits, version 1. */
import type { WearBodies } from "../../src/core/record/index.js";

export const WEAR_BODIES: WearBodies = {
  "wear.said": { of: "whl.float", field: "play", place: "FR", says: "renewed", replaces: [] },
};
