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
];
