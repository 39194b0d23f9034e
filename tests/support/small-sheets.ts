/** A small invented car and two short check sheets as objects. No trade knowledge: figures fit the tests. */
import type { BareCommon, BareSheet, Complaint, Field, Gate, Limit, Point, Rule } from "../../src/core/sheet/run.js";

const corner = (id: string, axle: string, side: string, opposite: string) => ({
  id,
  kind: "corner",
  in: axle,
  relations: { side, opposite },
});
const point = (
  id: string,
  place: string,
  state: string,
  fields: Record<string, Field>,
  more: Partial<Point> = {},
): Point => ({
  id,
  place,
  states: [state],
  fields,
  who: ["technician", "buyer", "owner"],
  ...more,
});
const word = (...words: string[]): Field => ({ words });
const length: Field = { quantity: "length", unit: "mm", window: [0, 50] };
const limit = (
  id: string,
  of: string,
  direction: Limit["direction"],
  bands: Limit["bands"],
  more: Partial<Limit> = {},
): Limit => ({
  id,
  of,
  quantity: "length",
  unit: "mm",
  direction,
  bands,
  basis: "practice",
  source: "made up for tests",
  aggregate: "max",
  class: "corner",
  ...more,
});
/** A finding; what a test leaves out is filled in. */
export const rule = (
  id: string,
  scope: string,
  fault: string,
  grade: Rule["grade"],
  when: string,
  more: Partial<Rule> = {},
): Rule => ({
  id,
  scope,
  effect: "finding",
  fault,
  grade,
  when,
  sure: "likely",
  consequence: 2,
  likelihood: "C",
  "must-stand": false,
  ...more,
});
const effect = (id: string, scope: string, does: Rule["effect"], when: string, more: Partial<Rule> = {}): Rule => ({
  id,
  scope,
  effect: does,
  when,
  sure: "certain",
  ...more,
});

const GATES: readonly Gate[] = [
  {
    id: "gate.no-road",
    guards: "w4-road",
    starts: "not-cleared",
    set: ["hub.nuts", "brk.pedal"],
    trips: ['places("corner").exists(c, c.hub.rock == "bad")'],
    clears: ['places("corner").all(c, c.hub.nuts == "tight")'],
    cautions: ["cau.stop"],
  },
  { id: "gate.no-drive-away", guards: "drive-away", starts: "cleared", trips: [], cautions: ["cau.dont-drive"] },
  {
    id: "gate.no-touch",
    guards: "touch",
    starts: "cleared",
    trips: ['places("corner").exists(c, band(c.hub.heat) >= advisory)'],
    cautions: ["cau.hot"],
  },
];

export const SMALL_COMMON: BareCommon = {
  format: "leadlamp-common/1",
  places: [
    { id: "car", kind: "car", relations: { left: ["FL", "RL"], right: ["FR", "RR"], "right-side": "side-R" } },
    { id: "axle-F", kind: "axle", in: "car" },
    { id: "axle-R", kind: "axle", in: "car" },
    { id: "side-L", kind: "side", in: "car", relations: { opposite: "side-R" } },
    { id: "side-R", kind: "side", in: "car", relations: { opposite: "side-L" } },
    corner("FL", "axle-F", "side-L", "FR"),
    corner("FR", "axle-F", "side-R", "FL"),
    corner("RL", "axle-R", "side-L", "RR"),
    corner("RR", "axle-R", "side-R", "RL"),
    { id: "FR-upper", kind: "joint", in: "FR" },
    { id: "FR-lower", kind: "joint", in: "FR" },
  ],
  states: [
    { id: "w1-cold", order: 1, lifted: false, plan: "body" },
    { id: "w4-road", order: 4, lifted: false, plan: "body" },
    { id: "w7-hang", order: 7, lifted: true, plan: "chassis" },
    { id: "w8-off", order: 8, lifted: true, plan: "chassis" },
  ],
  gauges: [
    { id: "dial", quantity: "length", unit: "mm", resolution: 0.01, error: 0.01, basis: "practice", source: "made up" },
    {
      id: "pad-gauge",
      quantity: "length",
      unit: "mm",
      resolution: 0.1,
      error: 0.1,
      basis: "practice",
      source: "made up",
    },
    {
      id: "thermometer",
      quantity: "temperature",
      unit: "Cel",
      resolution: 1,
      error: 3,
      basis: "practice",
      source: "made up",
    },
  ],
  aids: ["hand"],
  cautions: [
    { id: "cau.dont-drive", signal: "danger" },
    { id: "cau.stop", signal: "danger" },
    { id: "cau.to-workshop", signal: "warning" },
    { id: "cau.hot", signal: "caution" },
  ],
  gates: [...GATES],
  access: [],
  facts: [
    { id: "brakes", kind: "word", words: ["outboard", "inboard"] },
    { id: "country", kind: "word", words: ["gb", "other"] },
    { id: "first-used", kind: "year" },
    { id: "track", kind: "yes" },
  ],
  rules: [
    effect("x.r01", "corner", { raise: "hub.play" }, 'found("hub.race") && joi.boot == "split"'),
    effect(
      "x.r02",
      "car",
      { order: { before: "job.joi.boot", after: "job.hub.bearing" } },
      'places("corner").exists(c, c.joi.boot == "split")',
    ),
  ],
};

