/** What the default limits of the cooling sheet have to say, from the trade notes. Refuses to know the sheet. */
import { but, CP, fact, type LimitFact, own } from "./limit-fact.js";

export const COOL: readonly LimitFact[] = [
  // Flagged when the freezing point lies above the coldest night less 5 K; before a lay-up it is major.
  but(
    fact("frost", "K", "<", [null, 5, null, null], CP),
    [null, 5, 0, null],
    "the notes make it major before winter; that is when the coldest night reaches it",
  ),
  own("frost-water", "Cel", "<", [null, 5, 0, null], "the notes say no straight water in winter, without a figure"),
  fact("too-strong", "%", ">", [null, 60, null, null], CP),
  but(
    fact("too-weak", "%", "<", [35, null, null, null], CP),
    [35, 25, null, null],
    "the notes give the usual mix of 35 to 50 %; a quarter is the weakest row of their table",
  ),
  own("let-out", "L", ">", [0.5, null, null, null], "the notes work out litres and grade none"),
  fact("coolant-age", "a", ">", [2, 4, null, null], CP),
  fact("coolant-age-organic", "a", ">", [5, null, null, null], CP),
  fact("ph-low", "1", "<", [null, 7.5, null, null], CP),
  fact("ph-high", "1", ">", [null, 10.5, null, null], CP),
  // Alloy: above 100 mV act, iron: above 300.
  fact("stray-alloy", "mV", ">", [null, 100, null, null], CP),
  fact("stray-iron", "mV", ">", [null, 300, null, null], CP),
  but(
    fact("hold-15", "bar", ">", [null, 0.1, null, null], CP),
    [null, 0.1, 0.3, null],
    "the notes grade one step; a third of the pressure gone is no weep",
  ),
  own("cap-over", "bar", ">", [null, null, 0.1, null], "the notes ask for the cap's mark without a figure"),
  own("cap-under", "bar", ">", [null, 0.1, null, null], "the notes ask for the cap's mark without a figure"),
  but(
    fact("hose-years", "a", ">", [5, null, null, null], CP),
    [5, 10, null, null],
    "the notes watch from five years; at twice that a hose is renewed",
  ),
  own("fan-on", "Cel", ">", [null, 100, 110, null], "the notes ask when each fan comes on, without a figure"),
  fact("drop-large", "K", ">", [12, 18, null, null], CP),
  fact("drop-small", "K", "<", [3, null, null, null], CP),
  own("therm-late", "K", ">", [null, 5, 15, null], "the notes ask when it opens, without a figure"),
  own("therm-early", "K", ">", [8, null, null, null], "the notes ask when it opens, without a figure"),
  own("dial-low", "K", ">", [null, 8, 18, null], "the notes compare dial and thermometer without a figure"),
  own("dial-high", "K", ">", [10, null, null, null], "the notes compare dial and thermometer without a figure"),
];
