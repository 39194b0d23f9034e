/** What the default limits of the steering sheet have to say, from the trade notes. Refuses to know the sheet. */
import { but, CP, fact, type LimitFact, own } from "./limit-fact.js";

const FAR_TOO_LOOSE = "the notes grade one step; from 4 mm at the rim it is the item's own major";

export const STEER: readonly LimitFact[] = [
  but(fact("steer-bush", "mm", ">", [null, 1.5, null, null], CP), [null, 1.5, 4, null], FAR_TOO_LOOSE),
  but(fact("steer-along", "mm", ">", [null, 1, null, null], CP), [null, 1, 4, null], FAR_TOO_LOOSE),
  own("steer-finger", "mm", "≥", [8, null, null, null], "the notes say half a finger; taken as 8 mm"),
  fact("steer-turns", "1", ">", [null, 0.25, null, null], CP),
  but(
    fact("steer-thread", "1", "<", [null, null, 1.5, null], CP),
    [null, null, 1.5, 1],
    "the notes grade one step; with less than one diameter a rod end may pull out",
  ),
  own("steer-free", "mm", ">", [6, null, null, null], "the notes say unequal lengths and name no figure"),
];