export const SMALL_COMPLAINTS: readonly Complaint[] = [
  { id: "sym.hum", suspects: [{ suspect: "hub", weight: 3 }], points: ["hub.spin", "hub.noise"] },
];

export const HUB_SHEET: BareSheet = {
  format: "leadlamp-sheet/1",
  id: "hub",
  label: "Hubs 1",
  points: [
    point("hub.nuts", "corner", "w1-cold", { fixing: word("tight", "loose") }, { "safety-critical": true }),
    point("hub.seen-twice", "corner", "w1-cold", { look: word("sound", "torn") }, { states: ["w1-cold", "w8-off"] }),
    point("hub.noise", "car", "w4-road", { heard: word("none", "hum", "loud") }),
    point("hub.bend", "car", "w4-road", { louder: word("left-bend", "right-bend", "same") }),
    point("hub.masked", "car", "w4-road", { by: word("no", "exhaust") }),
    point(
      "hub.air",
      "car",
      "w4-road",
      { reading: { quantity: "temperature", unit: "Cel", window: [-20, 50] } },
      { tool: "thermometer" },
    ),
    point(
      "hub.heat",
      "corner",
      "w4-road",
      { reading: { quantity: "temperature", unit: "Cel", window: [-20, 250] } },
      { tool: "thermometer" },
    ),
    point("hub.kind", "corner", "w1-cold", { kind: word("taper", "unit", "twin") }, { who: ["technician"] }),
    point(
      "hub.rock",
      "corner",
      "w7-hang",
      { feel: word("none", "just-felt", "clear", "bad") },
      { "safety-critical": true },
    ),
    point("hub.spin", "corner", "w7-hang", { feel: word("smooth", "grumble", "rough") }),
    point("hub.listen", "corner", "w7-hang", { heard: word("quiet", "grumble") }),
    point(
      "hub.float",
      "corner",
      "w8-off",
      { play: length, mark: { words: ["bright", "dull"], optional: true } },
      {
        tool: "dial",
        "set-up-error": 0.02,
        who: ["technician"],
        "asked-when": 'hub.rock in ["just-felt", "clear", "bad"]',
      },
    ),
    point("hub.pad", "corner", "w8-off", { left: length }, { tool: "pad-gauge" }),
    point("hub.disc", "corner", "w8-off", { thick: { ...length, shots: 4 } }, { tool: "dial" }),
    point("hub.wall", "corner", "w8-off", { thick: { ...length, results: ["no-echo"] } }, { tool: "dial" }),
    point("hub.probe", "car", "w8-off", { kind: word("single", "twin") }),
    point("hub.grease", "corner", "w8-off", {
      look: { words: ["clean", "milky", "burnt"], several: true, exclusive: ["clean"] },
    }),
    point("hub.studs", "corner", "w8-off", { count: { count: { from: 0, to: 6 } } }),
    point("hub.cap", "corner", "w8-off", { there: { yes: true } }, { "same-entry": "hub.studs" }),
    point("hub.joint", "joint", "w7-hang", { feel: word("none", "clear") }),
  ],
  limits: [
    limit(
      "lim.float-taper",
      "hub.float",
      "over",
      { advisory: 0.1, minor: 0.13, major: 0.25, dangerous: 0.8 },
      { applies: 'hub.kind == "taper"' },
    ),
    limit(
      "lim.float-unit",
      "hub.float",
      "over",
      { minor: 0.05, major: 0.1, dangerous: 0.5 },
      { applies: 'hub.kind in ["unit", "twin"]' },
    ),
    limit("lim.float-none", "hub.float", "under", { major: 0.01 }, { applies: 'hub.kind == "taper"' }),
    limit("lim.pad", "hub.pad", "under", { major: 3, dangerous: 1.5 }, { aggregate: "min" }),
    limit("lim.disc", "hub.disc", "over", { minor: 0.02, major: 0.06 }, { aggregate: "spread" }),
    limit("lim.wall", "hub.wall", "under", { major: 1, dangerous: 0.7 }, { aggregate: "min" }),
    limit("lim.heat", "hub.heat", "at-or-over", { advisory: 50, major: 90 }, { quantity: "temperature", unit: "Cel" }),
    limit(
      "lim.rise",
      "hub.heat_rise",
      "over",
      { minor: 20, major: 40 },
      { quantity: "temperature_difference", unit: "K" },
    ),
  ],
  derived: [
    {
      id: "hub.heat_rise",
      place: "corner",
      quantity: "temperature_difference",
      unit: "K",
      formula: "hub.heat - hub.air",
    },
    { id: "hub.play", place: "corner", quantity: "length", unit: "mm", prefer: ["hub.float", "hub.wall"] },
  ],
  rules: [
    rule("hub.r01", "corner", "hub.race", "major", 'hub.rock == "none" && hub.spin in ["grumble", "rough"]', {
      supports: ['hub.listen == "grumble"'],
      jobs: ["job.hub.bearing"],
      cautions: ["cau.to-workshop"],
      opens: ["hub.spin@opposite", "joi.boot"],
    }),
    rule("hub.r02", "car", "hub.race", "minor", 'hub.noise in ["hum", "loud"] && hub.bend == "left-bend"', {
      at: { each: "corner", where: 'hub.spin in ["grumble", "rough"]', else: "right-side" },
      worse: { grade: "major", when: 'hub.noise == "loud"' },
      sure: "possible",
    }),
    rule("hub.r03", "corner", "hub.play", { "limit-of": "hub.float" }, "band(hub.float) >= advisory", {
      jobs: ["job.hub.adjust"],
    }),
    rule("hub.r04", "corner", "hub.pad-thin", { "limit-of": "hub.pad" }, "band(hub.pad) >= major", {
      jobs: ["job.hub.pads"],
      consequence: 1,
    }),
    rule("hub.r05", "corner", "hub.loose", "dangerous", 'hub.rock == "bad"', {
      cautions: ["cau.dont-drive"],
      consequence: 1,
      likelihood: "A",
      "must-stand": true,
      jobs: ["job.hub.find"],
    }),
    rule(
      "hub.r06",
      "corner",
      "hub.play",
      { "limit-of": "hub.float", "at-least": "minor" },
      'hub.rock == "clear" && hub.spin == "smooth"',
      { jobs: ["job.hub.adjust"] },
    ),
    rule("hub.r07", "corner", "hub.disc-waves", { "limit-of": "hub.disc" }, "band(hub.disc) >= minor"),
    rule("hub.r08", "corner", "hub.thin", { "limit-of": "hub.wall" }, "band(hub.wall) >= major"),
    effect("hub.r09", "corner", { "discard-reading": "hub.wall" }, 'hub.probe == "single" && band(hub.wall) >= major'),
    effect(
      "hub.r10",
      "corner",
      { raise: "hub.play" },
      "hub.float >= 2.0 * opposite.hub.float && clearly_more(hub.float, opposite.hub.float)",
    ),
    effect("hub.r11", "car", { "not-checked": ["hub.noise"] }, 'hub.masked == "exhaust" && hub.noise == "none"'),
    effect("hub.r12", "corner", { "lower-sure": ["hub.noise"] }, 'hub.masked == "exhaust"'),
    effect("hub.r13", "corner", { open: ["hub.grease", "hub.listen@opposite"] }, 'hub.spin == "rough"'),
    rule("hub.r14", "corner", "hub.hot", "minor", "band(hub.heat_rise) >= minor"),
    rule("hub.r15", "corner", "hub.water", "minor", '"milky" in hub.grease'),
    rule("hub.r16", "corner", "hub.stud-missing", "major", "hub.studs < 4"),
    rule("hub.r17", "axle", "hub.worn-joint", "major", 'places("joint").exists(j, j.hub.joint == "clear")', {
      at: "axle",
    }),
    rule("hub.r18", "corner", "hub.brake-side", "minor", 'hub.rock == "clear" && car.brakes == "outboard"'),
    rule("hub.r19", "corner", "hub.unproven", "minor", 'hub.rock == "just-felt" && unanswered(hub.float)', {
      provisional: true,
    }),
    rule("hub.r20", "corner", "hub.torn", "minor", 'hub.seen_twice == "torn"'),
    rule("hub.r21", "corner", "hub.worn-by-value", "minor", "band(hub.play) >= minor"),
  ],
  jobs: [
    { id: "job.hub.bearing", place: "corner", access: [], minutes: [60, 90, 120], minutesBasis: "practice" },
    { id: "job.hub.adjust", place: "corner", access: [], minutes: [20, 30, 40], minutesBasis: "practice" },
    { id: "job.hub.pads", place: "axle", access: [], minutes: [20, 30, 40], minutesBasis: "practice" },
    { id: "job.hub.find", place: "corner", access: [], minutes: [20, 30, 40], minutesBasis: "practice" },
  ],
  gates: [],
  nextLooks: [{ grade: "minor", km: 3000, months: 6 }],
};
HUB_SHEET.limits.push(limit("lim.play", "hub.play", "over", { minor: 0.3 }));

/** A second sheet, for rules across sheets. */
export const JOINT_SHEET: BareSheet = {
  format: "leadlamp-sheet/1",
  id: "joi",
  label: "Joints 1",
  points: [point("joi.boot", "corner", "w8-off", { look: word("sound", "split") })],
  limits: [],
  derived: [],
  rules: [rule("joi.r01", "corner", "joi.boot", "minor", 'joi.boot == "split"', { jobs: ["job.joi.boot"] })],
  jobs: [{ id: "job.joi.boot", place: "corner", access: [], minutes: [20, 30, 40], minutesBasis: "practice" }],
  gates: [],
  nextLooks: [],
};
