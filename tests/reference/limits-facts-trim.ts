/** What the default limits of the trim sheet have to say, from the trade notes. Refuses to know the sheet. */
import { CP, fact, type LimitFact, own } from "./limit-fact.js";

export const TRIM: readonly LimitFact[] = [
  // Under 16 % dry, to 20 % watched, over that damp.
  fact("wood", "%", ">", [16, 20, null, null], CP),
  own("wood-over", "%", ">", [2, 4, null, null], "the notes take off what the air gives and name no edge for the rest"),
  fact("edge", "m", ">", [0.3, null, null, null], CP),
  // Any shortage is noted; more than a tenth is loose.
  fact("fix-short", "1", ">", [0, 0.1, null, null], CP),
];
