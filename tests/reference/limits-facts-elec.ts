/** What the default limits of the electrics sheet have to say, from the trade notes. Refuses to know the sheet. */
import { borrowed, but, CP, fact, type LimitFact, own, published } from "./limit-fact.js";

const STARTER = published("Starter circuit test manual: 0.3 V earth side, 0.5 V feed, 0.8 V both", "Starter circuit");
const GRAVITY = borrowed("TM 5-1185, army technical manual: gravity against charge at 80 °F", "TM 5-1185");

export const ELEC: readonly LimitFact[] = [
  but(
    fact("rest-hours", "h", "<", [8, null, null, null], CP),
    [8, null, null, null],
    "tells whether the reading may be used; advisory because a rule asks for a band and this grades nothing",
  ),
  but(
    fact("rest-cold", "Cel", "<", [0, null, null, null], CP),
    [0, null, null, null],
    "tells whether the reading may be used; advisory because a rule asks for a band and this grades nothing",
  ),
  own("charge", "%", "<", [75, 50, null, null], "the notes give the table and grade a low one without a figure"),
  own("charge-mat", "%", "<", [97, 80, null, null], "glass mat reads 0.15 V high: three quarters shows as nearly full"),
  own("stood-low", "h", ">", [null, 672, null, null], "the notes grade stored under 12.1 V minor, without a time"),
  own("gravity", "1", "<", [1.22, 1.19, null, null], "half and a quarter of the table; the notes grade none", GRAVITY),
  own("battery-age", "a", "≥", [5, null, null, null], "the notes ask for the date without a figure"),
  fact("crank", "V", "<", [null, 9.6, null, null], CP),
  but(
    fact("charge-low", "V", "<", [null, 13.2, null, null], CP),
    [13.5, 13.2, null, null],
    "the notes grade one step; under the usual 13.5 it is watched",
  ),
  fact("charge-low-dynamo", "V", "<", [null, 13, null, null], CP),
  own("charge-idle", "V", "<", [12.9, null, null, null], "the notes ask for it at idle, without a figure"),
  own("charge-loads", "V", "<", [null, 12.8, 12.2, null], "the notes ask for it with all loads, without a figure"),
  but(
    fact("charge-high", "V", ">", [null, null, 15, null], CP),
    [null, 14.8, 15, null],
    "the notes grade one step; over 14.8 every kind gasses",
  ),
  own("charge-high-gel", "V", ">", [null, 14.4, 15, null], "the notes name glass mat alone; gel stands less"),
  own("ripple", "mV", ">", [150, 500, null, null], "the notes ask for it without a figure"),
  fact("drain", "mA", ">", [15, 50, null, null], CP),
  own("stand-days", "1", "<", [28, 14, null, null], "the notes work out the days and grade none"),
  fact("earth-crank", "V", ">", [null, 0.3, null, null], STARTER),
  but(
    fact("earth-load", "V", ">", [null, 0.2, null, null], CP),
    [null, 0.2, 1, null],
    "the notes make it major where pump or lamps fade; that is about a volt",
  ),
  fact("feed-crank", "V", ">", [null, 0.5, null, null], STARTER),
  but(
    fact("feed-load", "V", ">", [null, 0.3, null, null], CP),
    [null, 0.3, 1, null],
    "the notes grade one step; a volt less at a pump is a lean engine",
  ),
  fact("start-total", "V", ">", [null, 0.8, null, null], STARTER),
  but(
    fact("isolator-drop", "V", ">", [null, 0.1, null, null], CP),
    [null, 0.1, 0.4, null],
    "the notes grade one step; four tenths at a hundred amperes char a switch",
  ),
  own("isolator-heat", "W", ">", [null, 5, 20, null], "the notes work out the heat and grade none"),
];
