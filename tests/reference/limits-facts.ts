/**
 * What each default limit of the sheets has to say, written down a second time from the trade notes and the published
 * texts, not from the sheets: edges in the notes' own unit, how they are passed, on what they rest. Where the sheets
 * differ on purpose the row says so and why. Refuses to know the sheets.
 */
import { borrowed, but, CP, fact, type LimitFact, MEMORY, own, published, type Rests } from "./limit-fact.js";
import { BUY } from "./limits-facts-buy.js";
import { COOL } from "./limits-facts-cool.js";
import { ELEC } from "./limits-facts-elec.js";
import { ENG } from "./limits-facts-eng.js";
import { EXH } from "./limits-facts-exh.js";
import { FUEL } from "./limits-facts-fuel.js";
import { HEAD } from "./limits-facts-head.js";
import { LEGAL } from "./limits-facts-legal.js";
import { RECV } from "./limits-facts-recv.js";
import { REST } from "./limits-facts-rest.js";
import { ROAD } from "./limits-facts-road.js";
import { STEER } from "./limits-facts-steer.js";
import { TRANS } from "./limits-facts-trans.js";
import { TRIM } from "./limits-facts-trim.js";
import { TYRE } from "./limits-facts-tyre.js";

const LASH_2012 = "UK inspection manual of before 2018, 2.2";
const MILDER =
  "the published figure is the worst step of the notes; the milder steps warn earlier, as for a plain rack";
const lash = published(LASH_2012, "2.2");
const eu = (item: string): Rests => published(`EU 2014/45 Annex I ${item}`, `EU 2014/45 Annex I ${item}`);
const heavyLining = borrowed(
  "49 CFR 570.59(c): 1/16 in bonded, 1/32 in over the fastener, over 10,000 lb",
  "570.59(c)",
);
const ukLining = published("UK inspection manual for cars 1.1.13(a)(ii): disc pads and drum linings", "1.1.13(a)");

const SUSP: readonly LimitFact[] = [
  fact("rodend-play", "mm", ">", [0.05, 0.1, 0.3, 1], CP),
  fact("rodend-play-bare", "mm", ">", [0.1, 0.2, 0.4, 1], CP),
  fact("balljoint-play", "mm", ">", [0.3, 0.7, 1.5, 3], CP),
  fact("balljoint-side", "mm", ">", [0.3, 0.7, 1.5, 3], CP),
  fact("balljoint-torque", "N.m", "<", [null, null, 0.5, null], borrowed("one maker's service data", "one car maker")),
  // 'Just felt', and a hand feels from about 0.1 mm.
  fact("trackrod-play", "mm", ">", [0.1, 0.3, 0.8, 2], CP),
  // A rod end used as track-rod end meets two limits: the tighter applies.
  fact("trackrod-rodend", "mm", ">", [0.05, 0.1, 0.3, 1], CP),
  fact("trackrod-rodend-bare", "mm", ">", [0.1, 0.2, 0.4, 1], CP),
  fact("pivot-play", "mm", ">", [0.1, 0.3, 0.8, 2], CP),
  own("pivot-along", "mm", ">", [0.5, 1, null, null], "asked in the notes, no figure there; shims take it up"),
  fact("bush-shift", "mm", ">", [1.5, 2.5, 4, null], CP),
  but(
    fact("damper-eye", "mm", ">", [null, 0, null, null], CP),
    [null, 0.1, null, null],
    "the notes grade any play; nothing below what a hand feels, about 0.1 mm, can be told from none",
  ),
  fact("rim-play", "mm", ">", [1, 3, 6, 10], borrowed("49 CFR 570.7(b), 1/4 in; the rest practice", "570.7(b)")),
  fact("wheel-lash", "mm", ">", [5, 10, 13, 50], lash),
  but(fact("wheel-lash-joints", "mm", ">", [null, null, 48, null], lash), [10, 20, 48, null], MILDER),
  but(fact("wheel-lash-box", "mm", ">", [null, null, 75, null], lash), [20, 40, 75, null], MILDER),
  own("height-diff", "mm", ">", [10, 20, null, null], "the notes ask for stance and bounce without a figure"),
  fact("toe-shift", "mm", ">", [null, null, 2, null], CP),
  own("camber-diff", "deg", ">", [0.5, 1, null, null], "asked in the notes, no figure there"),
  fact("joint-age", "a", "≥", [8, 15, null, null], CP),
  // Stood for ten years with fluid and bearings due: the whole car is.
  fact("joint-age-all", "a", "≥", [10, null, null, null], CP),
  // Worn again within 10 000 km: alignment or lock-up.
  fact("rodend-early", "km", "<", [10_000, null, null, null], CP),
  fact("toe-visit", "mm", ">", [null, null, 2, null], CP),
];

