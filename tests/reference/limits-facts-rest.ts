/** What the default limits of the lay-up sheet have to say, from the trade notes. Refuses to know the sheet. */
import { borrowed, CP, fact, type LimitFact, own } from "./limit-fact.js";

export const REST: readonly LimitFact[] = [
  // A year: a technician wakes it. Two: what is rubber or fluid goes by age.
  own("stood", "mo", ">", [6, 12, 24, null], "the notes give a year and two; half a year is the usual winter"),
  fact("stood-fuel", "mo", ">", [null, 9, null, null], CP),
  fact("store-damp", "%", ">", [75, null, null, null], borrowed("a museum's page on humidity", "museum")),
  fact("store-dew", "K", "≤", [1, null, null, null], CP),
  fact("store-risk", "%", ">", [10, null, null, null], CP),
  fact("wheels-still", "1", ">", [6, null, null, null], CP),
  fact("tyre-rest", "bar", ">", [null, 0.2, null, null], CP),
  fact("first-oil", "s", ">", [5, 10, null, null], CP),
];
