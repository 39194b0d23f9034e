/** What the default limits of the engine health sheet have to say, from the trade notes. Refuses to know the sheet. */
import { borrowed, but, CP, fact, type LimitFact, MEMORY, own, published } from "./limit-fact.js";

const CO = published("EU 2014/45 Annex I 8.2.1.2(b)(i): no advanced emission control", "8.2.1.2(b)(i)");

export const ENG: readonly LimitFact[] = [
  // Oil after a year or 5 000 km.
  fact("oil-age", "mo", ">", [12, null, null, null], CP),
  fact("oil-km", "km", ">", [5000, null, null, null], CP),
  fact("belt-years", "a", ">", [3, 5, null, null], CP),
  own("oil-rate", "L", ">", [0.5, 1, null, null], "the notes work out litres in 1 000 km and grade none"),
  but(
    fact("oil-rise", "s", ">", [5, null, null, null], CP),
    [5, 10, null, null],
    "the notes grade one step; twice that leaves bearings dry at every start",
  ),
  but(
    fact("rattle", "s", ">", [2, null, 5, null], CP),
    [2, 5, null, null],
    "the notes grade what the engine suffers; a rattle alone stops no car on the road",
  ),
  // 0.8 to 1.0 bar at idle, 0.7 bar for each 1 000 rpm; under half of the least it is failing.
  fact("oil-idle", "bar", "<", [null, 0.8, 0.4, null], CP),
  fact("oil-fast", "bar", "<", [null, 2.1, 1.05, null], CP),
  fact("pool", "mm", ">", [null, null, 75, null], MEMORY),
  fact("co-old", "%", ">", [null, null, 4.5, null], CO),
  fact("co-new", "%", ">", [null, null, 3.5, null], CO),
  fact("carb-bal", "%", ">", [5, null, null, null], CP),
  fact("comp-abs", "bar", "<", [null, 6.9, null, null], borrowed("workshop manual, 70 % and 689 kPa", "689 kPa")),
  but(
    fact("comp-spread", "%", ">", [10, 15, 25, null], CP),
    [10, 15, null, null],
    "past a quarter the notes reject the engine; on the road a weak cylinder endangers nobody",
  ),
  fact("comp-ratio", "%", "<", [null, 75, null, null], borrowed("workshop manual, lowest over highest", "75 %")),
  fact("wet-more", "%", ">", [10, null, null, null], CP),
  but(
    fact("leak", "%", ">", [15, 20, 30, null], CP),
    [15, 20, null, null],
    "past 30 the notes reject the engine; on the road a leaking cylinder endangers nobody",
  ),
  fact("leak-floor", "%", ">", [10, null, null, null], CP),
  own("lash-tight", "mm", "<", [0.1, 0.05, null, null], "clearance is the maker's; a floor no engine is set under"),
  own("lash-wide", "mm", ">", [0.6, null, null, null], "clearance is the maker's; a ceiling no engine is set over"),
];
