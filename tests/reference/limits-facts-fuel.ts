/** What the default limits of the fuel sheet have to say, from the trade notes. Refuses to know the sheet. */
import { but, CP, fact, type LimitFact, MEMORY, own } from "./limit-fact.js";

export const FUEL: readonly LimitFact[] = [
  // Rubber watched at five years, renewed at eight; lined at ten.
  fact("hose-life", "a", "≥", [5, 8, null, null], CP),
  fact("lined-life", "a", "≥", [10, null, null, null], CP),
  own("filter-age", "a", "≥", [2, null, null, null], "asked in the notes with its age, no figure there"),
  but(
    fact("hot-open", "mm", "<", [null, null, 100, null], CP),
    [null, null, 100, 25],
    "the notes grade one step; what all but touches an exhaust is dangerous before anything leaks",
  ),
  fact("hot-shielded", "mm", "<", [null, null, 40, null], CP),
  but(
    fact("moving-near", "mm", "<", [null, 20, null, null], CP),
    [null, 20, 5, null],
    "the notes grade one step; at 5 mm an engine that rocks reaches it",
  ),
  fact("tank-gap", "mm", "<", [null, null, 50, null], CP),
  // Carburettors are usually fed at 0.2 to 0.35 bar.
  but(
    fact("feed-high", "bar", ">", [null, 0.35, null, null], CP),
    [null, 0.35, 0.5, null],
    "the notes give the usual range; from half a bar no needle holds",
  ),
  but(
    fact("feed-low", "bar", "<", [0.2, null, null, null], CP),
    [0.2, 0.1, null, null],
    "the notes give the usual range; half of its lower end starves the engine",
  ),
  but(
    fact("hold-fall", "%", ">", [null, 20, null, null], CP),
    [null, 20, 50, null],
    "the notes grade one step; half the pressure gone in ten minutes is a leak somewhere",
  ),
  own("hold-fall-hot", "%", ">", [50, null, null, null], "the notes read it for hot starts, without a figure"),
  own("fuel-old", "mo", ">", [6, 12, null, null], "asked in the notes as months since the last fill, no figure there"),
  own("ethanol-share", "%", ">", [6, 11, null, null], "EN 228 has 5 and 10 %; a point more for a rough test", MEMORY),
  fact("bottle-size", "kg", "<", [1, null, null, null], CP),
  fact("bottle-service", "mo", ">", [12, null, null, null], CP),
];
