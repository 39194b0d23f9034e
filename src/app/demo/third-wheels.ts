/** The visit under way, wheels and brakes: a rear bearing near its end, a float too close to call, a cooked caliper. */
import { CORNERS, cel, count, km, mm, not, percent, speed, standing, type Told, years } from "./tell.js";

/** This dial stands on a bent foot: known since its last check, so its readings carry more. */
const OLD_DIAL = { id: "dial-on-stub", resolution: 0.01, error: 0.02 };

export const THIRD_WHEELS: readonly Told[] = [
  ...standing("w0-talk", [
    ["whl.since", "km", { car: km("11800") }],
    ["whl.since", "record", { car: "from-memory" }],
    ["whl.stood", "past", { car: "stood-months jet-washed" }],
    ["brk.use", "past", { car: "road mountains" }],
    ["brk.fluid-age", "years", { car: years("1.9") }],
    ["brk.fluid-age", "record", { car: "on-paper" }],
    ["brk.seal-age", "years", { car: years("8") }],
  ]),
  ...standing("w2-doors", [["brk.park-travel", "clicks", { car: count(8) }]]),
  ...standing("w3-lids", [
    ["brk.level", "stands", { car: "mid" }],
    ["brk.fluid-look", "pot", { car: "amber" }],
    ["brk.fluid-water", "water", { car: percent("2.0") }],
  ]),
  ...standing("w4-road", [
    ["whl.drone", "noise", { car: "clear" }],
    ["whl.masked", "by", { car: "no" }],
    ["whl.bend", "change", { car: "louder-left-bend" }],
    ["whl.drive", "change", { car: "same" }],
    ["whl.surface", "change", { car: "no" }],
    ["whl.onset", "speed", { car: speed("55") }],
    ["whl.knockback", "long", { car: "yes" }],
    ["whl.clunk", "heard", { car: "no" }],
    ["brk.pull", "way", { car: "straight" }],
    ["brk.judder", "felt", { car: "none" }],
    ["brk.rattle", "heard", { car: "quiet" }],
    ["brk.fade", "pedal", { car: "same" }],
    ["brk.park", "does", { car: "holds" }],
  ]),
  ...standing("w5-hot", [
    ["whl.air", "reading", { car: cel("9") }],
    ["whl.heat", "reading", { FL: cel("29"), FR: cel("36"), RL: cel("33"), RR: cel("64") }],
    ["whl.smoke", "seen", { [CORNERS]: "none" }],
    ["brk.temp", "disc", { FL: cel("53"), FR: cel("96"), RL: cel("46"), RR: cel("55") }],
  ]),
  ...standing("w7-hang", [
    ["whl.rock", "feel", { "FL RL": "none", FR: "just-felt", RR: "clear" }],
    ["whl.rock-braked", "rock", { "FR RR": "gone" }],
    ["whl.spin", "feel", { "FL FR RL": "smooth", RR: "rough" }],
    ["whl.listen", "heard", { "FR RL": "quiet", RR: "grumble" }],
    ["brk.drag", "turns", { "FL RL RR": "free", FR: "drags" }],
    ["brk.drag-nipple", "then", { FR: "still-drags" }],
    ["brk.pad-rattle", "pads", { "FL FR": "quiet" }],
  ]),
  ...standing("w8-off", [
    ["whl.nut", "lock", { "FR RR": "locked", RL: not("could-not-tell", "seized") }],
    ["whl.float", "play", { FL: mm("0.20"), FR: mm("0.26", OLD_DIAL), RR: mm("0.31") }],
    ["whl.grease", "look", { FR: "clean", RR: "burnt metal-flakes" }],
    ["whl.seal", "look", { FR: "weeping", RR: "torn" }],
    ["brk.hose", "look", { "FL FR": "surface-cracks" }],
    ["brk.hose-age", "years", { "FL FR": years("13"), RR: years("8") }],
    ["brk.boot", "look", { FL: "supple", FR: "cooked", RR: "supple" }],
    ["brk.piston", "goes", { FL: "even", FR: "stiff" }],
    [
      "brk.pad",
      "lead",
      {
        "FL-pad-inner": mm("6.0"),
        "FL-pad-outer": mm("6.2"),
        "FR-pad-inner": mm("4.4"),
        "FR-pad-outer": mm("5.9"),
        "RR-pad-inner": mm("7.1"),
        "RR-pad-outer": mm("7.2"),
      },
    ],
    [
      "brk.pad",
      "trail",
      {
        "FL-pad-inner": mm("5.9"),
        "FL-pad-outer": mm("6.1"),
        "FR-pad-inner": mm("3.8"),
        "FR-pad-outer": mm("5.7"),
        "RR-pad-inner RR-pad-outer": mm("7.1"),
      },
    ],
    ["brk.pad-look", "face", { FL: "even", FR: "tapered glazed" }],
    ["brk.disc", "face", { FL: "rust-film", FR: "blue", RR: "rust-film" }],
    ["brk.disc-thick", "thick", { FL: mm("21.05"), FR: mm("20.86") }],
    ["brk.disc-thick", "marked", { "FL FR": mm("20") }],
    ["brk.disc-var", "thick", { FR: mm("20.871 20.868 20.866 20.861 20.860 20.863 20.869 20.872") }],
    ["brk.disc-runout", "fitted", { FR: mm("0.06"), RR: mm("0.05") }],
    ["brk.heat", "signs", { FL: count(0), FR: count(2) }],
    ["brk.heat", "which", { FR: "blue-disc cooked-boot" }],
    ["brk.nipple", "nipple", { FL: "free", FR: "rusty", RL: not("not-reached", "no-time") }],
  ]),
];
/** The same wheel, felt by the other person: both stand until someone settles it. */
export const SECOND_OPINION: readonly Told[] = standing("w7-hang", [["whl.spin", "feel", { FL: "light-grumble" }]]);
