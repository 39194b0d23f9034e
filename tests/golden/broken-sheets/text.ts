/** Broken sheets and the whole of what is said about each. What YAML itself is refused for. */
import type { Broken } from "./broken.js";

export const TEXT: readonly Broken[] = [
  {
    name: "an unclosed list",
    of: "sheet",
    change: {"part":"rules.yaml","from":"jobs: [job.hub.renew]","to":"jobs: [job.hub.renew"},
    says: ["hub/rules.yaml:15:5 this cannot be read: Flow sequence in block collection must be sufficiently indented and end with a ]"],
  },
  {
    name: "a key twice",
    of: "sheet",
    change: {"part":"points.yaml","from":"    states: [w7-hang]\n    fields:\n      feel:","to":"    states: [w7-hang]\n    states: [w7-hang]\n    fields:\n      feel:"},
    says: ["hub/points.yaml:5:5 key “states” stands twice in this mapping"],
  },
  {
    name: "a tag",
    of: "sheet",
    change: {"part":"points.yaml","from":"id: hub.spin","to":"id: !!str hub.spin"},
    says: ["hub/points.yaml:2:9 tag “!!str” is not allowed; text that begins with “!” goes in quotes"],
  },
  {
    name: "a negation without quotes is a tag",
    of: "sheet",
    change: {"part":"rules.yaml","from":"when: 'hub.spin == \"rough\"'","to":"when: !hub.spin"},
    says: ["hub/rules.yaml:9:11 tag “!hub.spin” is not allowed; text that begins with “!” goes in quotes"],
  },
  {
    name: "an anchor and its alias",
    of: "sheet",
    change: {"part":"points.yaml","from":"states: [w0-talk, w4-road]","to":"states: &s [w0-talk, w4-road]"},
    says: ["hub/points.yaml:22:13 “&s”: anchors and aliases are not allowed; write it out, or quote the text"],
  },
  {
    name: "an alias without anchor",
    of: "sheet",
    change: {"part":"points.yaml","from":"states: [w0-talk, w4-road]","to":"states: *s"},
    says: ["hub/points.yaml:22:13 “*s”: anchors and aliases are not allowed; write it out, or quote the text"],
  },
  {
    name: "a merge key",
    of: "sheet",
    change: {"part":"jobs.yaml","from":"access: [hub-off]","to":"<<: {access: [hub-off]}"},
    says: ["hub/jobs.yaml:4:5 “<<” may not be a key"],
  },
  {
    name: "a prototype key",
    of: "sheet",
    change: {"part":"points.yaml","from":"feel: { words","to":"__proto__: { words"},
    says: ["hub/points.yaml:6:7 “__proto__” may not be a key"],
  },
  {
    name: "a constructor key in texts",
    of: "sheet",
    change: {"part":"texts/en.yaml","from":"  hub.race: {","to":"  constructor: {"},
    says: ["hub/texts/en.yaml:20:3 “constructor” may not be a key"],
  },
  {
    name: "a directive",
    of: "sheet",
    change: {"part":"sheet.yaml","from":"format: lead","to":"%YAML 1.1\n---\nformat: lead"},
    says: ["hub/sheet.yaml:1:1 directive “%YAML 1.1” is not allowed"],
  },
  {
    name: "two documents",
    of: "sheet",
    change: {"part":"sheet.yaml","from":"label: \"Hub 1\"","to":"label: \"Hub 1\"\n---\nid: other"},
    says: ["hub/sheet.yaml:4:1 one text holds one document: “---” may not start another"],
  },
  {
    name: "an empty part",
    of: "sheet",
    change: {"part":"limits.yaml","to":""},
    says: ["hub/limits.yaml:1:1 nothing is written here"],
  },
  {
    name: "a number nobody can keep",
    of: "sheet",
    change: {"part":"limits.yaml","from":"minor: 0.13","to":"minor: .inf"},
    says: ["hub/limits.yaml:7:21 “.inf” is no number that can be kept"],
  },
  {
    name: "a condition without quotes",
    of: "sheet",
    change: {"part":"rules.yaml","from":"when: 'band(hub.float) >= minor'","to":"when: band(hub.float) >= minor"},
    says: ["hub/rules.yaml:23:11 condition “band(hub.float) >= minor” stands without quotes; quote it or write it as a block"],
  },
  {
    name: "a supporting condition without quotes",
    of: "sheet",
    change: {"part":"rules.yaml","from":"supports: ['\"hum\" in hub.noise']","to":"supports: [hub.tight]"},
    says: ["hub/rules.yaml:10:16 condition “hub.tight” stands without quotes; quote it or write it as a block"],
  },
  {
    name: "a part as a bare list",
    of: "sheet",
    change: {"part":"limits.yaml","from":"limits:\n  - id: lim.float\n    of: hub.float\n    quantity: length\n    unit: mm\n    direction: over\n    bands: { minor: 0.13, major: 0.25, dangerous: 0.8 }\n    basis: practice\n    source: common practice, no source\n    aggregate: max\n    class: corner\n    applies: 'car.brakes == \"outboard\"'\n","to":"- id: lim.float\n"},
    says: ["hub/limits.yaml:1:1 this part must be a mapping with “limits:”"],
  },
  {
    name: "a part with another part's key",
    of: "sheet",
    change: {"part":"limits.yaml","from":"limits:\n","to":"rules: []\nlimits:\n"},
    says: ["hub/limits.yaml:1:1 unknown key “rules”; expected limits"],
  },
  {
    name: "a file that is no part",
    of: "sheet",
    change: {"part":"notes.yml","to":"x: 1"},
    says: ["hub/notes.yml file “notes.yml” belongs to no part; expected sheet.yaml, points.yaml, limits.yaml, derived.yaml, rules.yaml, jobs.yaml, gates.yaml, nextlooks.yaml … (11 in all)"],
  },
];