const WHL: readonly LimitFact[] = [
  fact("float-taper", "mm", ">", [0.1, 0.13, 0.25, 0.8], borrowed("wheel-end guides, 0.001–0.005 in", "0.005 in")),
  fact("float-ang", "mm", ">", [0.02, 0.05, 0.1, 0.5], CP),
  fact("float-unit", "mm", ">", [null, 0.05, 0.1, 0.5], borrowed("one car manual page, 0.002 in", "0.002 in")),
  fact("float-rise", "mm", ">", [null, 0.05, null, null], CP),
  fact("heat-diff", "K", "≥", [10, 20, 40, null], CP),
  // 50, 65 and 90 °C in air of 20 °C, judged as the rise.
  fact("heat-rise", "K", "≥", [50 - 20, 65 - 20, 90 - 20, null], CP),
  // Absolute figures from 90 °C only.
  fact("heat-abs", "Cel", "≥", [null, null, 90, 120], CP),
  but(
    fact("touch", "Cel", ">", [60, null, null, null], CP),
    [60, null, null, null],
    "a gate's figure; advisory because a gate asks for a band and this grades nothing",
  ),
  fact(
    "hub-runout",
    "mm",
    ">",
    [0.03, 0.05, 0.1, null],
    borrowed("several makers' data, 0.03–0.05 mm", "0.03–0.05 mm"),
  ),
  own("rim-runout", "mm", ">", [0.8, 1.5, null, null], "the notes ask for it without a figure; warns before the law's"),
  fact("rim-runout-law", "mm", ">", [null, null, 3.18, null], published("49 CFR 570.10(b), 1/8 in", "570.10(b)")),
  fact("repack", "km", ">", [20_000, null, null, null], CP),
  fact("repack-years", "a", ">", [2, null, null, null], CP),
  fact("bearing-age", "km", ">", [80_000, null, null, null], CP),
  fact("bearing-age-years", "a", ">", [10, null, null, null], CP),
];

