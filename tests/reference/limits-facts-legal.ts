/** What the default limits of the short legal check have to say, from the trade notes. Refuses to know the sheet. */
import { but, fact, type LimitFact, MEMORY, own, published } from "./limit-fact.js";

const RATE = published("EU 2014/45 Annex I 4.4.4", "EU 2014/45 Annex I 4.4.4");
/** The notes give the range a lamp is set to; in use the regulation allows more, and only that is major. */
const IN_USE = "it is set from 1.0 to 1.5 % and fails outside 0.5 to 2.5 %, both from memory of one regulation";

/** A fall of one per cent is ten centimetres over ten metres. */
const cm = (percent: number): number => percent * 10;
/** Seconds of ten flashes at so many a minute, to a tenth. */
const ten = (perMinute: number): number => Math.round(6000 / perMinute) / 10;

export const LEGAL: readonly LimitFact[] = [
  but(fact("aim-high", "cm", "<", [null, null, cm(1), null], MEMORY), [cm(1), null, cm(0.5), null], IN_USE),
  but(fact("aim-low", "cm", ">", [null, null, cm(1.5), null], MEMORY), [cm(1.5), null, cm(2.5), null], IN_USE),
  // 60 to 120 a minute; a quarter outside that is the item's.
  fact("flash-slow", "s", ">", [ten(60), ten(60 * 0.75), null, null], RATE),
  fact("flash-fast", "s", "<", [ten(120), ten(120 * 1.25), null, null], RATE),
  fact("chip-wiped", "mm", ">", [null, null, 40, null], MEMORY),
  fact("chip-driver", "mm", ">", [null, null, 10, null], MEMORY),
  own("webbing-years", "a", "≥", [15, null, null, null], "the notes work the age out and name no figure"),
];
