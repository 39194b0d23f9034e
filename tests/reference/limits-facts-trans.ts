/** What the default limits of the clutch and gearbox sheet have to say, from the trade notes. Refuses to know the sheet. */
import { borrowed, but, CP, fact, type LimitFact, own } from "./limit-fact.js";

/** Figures of makers' handbooks for their own cars. */
const handbooks = borrowed("handbooks of several volume car makers", "volume car makers");
const MAKERS = "no default on purpose: the edge is the maker's own figure, so nothing over or under it is left";

export const TRANS: readonly LimitFact[] = [
  // Oil after two years or 10 000 km.
  fact("gearbox-km", "km", ">", [10_000, null, null, null], CP),
  fact("gearbox-years", "a", ">", [2, null, null, null], CP),
  own("clutch-free", "mm", "<", [null, 5, null, null], "asked in the notes without a figure; for cable and rods only"),
  own("clutch-slip", "%", ">", [null, 5, 20, null], "the notes grade slip as felt; the figure sides with it"),
  own("slave-lost", "mm", ">", [null, 2, 4, null], "the notes ask for the stroke and leave the bores to arithmetic"),
  own("release-travel", "mm", "<", [null, 6, null, null], "asked in the notes without a figure"),
  but(
    fact("lining-left", "%", "≤", [50, null, null, null], CP),
    [50, 20, null, null],
    "at half the cover goes with the disc; a fifth is the next clutch before the next look",
  ),
  own("disc-over", "mm", "≤", [null, 0, null, null], MAKERS),
  fact("rivet-depth", "mm", "<", [null, 0.3, null, null], handbooks),
  fact("face-left", "mm", "<", [null, 1, null, null], CP),
  fact("disc-side", "mm", ">", [0.7, 0.8, null, null], handbooks),
  fact("finger-depth", "mm", ">", [0.5, 0.6, null, null], handbooks),
  fact("finger-width", "mm", ">", [5, 6, null, null], handbooks),
  fact("finger-tips", "mm", ">", [null, 1, null, null], handbooks),
  fact("plate-flat", "mm", ">", [null, 0.3, null, null], handbooks),
  own("clutch-reserve", "1", "<", [1.3, 1.15, 1, null], "the notes work the torque out and grade none"),
  fact("fly-face", "mm", ">", [null, 0.1, null, null], handbooks),
  own(
    "fly-rim",
    "mm",
    ">",
    [null, 0.2, null, null],
    "the notes' figure is for the face; the rim carries only the starter ring",
  ),
  own("fly-over", "mm", "<", [null, null, 0, null], MAKERS),
  own("end-over", "mm", ">", [null, 0, null, null], MAKERS),
  own("end-under", "mm", ">", [null, 0, null, null], MAKERS),
  own("shaft-bend", "mm", ">", [null, 0.05, null, null], "the notes send there from the backlash without a figure"),
  fact("backlash", "mm", ">", [null, 0.25, null, null], CP),
  // 0.05 to 0.15 mm is new and never rejected.
  own(
    "backlash-tight",
    "mm",
    "<",
    [null, 0.05, 0.02, null],
    "the notes say near zero; less than a sound new pair is too little",
  ),
  fact("backlash-swing", "mm", ">", [null, 0.05, null, null], CP),
  fact("fork-gap", "mm", ">", [0.5, 1, null, null], CP),
  fact("baulk-gap", "mm", "<", [null, 0.8, null, null], CP),
  // The steps of the mesh check itself: advisory, since the check's own verdict grades.
  fact("centre-off", "mm", ">", [0.05, null, null, null], CP),
  fact("helix-off", "deg", ">", [0.3, null, null, null], CP),
  fact("module-off", "1", ">", [0.005, null, null, null], CP),
];