const BRK: readonly LimitFact[] = [
  fact("pad", "mm", "<", [5, 3, 1.6, null], heavyLining),
  fact("pad-law", "mm", "<", [null, null, null, 1.5], ukLining),
  fact("pad-diff", "mm", ">", [1, 2, 3, null], CP),
  // One row of the notes with the one above: inner against outer, lead against trail.
  fact("pad-taper", "mm", ">", [1, 2, 3, null], CP),
  own("pad-side", "mm", ">", [2, 3, null, null], "the notes compare within one brake; across the car more is usual"),
  fact("shoe-rivet", "mm", "<", [2, 1.5, 0.8, null], heavyLining),
  but(
    fact("shoe-bond", "mm", "<", [null, null, 1.6, null], heavyLining),
    [3, 2, 1.6, null],
    "the notes give the limit alone; the milder steps warn earlier, as above a rivet",
  ),
  fact("shoe-law", "mm", "<", [null, null, null, 1.5], ukLining),
  // Over the minimum marked.
  but(
    fact("disc-thick", "mm", "<", [0.5, 0.2, 0, -1], borrowed("the mark on the disc; margins practice", "the maker's")),
    [0.5, 0.2, 0, -1],
    "the notes pass the two milder edges at the figure itself; a limit is passed in one way, and on its mark a disc stands",
  ),
  fact("disc-thick-unknown", "mm", ">", [1, null, 2, null], CP),
  fact("disc-var", "mm", ">", [0.01, 0.015, 0.05, null], borrowed("several makers, 0.005–0.03 mm", "0.005–0.03 mm")),
  fact("disc-runout", "mm", ">", [0.05, 0.1, 0.2, null], borrowed("several makers, 0.03–0.10 mm", "0.03–0.10 mm")),
  fact("temp-diff", "K", "≥", [30, 60, 100, null], CP),
  but(
    fact("touch-disc", "Cel", ">", [60, null, null, null], CP),
    [60, null, null, null],
    "a gate's figure; advisory because a gate asks for a band and this grades nothing",
  ),
  fact("boil", "Cel", "<", [190, 180, 155, 140], borrowed("49 CFR 571.116 S5.1.2, least wet points", "S5.1.2")),
  fact("water", "%", "≥", [2, 3, 4, null], borrowed("49 CFR 571.116 S6.2, 3.70 ± 0.05 % by weight", "S6.2")),
  fact("fluid-age", "a", ">", [2, null, null, null], CP),
  fact("fluid-age-old", "a", "≥", [null, 4, 6, null], CP),
  fact("fluid-age-hard", "a", ">", [0.5, null, null, null], CP),
  fact("hose-age", "a", "≥", [8, 12, null, null], CP),
  fact("seal-age", "a", "≥", [8, null, null, null], CP),
  fact("seal-age-hard", "a", "≥", [null, 12, null, null], CP),
  fact("seal-set", "a", "≥", [12, null, null, null], CP),
  fact("pipe-loss", "mm", "≥", [null, null, 0.25, null], published("UK inspection manual 1.1.11, guidance", "1.1.11")),
  but(
    fact("pedal-left", "%", "<", [40, 33, 20, 0], borrowed("49 CFR 570.55(c), 80 % of the travel", "570.55(c)")),
    [40, 33, 20, 3],
    "less than nothing cannot be measured: a pedal on the carpet still shows a few millimetres",
  ),
  fact("park-clicks", "1", "≥", [8, 10, null, null], CP),
  fact("park-clicks-few", "1", "<", [3, null, null, null], CP),
  fact("imbalance", "%", ">", [15, 20, null, null], CP),
  fact("imbalance-law", "%", ">", [null, null, 100 - 70, null], eu("1.2.1(b)")),
  fact("imbalance-steered", "%", ">", [null, null, null, 100 - 50], eu("1.2.1(b)")),
  own(
    "effort-none",
    "N",
    "≤",
    [null, null, null, 100],
    "the notes say 'no effort' in words; a free wheel shows this much",
  ),
  fact("service-eu", "%", "<", [null, null, 58, 58 / 2], eu("1.2.2")),
  fact("service-eu-older", "%", "<", [null, null, 50, 50 / 2], eu("1.2.2")),
  fact("service-eu-no-abs", "%", "<", [null, null, 48, 48 / 2], eu("1.2.2 footnote 3")),
  fact("service-gb", "%", "<", [null, null, 58, 58 / 2], published("UK ministry note of June 2013", "June 2013")),
  fact("service-gb-older", "%", "<", [null, null, 50, 50 / 2], MEMORY),
  fact("service-gb-early", "%", "<", [null, null, 40, 40 / 2], MEMORY),
  own(
    "service-elsewhere",
    "%",
    "<",
    [null, null, 50, 25],
    "the notes name two sets of rules; elsewhere the milder European figure, said to be borrowed",
    borrowed("EU 2014/45 Annex I 1.2.2, borrowed", "EU 2014/45 Annex I 1.2.2"),
  ),
  fact("park", "%", "<", [null, null, 16, 16 / 2], eu("1.4.2")),
  but(
    fact("park-single", "%", "<", [null, null, 25, 8], MEMORY),
    [null, null, 25, 12.5],
    "dangerous is half of the figure required (UK inspection manual 1.4.2); the notes halve the 16 % for both",
  ),
];

