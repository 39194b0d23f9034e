/** Broken sheets and the whole of what is said about each. Shown texts that are missing or stand for nothing. */
import type { Broken } from "./broken.js";

export const TEXTS: readonly Broken[] = [
  {
    name: "a point without a text",
    of: "sheet",
    change: {"part":"texts/en.yaml","from":"  hub.spin:\n    name: Spin\n    ask: { technician: How does it turn?, owner: Does it turn smoothly? }\n    words: { smooth: smooth, rough: rough, tight: tight }\n","to":""},
    says: ["hub/texts/en.yaml:4:1 text “points › hub.spin” is missing in language “en”"],
  },
  {
    name: "a reply word without a text",
    of: "sheet",
    change: {"part":"texts/en.yaml","from":"rough: rough, ","to":""},
    says: ["hub/texts/en.yaml:8:5 text “points › hub.spin › words › rough” is missing in language “en”"],
  },
  {
    name: "a field without a text",
    of: "sheet",
    change: {"part":"texts/en.yaml","from":", age: Age","to":""},
    says: ["hub/texts/en.yaml:17:5 text “points › hub.noise › fields › age” is missing in language “en”"],
  },
  {
    name: "no question for the owner",
    of: "sheet",
    change: {"part":"texts/en.yaml","from":", owner: Does it turn smoothly?","to":""},
    says: ["hub/texts/en.yaml:7:5 text “points › hub.spin › ask › owner” is missing in language “en”"],
  },
  {
    name: "no reason why it is left to the workshop",
    of: "sheet",
    change: {"part":"texts/en.yaml","from":"    leave: Told in the workshop.\n","to":""},
    says: ["hub/texts/en.yaml:13:3 text “points › hub.noise › leave” is missing in language “en”"],
  },
  {
    name: "a fault without a text",
    of: "sheet",
    change: {"part":"texts/en.yaml","from":"  hub.play: { says: Too much play. }\n","to":""},
    says: ["hub/texts/en.yaml:19:1 text “faults › hub.play” is missing in language “en”"],
  },
  {
    name: "a job without a text",
    of: "sheet",
    change: {"part":"texts/en.yaml","from":"  job.hub.renew: { name: Renew the bearing, does: New bearing. }","to":"  job.hub.renw: { name: Renew the bearing, does: New bearing. }"},
    says: ["hub/texts/en.yaml:22:1 text “jobs › job.hub.renew” is missing in language “en”","hub/texts/en.yaml:23:3 text “jobs › job.hub.renw” belongs to nothing in this sheet"],
  },
  {
    name: "a part without a text",
    of: "sheet",
    change: {"part":"texts/en.yaml","from":", grease: Grease","to":""},
    says: ["hub/texts/en.yaml:24:1 text “parts › grease” is missing in language “en”"],
  },
  {
    name: "a limit without a text",
    of: "sheet",
    change: {"part":"texts/en.yaml","from":"{ lim.float: End float }","to":"{}"},
    says: ["hub/texts/en.yaml:25:1 text “limits › lim.float” is missing in language “en”"],
  },
  {
    name: "a text for a word that is none",
    of: "sheet",
    change: {"part":"texts/en.yaml","from":"tight: tight }","to":"tight: tight, loose: loose }"},
    says: ["hub/texts/en.yaml:8:58 text “points › hub.spin › words › loose” belongs to nothing in this sheet"],
  },
  {
    name: "closer words for a rule that is none",
    of: "sheet",
    change: {"part":"texts/en.yaml","from":"jobs:\n","to":"rules: { hub.r9: { says: Nothing. } }\njobs:\n"},
    says: ["hub/texts/en.yaml:22:10 text “rules › hub.r9” belongs to nothing in this sheet"],
  },
  {
    name: "texts in another language than their file",
    of: "sheet",
    change: {"part":"texts/en.yaml","from":"language: en","to":"language: de"},
    says: ["hub/texts/en.yaml:1:11 the texts in “en” say they are in “de”"],
  },
  {
    name: "a place without a name",
    of: "common",
    change: {"part":"texts/en.yaml","from":", FR: Front right","to":""},
    says: ["common/texts/en.yaml:2:1 text “places › FR” is missing in language “en”"],
  },
  {
    name: "a fact's word without a text",
    of: "common",
    change: {"part":"texts/en.yaml","from":", inboard: at the axle","to":""},
    says: ["common/texts/en.yaml:15:27 text “facts › brakes › words › inboard” is missing in language “en”"],
  },
  {
    name: "a suspect without a text",
    of: "common",
    change: {"part":"texts/en.yaml","from":"{ hub: Hub }","to":"{ hob: Hub }"},
    says: ["common/texts/en.yaml:18:42 text “complaints › sym.hum › suspects › hub” is missing in language “en”","common/texts/en.yaml:18:54 text “complaints › sym.hum › suspects › hob” belongs to nothing in this sheet"],
  },
];
