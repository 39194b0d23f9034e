/** What the default limits of the tyre sheet have to say, from the trade notes and the law. Refuses to know the sheet. */
import { borrowed, but, CP, fact, type LimitFact, own, published } from "./limit-fact.js";

const REG_27 = published("UK Construction and Use Regulations 1986, reg. 27", "reg. 27");
const FIT_FOR_USE = published("EU 2014/45 Annex I 5.2.3(a)", "EU 2014/45 Annex I 5.2.3(a)");
const TABLE = borrowed("Tyre textbook, load at high speed", "tyre textbook page");
const ROUNDED = "papers round the top speed; 5 km/h is no difference";

export const TYRE: readonly LimitFact[] = [
  // Worn out under the legal depth, watched from 3 mm; a wide front tyre is warned of at 4 mm.
  fact("tyre-tread", "mm", "<", [null, 3, null, 1.6], REG_27),
  fact("tyre-wet", "mm", "<", [4, null, null, null], CP),
  own("tyre-wide", "mm", "≥", [195, null, null, null], "the notes say wide front tyres and name no width"),
  fact("tyre-edges", "mm", ">", [1.5, null, null, null], CP),
  fact("tyre-centre", "mm", ">", [1.5, null, null, null], CP),
  fact("tyre-shoulders", "mm", ">", [1.5, null, null, null], CP),
  fact("tyre-cut", "mm", ">", [null, null, 25, null], REG_27),
  fact("tyre-age", "a", "≥", [6, 10, null, null], CP),
  fact("tyre-age-gap", "a", ">", [3, null, null, null], CP),
  own("tyre-soft", "bar", ">", [0.2, 0.4, 0.8, null], "the notes say plainly soft; a gauge tells how soft"),
  own("tyre-hard", "bar", ">", [0.3, null, null, null], "the notes have over-inflation by its wear only"),
  fact("tyre-pair", "bar", ">", [0.2, null, null, null], CP),
  fact("tyre-leak", "bar", ">", [null, 0.2, null, null], CP),
  but(fact("tyre-speed", "km/h", ">", [null, null, 0, null], FIT_FOR_USE), [null, null, 5, null], ROUNDED),
  but(fact("tyre-speed-driven", "km/h", ">", [null, null, null, 0], FIT_FOR_USE), [null, null, null, 5], ROUNDED),
  fact("tyre-load", "1", ">", [null, null, 1, null], FIT_FOR_USE),
  fact("tyre-load-fast", "1", ">", [null, null, 1, null], FIT_FOR_USE),
  // Full load for V up to 210, for W up to 240 km/h.
  fact("tyre-v", "km/h", ">", [210, null, null, null], TABLE),
  fact("tyre-w", "km/h", ">", [240, null, null, null], TABLE),
  own("tyre-over", "%", ">", [2, 4, null, null], "the notes reckon the change and give no edge"),
  own("tyre-under", "%", ">", [3, null, null, null], "the notes reckon the change and give no edge"),
  fact("tyre-sides", "%", ">", [null, 1, null, null], CP),
  but(
    fact("tyre-thread", "1", "<", [null, null, 1, null], CP),
    [null, null, 1, 0.7],
    "the notes grade one step; with less than seven tenths of a diameter threads strip",
  ),
  but(
    fact("tyre-cone", "%", "<", [null, 75, null, null], CP),
    [null, 75, 50, null],
    "the notes grade one step; a cone that bears on half its face has been run loose",
  ),
  own("tyre-torque", "1", ">", [null, 0.1, 0.25, null], "the notes ask for the maker's figure and name no tolerance"),
];