const CORR: readonly LimitFact[] = [
  fact("loss-A", "%", "≥", [5, 10, 15, 30], CP),
  fact("loss-B", "%", "≥", [10, 15, 20, 40], CP),
  fact("loss-C", "%", "≥", [15, 25, null, null], CP),
  // Belt mounts and steel within 30 cm are of the first class.
  fact("loss-belt", "%", "≥", [5, 10, 15, 30], borrowed("practice; 30 cm: UK inspection manual 7.1.1(a)", "7.1.1(a)")),
  // A share of the wall as drawn: 1.0 mm and 0.8 mm of 1.5 mm.
  but(
    fact("wall-floor", "%", "<", [null, null, 100 / 1.5, null], CP),
    [null, null, 67, null],
    "rounded to a whole per cent, towards the safe side",
  ),
  but(
    fact("wall-floor-A", "%", "<", [null, null, 100 / 1.5, 80 / 1.5], CP),
    [null, null, 67, 53],
    "rounded to a whole per cent",
  ),
  fact("wall-least", "mm", "<", [null, null, 1, null], CP),
  fact("wall-least-A", "mm", "<", [null, null, 1, null], CP),
  fact("wall-least-A-thin", "mm", "<", [null, null, null, 0.8], CP),
  but(
    fact("floor-from", "mm", "<", [1.5, 1.2, null, null], CP),
    [1.5, 1.2, null, null],
    "the drawn walls from which the floors in millimetres hold; the two grades only tell them apart",
  ),
  fact("rate", "mm", "≥", [0.02, 0.05, 0.1, null], CP),
  // Under two years to the major edge a tube is graded a step up.
  fact("life-A", "a", "<", [2, null, null, null], CP),
  fact("life-B", "a", "<", [2, null, null, null], CP),
  fact("area", "%", "≥", [1, 8, null, null], borrowed("areas of ISO 4628-3 pictures Ri 3 and Ri 4", "ISO 4628-3")),
  fact("area-scale", "%", "≥", [null, null, 40, null], CP),
  fact("gap", "mm", ">", [1, 2, 4, 8], CP),
  fact("straight", "mm", ">", [4, 6, 10, null], CP),
  own("heights", "mm", ">", [4, 6, 10, null], "asked with the diagonals in the notes; taken like them"),
  fact("crack", "%", ">", [null, null, null, 25], CP),
];

const DRN: readonly LimitFact[] = [
  but(
    fact("pour", "s", ">", [10, 30, null, null], CP),
    [45, 90, null, null],
    "a fixed 10 s flags sound drains: compared with the hole, 29 s for a litre through a clear 12 mm one as it empties",
  ),
  // None in five minutes is sound; over three advisory, down to three minor, down to half a minute major.
  fact("hose-drop", "min", "≤", [5, 3, 0.5, null], CP),
  fact("moist-diff", "%", "≥", [5, 10, 20, null], CP),
  fact("depth", "mm", ">", [null, 0, 10, null], CP),
  fact("wet-since", "wk", "≥", [null, 4, null, null], CP),
  own("dew-margin", "K", "≤", [3, 0, null, null], "the notes have no air in the cabin; 3 K: paint practice", MEMORY),
];

/** Every limit of every shipped sheet. */
export const LIMIT_FACTS: readonly LimitFact[] = [
  ...[...BUY, ...SUSP, ...WHL, ...BRK, ...CORR, ...DRN],
  ...[...ELEC, ...ENG, ...EXH, ...FUEL, ...COOL, ...STEER, ...TYRE],
  ...[...TRANS, ...HEAD, ...RECV, ...REST, ...ROAD, ...LEGAL, ...TRIM],
];
