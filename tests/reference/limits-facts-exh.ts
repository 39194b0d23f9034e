/** What the default limits of the exhaust sheet have to say, from the trade notes. Refuses to know the sheet. */
import { but, CP, fact, type LimitFact, MEMORY, own } from "./limit-fact.js";

export const EXH: readonly LimitFact[] = [
  but(
    fact("near-open", "mm", "<", [null, 100, null, null], CP),
    [null, 100, 30, null],
    "the notes grade one step; within a hand's breadth it is burnt before the next look",
  ),
  fact("near-shielded", "mm", "<", [null, 50, null, null], CP),
  own("growth-room", "mm", "<", [null, 2, null, null], "the notes work out the growth and ask for free movement"),
  but(
    fact("hot-line", "Cel", ">", [null, 60, null, null], CP),
    [null, 60, 90, null],
    "the notes grade one step; what is too hot for a panel is worse for a fuel line",
  ),
  but(
    fact("hot-part", "Cel", ">", [null, 90, null, null], CP),
    [null, 90, 120, null],
    "the notes grade one step; at 120 resin and paint suffer",
  ),
  fact("co-cabin", "1", ">", [null, null, 9, 35], MEMORY),
  own(
    "co-dose",
    "1",
    ">",
    [null, null, null, 2100],
    "the notes work out the dose and grade none: 35 for an hour",
    MEMORY,
  ),
  own("noise-over", "1", ">", [null, 2, 5, null], "the notes ask for the figure and grade none", MEMORY),
];
