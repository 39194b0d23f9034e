/** What the default limits of the parts-received sheet have to say, from the trade notes. Refuses to know the sheet. */
import { but, CP, fact, type LimitFact, own } from "./limit-fact.js";

export const RECV: readonly LimitFact[] = [
  // The notes hold all that locates to 0.05 mm; by feature, a seat warns from the micrometer's own step.
  but(
    fact("seat-off", "mm", ">", [null, null, 0.05, null], CP),
    [0.01, null, 0.05, null],
    "a seat a hundredth off already asks for its drawing",
  ),
  but(
    fact("width-off", "mm", ">", [0.05, null, null, null], CP),
    [0.05, 0.2, null, null],
    "two tenths between locating faces is another variant, not scatter",
  ),
  own("free-off", "mm", ">", [2, 5, null, null], "tolerance by feature: a free end locates nothing"),
  own(
    "cord-off",
    "mm",
    ">",
    [null, 0.1, null, null],
    "the notes ask for the cord without a figure; inch and metric differ so",
  ),
  fact("rubber-age", "mo", ">", [null, 24, null, null], CP),
  fact("belt-age", "mo", ">", [null, 36, null, null], CP),
  own("glue-age", "mo", ">", [null, 12, null, null], "asked with rubber in the notes without a figure of its own"),
];
