/** The first visit's joints, steel and floor: the walls as they were, a dry car, a wax coat that hides the rear. */
import { CORNERS, count, JOINTS, mm, not, ROD_ENDS, STEERED, seconds, standing, type Told, years } from "./tell.js";

/** The steel below that was clean at both visits that came to it. */
export const CLEAN_BELOW = "main-rail-R-aft outrigger-R-3 outrigger-L-2 outrigger-R-2 post-FL-fore rack-mount";
/** And what had begun to brown. */
export const BROWN_BELOW = "main-rail-L-aft post-RL-aft xm-front-under";
/** A gauge set on its block before every first wall, on bared metal: it does better there than its kind. */
export const WALL_GAUGE = { id: "wall-gauge", resolution: 0.01, error: 0.03 };
export const ZONES = "foot-FL foot-FR seat-L seat-R behind-seat-R tunnel-side";

export const FIRST_FRAME: readonly Told[] = [
  ...standing("w0-talk", [
    ["corr.tube-spec", "wall", { "outrigger-L-3": mm("1.6") }],
    ["corr.tube-spec", "across", { "outrigger-L-3": mm("40") }],
    ["susp.age", "years", { car: years("6") }],
    ["susp.age", "record", { car: "on-paper" }],
    ["susp.past", "past", { car: "nothing-special" }],
    ["corr.store", "where", { car: "dry" }],
    ["corr.roads", "salt", { car: "neither" }],
    ["corr.papers", "photos", { car: "seen" }],
    ["drn.when", "gets-wet", { car: "never" }],
    ["drn.cover", "kind", { car: "breathes" }],
    ["drn.demist", "screen", { car: "clears" }],
  ]),
  ...standing("w1-cold", [
    ["susp.tyre-wear", "pattern", { [CORNERS]: "even" }],
    ["susp.wheel-lash", "rim", { car: mm("4") }],
    ["corr.jack", "looks", { "jack-FL jack-FR jack-RR": "sound", "jack-RL": "dented" }],
    ["drn.mist", "inside", { car: "none" }],
  ]),
  ...standing("w2-doors", [
    ["drn.carpet", "feel", { [`${ZONES} behind-seat-L`]: "dry" }],
    ["drn.floor-hole", "hole", { "foot-FL foot-FR": "bung-fitted", "behind-seat-L behind-seat-R": "open" }],
    ["drn.floor-hole", "*", { "seat-L seat-R tunnel-side": not("not-fitted") }],
    ["drn.seal", "seal", { "seal-door-L seal-door-R seal-screen seal-roof seal-lid-rear": "fits" }],
    [
      "corr.belt-mount",
      "steel",
      {
        "belt-mount-L-lap-outer belt-mount-L-lap-inner belt-mount-R-lap-outer belt-mount-R-lap-inner": "sound",
        "belt-mount-L-shoulder belt-mount-R-shoulder": not("could-not-tell", "covered"),
      },
    ],
  ]),
  ...standing("w3-lids", [
    ["drn.grille", "looks", { "nose-box scuttle-L scuttle-R": "clear" }],
    ["drn.box", "holds", { "nose-box scuttle-L scuttle-R": "clean" }],
    ["drn.boot", "well", { "boot-L boot-R boot-well": "dry" }],
  ]),
  ...standing("w4-road", [
    ["susp.noise", "heard", { car: "none" }],
    ["susp.feel", "steers", { car: "straight" }],
    ["susp.ride", "rides", { car: "settles" }],
  ]),
  ...standing("w6-loaded", [
    ["susp.felt", "play", { [STEERED]: "none" }],
    ["susp.rack", "found", { car: "firm" }],
    ["susp.toe-camber", "toe", { "axle-F": mm("1.6"), "axle-R": mm("2.4") }],
    ["susp.toe-camber", "against", { "axle-F axle-R": "within" }],
  ]),
  ...standing("w7-hang", [["susp.felt", "play", { [JOINTS]: "none" }]]),
  ...standing("w8-off", [
    ["susp.rodend-face", "look", { [ROD_ENDS]: "bright" }],
    ["susp.damper", "look", { [CORNERS]: "dry" }],
  ]),
  ...standing("w9-under", [
    ["corr.look", "rust", { [CLEAN_BELOW]: "clean", [BROWN_BELOW]: "film", "outrigger-L-3": "scale" }],
    ["corr.look", "*", { "tail-rails xm-rear diff-mount tank-cradle": not("could-not-tell", "covered") }],
    ["corr.tap", "sound", { [`${CLEAN_BELOW} ${BROWN_BELOW} outrigger-L-3`]: "rings" }],
    ["corr.gauge", "smallest", { car: mm("0.6") }],
    ["corr.gauge", "crystal", { car: "twin" }],
    ["corr.gauge", "mode", { car: "bared" }],
    ["corr.gauge", "block", { car: "reads-true" }],
    ["corr.wall-ref", "sound", { "outrigger-L-3": mm("1.60", WALL_GAUGE) }],
    ["corr.wall", "wall", { "outrigger-L-3": mm("1.56", WALL_GAUGE) }],
    ["corr.wall", "shots", { "outrigger-L-3": count(9) }],
    ["corr.wall", "face", { "outrigger-L-3": "bottom" }],
    ["corr.cover", "coat", { "outrigger-L-3": "wax" }],
    ["corr.cover", "edge", { "outrigger-L-3": "tight" }],
    ["drn.valve", "end", { "drain-nose drain-scuttle-L drain-scuttle-R drain-demo-seat-L drain-demo-seat-R": "open" }],
    ["drn.outlet", "falls-on", { "drain-nose drain-scuttle-L drain-scuttle-R": "ground", "drain-demo-seat-L": "tube" }],
    ["drn.laminate", "look", { [`${ZONES} behind-seat-L`]: "sound" }],
  ]),
  ...standing("w10-water", [
    ["drn.scuttle-pour", "goes", { "nose-box scuttle-L scuttle-R": "out-only" }],
    ["drn.pour-time", "time", { "scuttle-L": seconds("33"), "scuttle-R": seconds("31") }],
    ["drn.pour-time", "hole", { "scuttle-L scuttle-R": count(12) }],
    ["drn.pour-time", "head", { "scuttle-L scuttle-R": count(50) }],
  ]),
];
