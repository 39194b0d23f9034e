/** Broken sheets and the whole of what is said about each. Cases that test nothing. */
import type { Broken } from "./broken.js";

export const CASES: readonly Broken[] = [
  {
    name: "a rule without a case",
    of: "sheet",
    change: {"part":"cases.yaml","from":"  - fires: hub.r3\n    replies: { hub.float@FL: 0.05 mm, hub.float@FR: 0.20 mm }\n    expect: { at: FR }\n    near-miss: { hub.float@FL: 0.19 mm }\n","to":""},
    says: ["hub/rules.yaml:27:9 rule “hub.r3” has no case that fires it"],
  },
  {
    name: "a rule without a near miss",
    of: "sheet",
    change: {"part":"cases.yaml","from":"    near-miss: { hub.float@FL: 0.19 mm }\n","to":""},
    says: ["hub/rules.yaml:27:9 no case of rule “hub.r3” has a near miss"],
  },
  {
    name: "a near miss that changes two replies",
    of: "sheet",
    change: {"part":"cases.yaml","from":"{ hub.float@FL: 0.19 mm }","to":"{ hub.float@FL: 0.19 mm, hub.float@FR: 0.1 mm }"},
    says: ["hub/cases.yaml:14:5 a near miss changes one reply or one fact; this changes 2"],
  },
  {
    name: "a near miss that adds a reply",
    of: "sheet",
    change: {"part":"cases.yaml","from":"{ hub.spin@FR: smooth }","to":"{ hub.spin@FL: smooth }"},
    says: ["hub/cases.yaml:5:18 near miss changes “hub.spin@FL”, which the case does not reply to"],
  },
  {
    name: "a near miss that changes nothing",
    of: "sheet",
    change: {"part":"cases.yaml","from":"{ hub.float@FL: 0.19 mm }","to":"{ hub.float@FL: 0.05 mm }"},
    says: ["hub/cases.yaml:14:32 near miss repeats the reply to “hub.float@FL”"],
  },
  {
    name: "a near miss by a non-answer",
    of: "sheet",
    change: {"part":"cases.yaml","from":"{ hub.spin@FR: smooth }","to":"{ hub.spin@FR: could-not-tell }"},
    says: ["hub/cases.yaml:5:31 near miss must be a known reply; “could-not-tell” is a non-answer"],
  },
  {
    name: "a near miss that adds a fact",
    of: "sheet",
    change: {"part":"cases.yaml","from":"near-miss: { hub.float@FL: 0.05 mm }","to":"near-miss-facts: { abs: true }"},
    says: ["hub/cases.yaml:10:24 near miss changes “abs”, which the case does not reply to"],
  },
  {
    name: "a near miss that repeats a fact",
    of: "sheet",
    change: {"part":"cases.yaml","from":"near-miss: { hub.float@FL: 0.05 mm }","to":"near-miss-facts: { brakes: outboard }"},
    says: ["hub/cases.yaml:10:32 near miss repeats the reply to “brakes”"],
  },
  {
    name: "an unknown point in a case",
    of: "sheet",
    change: {"part":"cases.yaml","from":"replies: { hub.spin@FR: rough }","to":"replies: { hub.spn@FR: rough }"},
    says: ["hub/cases.yaml:3:16 unknown point “hub.spn”; expected hub.spin, hub.float, hub.noise, hub.noise_age or hub.noise_air"],
  },
  {
    name: "an unknown place in a case",
    of: "sheet",
    change: {"part":"cases.yaml","from":"replies: { hub.spin@FR: rough }","to":"replies: { hub.spin@FX: rough }"},
    says: ["hub/cases.yaml:3:16 unknown place “FX”; expected FL or FR"],
  },
  {
    name: "a place of another kind in a case",
    of: "sheet",
    change: {"part":"cases.yaml","from":"replies: { hub.spin@FR: rough }","to":"replies: { hub.spin@axle-F: rough, hub.spin@FR: rough }"},
    says: ["hub/cases.yaml:3:16 “hub.spin” is looked at per corner, not at “axle-F”"],
  },
  {
    name: "an unknown state in a case",
    of: "sheet",
    change: {"part":"cases.yaml","from":"replies: { hub.spin@FR: rough }","to":"replies: { hub.spin@FR#w4-road: rough, hub.spin@FR: rough }"},
    says: ["hub/cases.yaml:3:16 unknown car state “w4-road”; expected w7-hang"],
  },
  {
    name: "a state that must be named",
    of: "sheet",
    change: {"part":"cases.yaml","from":"replies: { hub.spin@FR: rough }","to":"replies: { hub.noise: hum, hub.spin@FR: rough }"},
    says: ["hub/cases.yaml:3:16 “hub.noise” is asked in several car states; say which: w0-talk or w4-road"],
  },
  {
    name: "an unknown word in a case",
    of: "sheet",
    change: {"part":"cases.yaml","from":"replies: { hub.spin@FR: rough }","to":"replies: { hub.spin@FR: ruff }"},
    says: ["hub/cases.yaml:3:29 “ruff” is no reply to “hub.spin”; expected smooth, rough or tight"],
  },
  {
    name: "an exclusive word beside another",
    of: "sheet",
    change: {"part":"cases.yaml","from":"replies: { hub.spin@FR: rough }","to":"replies: { hub.noise#w0-talk: [none, hum], hub.spin@FR: rough }"},
    says: ["hub/cases.yaml:3:16 “none, hum” is no reply to “hub.noise”; expected none, hum or click"],
  },
  {
    name: "a reading in another quantity",
    of: "sheet",
    change: {"part":"cases.yaml","from":"hub.float@FL: 0.20 mm","to":"hub.float@FL: 0.20 bar"},
    says: ["hub/cases.yaml:7:30 “0.20 bar” is no reply to “hub.float”; expected a number in mm, in, thou, µm"],
  },
  {
    name: "a count out of range",
    of: "sheet",
    change: {"part":"cases.yaml","from":"replies: { hub.spin@FR: rough }","to":"replies: { hub.noise_age#w0-talk: 61, hub.spin@FR: rough }"},
    says: ["hub/cases.yaml:3:39 “61” is no reply to “hub.noise_age”; expected a whole number from 0 to 60"],
  },
  {
    name: "a case that expects another fault",
    of: "sheet",
    change: {"part":"cases.yaml","from":"{ hub.race@FR: minor }","to":"{ hub.play@FR: minor }"},
    says: ["hub/cases.yaml:4:5 the case fires “hub.r1” but does not expect “hub.race”"],
  },
  {
    name: "a case that expects no grade there is",
    of: "sheet",
    change: {"part":"cases.yaml","from":"{ hub.race@FR: minor }","to":"{ hub.race@FR: severe }"},
    says: ["hub/cases.yaml:4:28 “severe” does not fit; expected advisory, minor, major or dangerous"],
  },
  {
    name: "a case of an effect that names no place",
    of: "sheet",
    change: {"part":"cases.yaml","from":"{ at: FR }","to":"{ hub.play@FR: major }"},
    says: ["hub/cases.yaml:13:5 the case fires “hub.r3” but does not expect “at: PLACE”"],
  },
];
