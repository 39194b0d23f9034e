/** The visit under way, joints, steel and floor: clear play, the spot thinner again, water behind the seat. */
import { WALL_GAUGE } from "./first-frame.js";
import { but, count, JOINTS, mm, not, percent, seconds, standing, type Told, weeks, years } from "./tell.js";

const CLEAR = "FL-lower-outer RR-toelink-outer";
const REAR_LEFT = "RL-upper-outer RL-lower-fore RL-lower-aft RL-lower-outer";

export const THIRD_FRAME: readonly Told[] = [
  ...standing("w0-talk", [
    ["corr.tube-spec", "wall", { "outrigger-L-3": mm("1.6") }],
    ["corr.tube-spec", "across", { "outrigger-L-3": mm("40") }],
    ["susp.age", "years", { car: years("8") }],
    ["susp.age", "record", { car: "on-paper" }],
    ["susp.past", "past", { car: "nothing-special" }],
    ["corr.store", "where", { car: "damp" }],
    ["corr.roads", "salt", { car: "salted" }],
    ["drn.when", "gets-wet", { car: "parked-rain washing" }],
    ["drn.demist", "screen", { car: "slow" }],
  ]),
  ...standing("w1-cold", [
    ["susp.tyre-wear", "pattern", { "FR RR": "even", FL: "inner-edge" }],
    ["susp.wheel-lash", "rim", { car: mm("5") }],
    ["corr.jack", "looks", { "jack-FL jack-FR jack-RR": "sound", "jack-RL": "dented" }],
    ["drn.mist", "inside", { car: "every-morning" }],
  ]),
  ...standing("w2-doors", [
    ["drn.carpet", "feel", { "foot-FL foot-FR seat-R behind-seat-R": "dry", "seat-L": "damp", "behind-seat-L": "wet" }],
    ["drn.liquid", "is", { "seat-L behind-seat-L": "water" }],
    ["drn.foam", "pressed", { "behind-seat-L": "soaked", "seat-L": "damp" }],
    ["drn.wet-since", "weeks", { "behind-seat-L": weeks("6") }],
    ["drn.wet-since", "mark", { "behind-seat-L": "tide-line" }],
    ["drn.floor-hole", "hole", { "behind-seat-L": "blocked", "behind-seat-R": "open" }],
    ["drn.moist-dry", "dry-spot", { car: percent("12") }],
    ["drn.moist", "here", { "seat-L": percent("19"), "behind-seat-L": percent("27") }],
    ["drn.carries", "bolted", { "behind-seat-L": "belt" }],
    ["drn.wire-wet", "wires", { "behind-seat-L": "dry" }],
    ["drn.seal", "seal", { "seal-door-L seal-screen": "fits", "seal-roof": "hard" }],
    ["corr.belt-mount", "steel", { "belt-mount-L-lap-inner": "sound", "belt-mount-L-shoulder": "scale" }],
  ]),
  ...standing("w3-lids", [
    ["drn.grille", "looks", { "nose-box scuttle-R": "clear", "scuttle-L": "leaves" }],
    ["drn.box", "holds", { "nose-box scuttle-R": "clean", "scuttle-L": "silt" }],
    ["drn.boot", "well", { "boot-L boot-R boot-well": "dry" }],
  ]),
  ...standing("w4-road", [
    ["susp.noise", "heard", { car: "light-rattle" }],
    ["susp.noise-when", "when", { car: "one-wheel-bump" }],
    ["susp.noise-when", "since", { car: "long-known" }],
    ["susp.feel", "steers", { car: "straight" }],
    ["susp.ride", "rides", { car: "settles" }],
  ]),
  ...standing("w6-loaded", [
    ["susp.felt", "play", { [but(JOINTS, `${CLEAR} ${REAR_LEFT} RL-toelink-outer`)]: "none", [CLEAR]: "clear" }],
    ["susp.felt", "play", { "RL-toelink-outer": "just-felt" }],
    ["susp.trackrod-play", "play", { "RR-toelink-outer": mm("0.16"), "RL-toelink-outer": mm("0.06") }],
    ["susp.rack", "found", { car: "firm" }],
  ]),
  ...standing("w7-hang", [
    ["susp.felt", "play", { "FL-lower-outer": "clear", "FR-lower-outer": "none" }],
    ["susp.balljoint-play", "axial", { "FL-lower-outer": mm("0.82") }],
    ["susp.balljoint-play", "side", { "FL-lower-outer": mm("0.5") }],
    ["susp.rodend-turn", "turns", { "RR-toelink-outer": "gritty", "RL-toelink-outer": "snug" }],
  ]),
  ...standing("w8-off", [
    ["susp.boot", "look", { "FL-lower-outer": "sweating", "FR-lower-outer": "hard", "FL-upper-outer": "sound" }],
    ["susp.rubber", "look", { "FL-lower-fore FL-lower-aft FR-lower-fore": "sound", "FR-lower-aft": "surface-cracks" }],
    ["susp.rodend-face", "look", { "RR-toelink-outer": "red-dust", "RR-toelink-inner": "bright" }],
    ["susp.fixings", "state", { "FL-lower-outer FR-lower-outer RR-toelink-outer": "all-tight" }],
    ["susp.damper", "look", { "FL FR RR": "dry", RL: not("not-reached", "no-time") }],
  ]),
  ...standing("w9-under", [
    [
      "corr.look",
      "rust",
      { "outrigger-L-3": "scale", "main-rail-L-aft": "film", "main-rail-R-aft outrigger-R-3": "clean" },
    ],
    ["corr.look", "*", { "tail-rails xm-rear diff-mount tank-cradle": not("could-not-tell", "covered") }],
    ["corr.tap", "sound", { "outrigger-L-3": "dull", "main-rail-L-aft main-rail-R-aft outrigger-R-3": "rings" }],
    ["corr.probe", "awl", { "outrigger-L-3": "solid" }],
    ["corr.splash", "from", { "outrigger-L-3": "drain-above" }],
    ["corr.area", "share", { "outrigger-L-3": percent("12") }],
    ["corr.gauge", "smallest", { car: mm("0.6") }],
    ["corr.gauge", "crystal", { car: "twin" }],
    ["corr.gauge", "mode", { car: "bared" }],
    ["corr.gauge", "block", { car: "reads-true" }],
    ["corr.wall-ref", "sound", { "outrigger-L-3": mm("1.60", WALL_GAUGE) }],
    ["corr.wall", "wall", { "outrigger-L-3": mm("1.42", WALL_GAUGE) }],
    ["corr.wall", "shots", { "outrigger-L-3": count(12) }],
    ["corr.wall", "face", { "outrigger-L-3": "bottom" }],
    ["corr.mark", "earlier", { "outrigger-L-3": mm("1.56", WALL_GAUGE) }],
    ["corr.mark", "today", { "outrigger-L-3": mm("1.42", WALL_GAUGE) }],
    ["corr.mark", "months", { "outrigger-L-3": count(24) }],
    ["drn.valve", "end", { "drain-demo-seat-L": "stuck-shut", "drain-demo-seat-R drain-scuttle-L": "open" }],
    ["drn.outlet", "falls-on", { "drain-demo-seat-L": "tube", "drain-scuttle-L": "ground" }],
    ["drn.laminate", "look", { "behind-seat-L": "blister" }],
  ]),
  ...standing("w10-water", [
    ["drn.scuttle-pour", "goes", { "scuttle-R": "out-only", "scuttle-L": "slow" }],
    ["drn.pour-time", "time", { "scuttle-L": seconds("97") }],
    ["drn.pour-time", "hole", { "scuttle-L": count(12) }],
    ["drn.pour-time", "head", { "scuttle-L": count(50) }],
  ]),
];
