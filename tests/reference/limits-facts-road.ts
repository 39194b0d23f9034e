/** What the default limits of the road test sheet have to say, from the trade notes. Refuses to know the sheet. */
import { CP, fact, type LimitFact, own, published } from "./limit-fact.js";

export const ROAD: readonly LimitFact[] = [
  // Below what is asked for is major, below half of it dangerous.
  fact("road-brake", "1", "<", [null, null, 1, 0.5], published("EU 2014/45 Annex I 1.2.2", "1.2.2")),
  // Shares of 1: a tenth over is too much, anything under is.
  fact("road-speedo", "1", ">", [0.1, null, null, null], CP),
  fact("road-speedo-under", "1", "<", [null, 0, null, null], CP),
  own("road-climb", "K", ">", [0.5, 1, null, null], "the notes say climbs at cruise, without a figure"),
  own("road-start", "s", ">", [5, 10, null, null], "the notes ask for the seconds without a figure"),
  own("road-restart", "s", ">", [3, 8, null, null], "the notes ask for the seconds; hot, a sound engine is quicker"),
];
