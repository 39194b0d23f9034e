/** What the default limits of the buyer's sheet have to say, from the trade notes. Refuses to know the sheet. */
import { CP, fact, type LimitFact, own } from "./limit-fact.js";

export const BUY: readonly LimitFact[] = [
  fact("block-over", "K", ">", [10, null, null, null], CP),
  fact("gap-sides", "mm", ">", [2, 4, null, null], CP),
  fact("paint-sides", "1", ">", [2, null, null, null], CP),
  fact("paint-again", "um", ">", [200, null, null, null], CP),
  fact("paint-fill", "um", ">", [500, null, null, null], CP),
  fact("history-gap", "mo", ">", [24, null, null, null], CP),
  own("km-more", "1", ">", [3, null, null, null], "the notes ask for the year that stands out, without a figure"),
  own("km-less", "1", "<", [0.2, null, null, null], "the same the other way: hardly driven, or not told"),
  fact("price-share", "1", ">", [1, null, null, null], CP),
];
