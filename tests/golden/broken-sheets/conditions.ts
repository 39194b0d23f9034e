/** Broken sheets and the whole of what is said about each. Conditions: the place in the file is that of the word inside the text. */
import type { Broken } from "./broken.js";

export const CONDITIONS: readonly Broken[] = [
  {
    name: "an unknown reply word in a condition",
    of: "sheet",
    change: {"part":"rules.yaml","from":"when: 'hub.spin == \"rough\"'","to":"when: 'hub.spin == \"ruff\"'"},
    says: ["hub/rules.yaml:9:24 the point has no word “ruff”; it has rough, tight, smooth"],
  },
  {
    name: "an unknown point in a condition",
    of: "sheet",
    change: {"part":"rules.yaml","from":"when: 'hub.spin == \"rough\"'","to":"when: 'hub.spn == \"rough\"'"},
    says: ["hub/rules.yaml:9:12 unknown name “hub.spn”; nearest: hub.spin, hub.odd, hub.float, hub.noise, hub.noise_age, hub.noise_air"],
  },
  {
    name: "a condition that cannot be read",
    of: "sheet",
    change: {"part":"rules.yaml","from":"when: 'hub.spin == \"rough\"'","to":"when: 'hub.spin == '"},
    says: ["hub/rules.yaml:9:24 cannot be read from here: Unexpected token: EOF"],
  },
  {
    name: "millimetres against bar",
    of: "sheet",
    change: {"part":"derived.yaml","from":"hub.float - opposite.hub.float","to":"hub.float - hub.noise_air"},
    says: ["hub/derived.yaml:2:73 length - pressure: two kinds of quantity do not meet"],
  },
  {
    name: "a word in a folded block",
    of: "sheet",
    change: {"part":"rules.yaml","from":"when: 'hub.spin == \"rough\"'","to":"when: >-\n      hub.spin == \"smooth\" ||\n      hub.spin == \"ruff\""},
    says: ["hub/rules.yaml:11:19 the point has no word “ruff”; it has rough, tight, smooth"],
  },
  {
    name: "findings asked before there are any",
    of: "sheet",
    change: {"part":"rules.yaml","from":"when: 'hub.spin == \"rough\"'","to":"when: 'found(\"hub.play\")'"},
    says: ["hub/rules.yaml:9:12 found() is for rules that work on findings (raise, lower-sure, order …)"],
  },
  {
    name: "silence asked of a rule that is not provisional",
    of: "sheet",
    change: {"part":"rules.yaml","from":"when: 'hub.spin == \"rough\"'","to":"when: 'unanswered(hub.spin)'"},
    says: ["hub/rules.yaml:9:12 unanswered() is for provisional rules: mark the rule or leave it out"],
  },
  {
    name: "an unknown word in a gate",
    of: "common",
    change: {"part":"gates.yaml","from":"c.hub.spin == \"rough\")'","to":"c.hub.spin == \"ruff\")'"},
    says: ["common/gates.yaml:6:55 the point has no word “ruff”; it has rough, tight, smooth"],
  },
  {
    name: "a trade function misspelt",
    of: "sheet",
    change: {"part":"derived.yaml","from":"hub.float - opposite.hub.float","to":"side_diference(hub.float)"},
    says: ["hub/derived.yaml:2:73 unknown function “side_diference”; nearest: side_difference, tyre_circumference, cage_frequency, dive_error, rust_degree, seal_squeeze"],
  },
  {
    name: "a trade function with an argument too few",
    of: "sheet",
    change: {"part":"derived.yaml","from":"hub.float - opposite.hub.float","to":"pad_taper(hub.float)"},
    says: ["hub/derived.yaml:2:73 pad_taper takes 2 (one_end, other_end) argument(s)"],
  },
  {
    name: "a pressure where the trade function takes a length",
    of: "sheet",
    change: {"part":"derived.yaml","from":"hub.float - opposite.hub.float","to":"pad_taper(hub.float, hub.noise_air)"},
    says: ["hub/derived.yaml:2:94 pad_taper: “other_end” is length, not pressure"],
  },
  {
    name: "a fixed figure out of the range of the trade function",
    of: "sheet",
    change: {"part":"derived.yaml","from":"hub.float - opposite.hub.float","to":"pad_taper(hub.float, amount(3.0, \"[in_i]\"))"},
    says: ["hub/derived.yaml:2:94 pad_taper: “other_end” is amount(3.0, \"[in_i]\") here; it must be at least 0, at most 50 mm"],
  },
];
