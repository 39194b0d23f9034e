/** Broken sheets and the whole of what is said about each. What has the wrong shape. */
import type { Broken } from "./broken.js";

export const SHAPE: readonly Broken[] = [
  {
    name: "a missing key",
    of: "sheet",
    change: {"part":"rules.yaml","from":"    when: 'hub.spin == \"rough\"'\n","to":""},
    says: ["hub/rules.yaml:2:5 “when” is missing; expected text"],
  },
  {
    name: "an unknown key",
    of: "sheet",
    change: {"part":"rules.yaml","from":"    supports: ['","to":"    suports: ['"},
    says: ["hub/rules.yaml:10:5 unknown key “suports”; expected id, scope, at, effect, fault, grade, worse, when … (19 in all)"],
  },
  {
    name: "a missing field kind is told by what was meant",
    of: "sheet",
    change: {"part":"points.yaml","from":"{ quantity: length, unit: mm, window: [0, 2] }","to":"{ quantity: length, unit: mm }"},
    says: ["hub/points.yaml:14:7 “window” is missing; expected a list"],
  },
  {
    name: "null as a word",
    of: "sheet",
    change: {"part":"points.yaml","from":"[none, hum, click], several","to":"[null, hum, click], several"},
    says: ["hub/points.yaml:24:24 nothing (null) stands here; expected text; the word “null” needs quotes"],
  },
  {
    name: "a number as a word",
    of: "sheet",
    change: {"part":"points.yaml","from":"[smooth, rough, tight]","to":"[smooth, rough, 3]"},
    says: ["hub/points.yaml:6:38 “3” does not fit; expected text"],
  },
  {
    name: "an id of the wrong form",
    of: "sheet",
    change: {"part":"points.yaml","from":"id: hub.spin","to":"id: Hub spin"},
    says: ["hub/points.yaml:2:9 “Hub spin” has the wrong form; expected small letters first, then letters and digits parted by “.”, “-” or “_”"],
  },
  {
    name: "a word with capitals",
    of: "sheet",
    change: {"part":"points.yaml","from":"[smooth, rough, tight]","to":"[smooth, Rough, tight]"},
    says: ["hub/points.yaml:6:31 “Rough” has the wrong form; expected small letters and digits parted by “-”"],
  },
  {
    name: "a field name of the wrong form",
    of: "sheet",
    change: {"part":"points.yaml","from":"feel: { words","to":"Feel: { words"},
    says: ["hub/points.yaml:6:7 “Feel” has the wrong form; expected small letters and digits parted by “-”"],
  },
  {
    name: "an empty condition",
    of: "sheet",
    change: {"part":"rules.yaml","from":"when: 'band(hub.float) >= minor'","to":"when: ''"},
    says: ["hub/rules.yaml:23:11 “when” is empty"],
  },
  {
    name: "one reply word only",
    of: "sheet",
    change: {"part":"points.yaml","from":"[smooth, rough, tight]","to":"[smooth]"},
    says: ["hub/points.yaml:6:15 “words” needs at least 2"],
  },
  {
    name: "an unknown grade",
    of: "sheet",
    change: {"part":"rules.yaml","from":"    grade: minor\n","to":"    grade: severe\n"},
    says: ["hub/rules.yaml:6:12 “severe” does not fit; expected advisory, minor, major, dangerous or a mapping"],
  },
  {
    name: "an unknown effect",
    of: "sheet",
    change: {"part":"rules.yaml","from":"{ raise: hub.play }","to":"{ lift: hub.play }"},
    says: ["hub/rules.yaml:29:5 “raise” is missing; expected text","hub/rules.yaml:29:15 unknown key “lift”; expected raise"],
  },
  {
    name: "a consequence out of range",
    of: "sheet",
    change: {"part":"rules.yaml","from":"consequence: 1","to":"consequence: 7"},
    says: ["hub/rules.yaml:24:18 “7” does not fit; expected 1, 2, 3 or 4"],
  },
  {
    name: "a sheet of another format",
    of: "sheet",
    change: {"part":"sheet.yaml","from":"leadlamp-sheet/1","to":"leadlamp-sheet/2"},
    says: ["hub/sheet.yaml:1:9 “leadlamp-sheet/2” does not fit; expected leadlamp-sheet/1"],
  },
  {
    name: "an unknown aggregate",
    of: "sheet",
    change: {"part":"limits.yaml","from":"aggregate: max","to":"aggregate: most"},
    says: ["hub/limits.yaml:10:16 “most” does not fit; expected max, min, mean, median, spread or each"],
  },
  {
    name: "a place id of the wrong form",
    of: "common",
    change: {"part":"places.yaml","from":"{ id: axle-F,","to":"{ id: axle F,"},
    says: ["common/places.yaml:3:11 “axle F” has the wrong form; expected letters and digits parted by “-”"],
  },
  {
    name: "three minutes where three are needed",
    of: "common",
    change: {"part":"access.yaml","from":"setUp: [5, 8, 12]","to":"setUp: [5, 8]"},
    says: ["common/access.yaml:2:37 “setUp” needs at least 3"],
  },
  {
    name: "a condition longer than any",
    of: "sheet",
    change: { part: "rules.yaml", from: "when: 'band(hub.float) >= minor'", to: `when: '${"(".repeat(2001)}'` },
    says: ["hub/rules.yaml:23:11 “when” may hold at most 2000"],
  },
];
