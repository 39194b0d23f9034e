/** What is told alike at every visit of the demo: kinds of hubs, brakes and joints, and what a dry, tight car says. */
import { BALL_JOINTS, CORNERS, not, OUTER_BALLS, REAR_BALLS, ROD_ENDS, RUBBER, standing, type Told } from "./tell.js";

/** Hubs and brakes, which decide the limits. */
export const WHEEL_KINDS: readonly Told[] = standing("w0-talk", [
  ["whl.kind", "kind", { "FL FR": "taper-adjust", "RL RR": "cartridge" }],
  ["brk.circuit", "circuits", { car: "dual" }],
  ["brk.circuit", "help", { car: "servo" }],
  ["brk.kind", "kind", { [CORNERS]: "disc" }],
  ["brk.fluid-kind", "kind", { car: "glycol-4" }],
]);

/** What each joint is. */
export const JOINT_KINDS: readonly Told[] = standing("w6-loaded", [
  [
    "susp.joint-kind",
    "kind",
    { [`${BALL_JOINTS} ${REAR_BALLS}`]: "ball-joint", [ROD_ENDS]: "rod-end", [RUBBER]: "rubber-bush" },
  ],
  ["susp.joint-kind", "liner", { [ROD_ENDS]: "lined" }],
]);

/** Looked at before the first metre and found right; what was not is told beside it. */
export const FIT_TO_MOVE: readonly Told[] = [
  ...standing("w1-cold", [
    ["whl.retain", "fixing", { [CORNERS]: "locked" }],
    ["brk.pedal", "feel", { car: "firm" }],
    ["brk.pedal-hold", "hold", { car: "holds" }],
    ["brk.servo", "dip", { car: "dips" }],
    ["brk.warn", "lamp", { car: "works" }],
    ["brk.roll", "rolls", { car: "freely" }],
    ["brk.caliper", "leak", { [CORNERS]: "dry" }],
    ["brk.pipe-seen", "leak", { car: "dry" }],
    ["susp.fixings-seen", "seen", { [CORNERS]: "all-there" }],
    ["susp.stance", "sits", { [CORNERS]: "as-it-should" }],
    ["susp.bounce", "after", { [CORNERS]: "settles" }],
    ["corr.door", "shuts", { "side-L side-R": "freely" }],
    ["drn.park-tilt", "nose", { car: "level" }],
    ["drn.drip", "under", { car: "none" }],
  ]),
  ...standing("w2-doors", [
    ["brk.master", "leak", { car: "dry" }],
    ["drn.smell", "of", { car: "none" }],
    ["drn.heater", "look", { car: "dry" }],
    ["drn.door-hole", "slots", { "door-L door-R": "open" }],
    ["corr.cabin", "rust", { "side-L": "film", "side-R": "clean" }],
  ]),
  ...standing("w3-lids", [
    ["brk.bias", "setting", { car: not("not-fitted") }],
    ["corr.lids", "cross-member", { car: "clean" }],
    ["corr.lids", "master", { car: "clean" }],
    ["corr.lids", "battery", { car: "clean" }],
    ["drn.spindle", "bush", { "side-L side-R": "tight" }],
    ["drn.lamp", "drain", { "lamp-bowl-L lamp-bowl-R filler-neck battery-box": "clear" }],
  ]),
];

/** On the lift, wheels off: what stood right each time. */
export const RIGHT_ON_THE_LIFT: readonly Told[] = [
  ...standing("w7-hang", [
    ["corr.lift", "moves", { "jack-FL jack-FR jack-RL jack-RR": "holds" }],
    ["corr.door-lifted", "shuts", { "side-L side-R": "as-before" }],
    ["susp.rollbar", "found", { "axle-F axle-R": "firm" }],
    ["susp.rodend-turn", "turns", { [ROD_ENDS]: "snug" }],
    ["susp.rodend-angle", "at-limit", { [ROD_ENDS]: "clear" }],
  ]),
  ...standing("w8-off", [
    ["susp.fixings", "state", { [`${OUTER_BALLS} ${ROD_ENDS}`]: "all-tight" }],
    ["susp.rodend-shank", "look", { [ROD_ENDS]: "sound" }],
    ["susp.spring", "look", { [CORNERS]: "sound" }],
    ["brk.caliper-fix", "body", { [CORNERS]: "tight" }],
    ["brk.bell", "fixings", { [CORNERS]: not("not-fitted") }],
  ]),
];
