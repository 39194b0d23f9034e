/** One good body of every kind, version 1, but those of plans, of a house's terms (sample-plan.ts) and of what is said of pictures (sample-pictures.ts) and of figures in a limits book (sample-limits.ts), of sheets under work (sample-sheet-drafts.ts). */
import type {
  Bodies,
  HouseTermsBodies,
  LimitBodies,
  PictureBodies,
  PlanBodies,
  SheetDraftBodies,
} from "../../src/core/record/index.js";
import { HASH_A, HASH_B, HASH_C, key, opening } from "./sample.js";

const id = "visit:v/w1/1/n1";

type Own = Exclude<
  keyof Bodies,
  keyof PlanBodies | keyof HouseTermsBodies | keyof PictureBodies | keyof SheetDraftBodies | keyof LimitBodies
>;
export const BODIES: { readonly [K in Own]: Bodies[K] } = {
  "car.begun": { name: "Little one" },
  "car.named": { name: "Blue one", replaces: ["car:c/w1/1/n1"] },
  "car.fact": { fact: "brakes", value: "inboard", replaces: [] },
  "car.place": {
    place: "drain-7",
    change: { add: { id: "drain-7", kind: "drain", in: "car", at: [60, 50] } },
    replaces: [],
  },
  "car.place-named": { place: "FL-lower-fore", name: "Lower arm, front", replaces: [] },
  "car.limit": {
    key: "lim.float-unit@FR",
    limit: {
      limit: "lim.float-unit",
      place: "FR",
      bands: { minor: "0.05", major: "0.10" },
      unit: "mm",
      basis: "maker",
      source: "manual 4.2",
    },
    replaces: [],
  },
  "car.same": { other: "car:d" },
  "car.same-occasion": { visits: ["visit:v", "visit:w"] },
  "visit.opened": opening("car:c"),
  "visit.dated": { on: "2026-02-03T10:00Z", replaces: [id] },
  "visit.odometer": { value: "61 240", unit: "km", replaces: [] },
  "visit.complaint": { text: "hums when warm", complaint: "hum", replaces: [] },
  "visit.sheet-added": { id: "brk", edition: "e1", label: "Brakes 1", blob: HASH_A },
  reply: {
    key: key("whl.float", "play"),
    value: {
      type: "reading",
      values: ["0.22", "0.20"],
      unit: "mm",
      gauge: { id: "dial-on-stub", resolution: 0.01, error: 0.02 },
    },
    replaces: [],
  },
  note: { text: "weld at the lower tube", point: "whl.seal", place: "FR", state: "w7-hang", replaces: [] },
  picture: {
    blob: HASH_A,
    thumb: HASH_B,
    type: "image/jpeg",
    width: 4,
    height: 3,
    fault: "whl.race",
    name: "seal",
    unreadable: false,
    replaces: [],
  },
  sound: {
    blob: HASH_C,
    type: "audio/webm;codecs=opus",
    ms: 8400,
    point: "whl.listen",
    place: "FR",
    state: "w7-hang",
    cut: true,
    replaces: [],
  },
  regrade: { fault: "whl.race", place: "FR", grade: "dangerous", reason: "grew on the road", replaces: [] },
  finding: {
    finding: "f1",
    found: {
      place: "RL",
      words: "wire tied round the lower arm",
      grade: "major",
      reason: "nothing holds the arm but the wire",
      mustStand: true,
      job: { words: "find out what it holds, mend it", hours: "1.5" },
    },
    replaces: [],
  },
  "visit.clock": { clock: { from: "2026-02-03T10:00+01:00", minutes: 40 }, replaces: [] },
  "caution.told": { caution: "cau.to-workshop" },
  "visit.closed": { assessment: HASH_A, engine: "1", replaces: [] },
  "visit.reopened": { reason: "the other side too", replaces: [] },
  "visit.judged-again": {
    sheets: [],
    common: HASH_B,
    limits: HASH_A,
    before: HASH_A,
    after: HASH_C,
    engine: "2",
  },
  "house.sheet": { id: "own", sheet: { id: "own", edition: "e1", label: "Ours", blob: HASH_A }, replaces: [] },
  "house.gauge": {
    id: "ours",
    gauge: {
      id: "ours",
      name: "Dial, red box",
      quantity: "length",
      unit: "mm",
      resolution: 0.01,
      error: 0.02,
      checked: "2025-11-30",
      tool: "dial",
    },
    replaces: [],
  },
  person: { person: { id: "anna", name: "Anna" }, replaces: [] },
  undo: { of: [id] },
  erase: { of: [{ id, replaced: [id] }, { id: "visit:v/w1/2/n2" }] },
};
