/** What the default limits of the top end sheet have to say, from the trade notes. Refuses to know the sheet. */
import { borrowed, but, CP, fact, type LimitFact, own } from "./limit-fact.js";

const HANDBOOKS = borrowed("current volume makers' handbooks, stems of 6 to 8 mm", "makers' handbooks");
const FACE = borrowed("two makers' manuals, head or block face", "makers' manuals");
const ARMY = borrowed("two army technical manuals, in thousandths of an inch", "army technical manuals");

export const HEAD: readonly LimitFact[] = [
  // New 0.02–0.05 and 0.05–0.08; past what a new one has it is watched.
  fact("guide-in", "mm", ">", [0.05, 0.08, null, null], HANDBOOKS),
  fact("guide-ex", "mm", ">", [0.08, 0.12, null, null], HANDBOOKS),
  fact("rock-in", "mm", ">", [null, 0.16, null, null], HANDBOOKS),
  fact("rock-ex", "mm", ">", [null, 0.24, null, null], HANDBOOKS),
  fact("margin-in", "mm", "<", [null, 0.8, null, null], CP),
  fact("margin-ex", "mm", "<", [null, 1, null, null], CP),
  fact("width-in", "mm", ">", [1.5, null, null, null], CP),
  fact("narrow-in", "mm", "<", [1, null, null, null], CP),
  fact("width-ex", "mm", ">", [2, null, null, null], CP),
  fact("narrow-ex", "mm", "<", [1.4, null, null, null], CP),
  fact("seat-runout", "mm", ">", [null, 0.05, null, null], CP),
  fact("seat-loss", "kPa", ">", [null, 10, null, null], CP),
  but(
    fact("sink", "mm", ">", [0.05, null, null, null], CP),
    [0.05, 0.3, null, null],
    "the notes ask for a shim past 0.05; past 0.3 no ladder of shims has one and the insert is due",
  ),
  own("lash-short", "mm", ">", [0.02, 0.05, null, null], "the notes leave the tolerance to the maker; a blade's error"),
  own(
    "fit-short",
    "mm",
    ">",
    [0.015, null, null, null],
    "the notes say never leave it tight; over half a ladder's slack",
  ),
  own("lash-over", "mm", ">", [0.05, null, null, null], "the notes leave the tolerance to the maker; a step of shims"),
  fact("spring-free", "%", ">", [null, 2, null, null], CP),
  fact("spring-load", "%", ">", [null, 10, null, null], CP),
  but(
    fact("bind", "mm", "<", [null, 1, null, null], CP),
    [null, 1, 0.2, null],
    "the notes grade one step; all but touching breaks a spring or drops a valve",
  ),
  fact("flat", "mm", ">", [0.05, 0.1, null, null], FACE),
  fact("skim", "mm", ">", [0.2, null, null, null], borrowed("a maker's manual and a general page", "maker's manual")),
  own("squat", "mm", ">", [0.05, null, null, null], "the notes want both heads skimmed alike and name no figure"),
  own(
    "ratio",
    "1",
    ">",
    [11, null, null, null],
    "the notes work the ratio out and grade none; pump fuel and old ignition",
  ),
  but(
    fact("stand-low", "mm", "<", [null, 0.02, null, null], CP),
    [null, 0.02, 0, null],
    "the window is practice; a liner under the face holds no gasket at all",
  ),
  fact("stand-high", "mm", ">", [null, 0.1, null, null], CP),
  fact("tilt", "mm", ">", [null, 0.025, null, null], borrowed("a farm engine kit guide", "farm engine")),
  fact("step", "mm", ">", [null, 0.04, null, null], borrowed("a car maker's manual of a wet-liner V6", "wet-liner V6")),
  own("over-most", "mm", ">", [0, null, null, null], "the most is the maker's, typed in", {
    basis: "practice",
    source: "the maker's own figure",
    named: "maker's most",
  }),
  fact("squeeze-low", "%", "<", [null, 15, null, null], CP),
  fact("squeeze-high", "%", ">", [null, 30, null, null], CP),
  fact("oval", "mm", ">", [0.064, 0.076, null, null], ARMY),
  fact("oval-low", "mm", ">", [0.064, 0.076, null, null], ARMY),
  fact("taper", "mm", ">", [null, 0.05, null, null], ARMY),
  fact("stud-growth", "%", ">", [null, 0.1, null, null], CP),
];
