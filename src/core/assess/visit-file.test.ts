// [VF1]–[VF7] Visit files are read leniently, and what cannot be taken is told.
import { expect, test } from "vitest";
import { planned } from "../../../tests/support/small-car.js";
import { HUB_SHEET, JOINT_SHEET, SMALL_COMMON } from "../../../tests/support/small-sheets.js";
import { readVisitFile, tellProblem } from "./index.js";

const built = planned(SMALL_COMMON, [HUB_SHEET, JOINT_SHEET]);
const base = { format: "leadlamp-visit/1", at: "2026-05-04", who: "technician", sheets: ["hub"], car: {} };
const read = (more: object) => {
  const got = readVisitFile({ ...base, ...more }, built.common, built.sheets);
  if (!got.ok) throw new Error("no visit file");
  return got.value;
};
const reply = (one: object) => read({ replies: [one] });
const taken = (one: object) =>
  reply(one).input.replies.map((r) => [`${r.key.point}@${r.key.place}#${r.key.state}.${r.key.field}`, r.value]);
const told = (one: object) => reply(one).problems.map((p) => p.code);

test("[VF1] ids with - or _, words in any of three spellings", () => {
  const sound = ["hub.seen-twice@FR#w8-off.look", { type: "words", words: ["torn"] }];
  expect(taken({ point: "hub.seen_twice", place: "FR", state: "w8_off", word: "torn" })).toEqual([sound]);
  expect(taken({ point: "hub.seen-twice", place: "FR", state: "w8-off", words: ["torn"] })).toEqual([sound]);
  expect(taken({ point: "hub.rock", place: "FR", word: "just_felt" })).toMatchObject([
    ["hub.rock@FR#w7-hang.feel", { words: ["just-felt"] }],
  ]);
  expect(taken({ point: "hub.masked", yes: false })).toEqual([
    ["hub.masked@car#w4-road.by", { type: "words", words: ["no"] }],
  ]);
  expect(taken({ point: "hub.cap", place: "FR", word: "yes" })).toEqual([
    ["hub.cap@FR#w8-off.there", { type: "yes", yes: true }],
  ]);
  expect(taken({ point: "hub.grease", place: "FR", word: "milky" })).toMatchObject([
    ["hub.grease@FR#w8-off.look", { words: ["milky"] }],
  ]);
});

test("[VF2] no place means the car; a wider point is answered around the place named", () => {
  expect(taken({ point: "hub.noise", word: "hum" })).toMatchObject([["hub.noise@car#w4-road.heard", {}]]);
  expect(taken({ point: "hub.noise", place: "FR", word: "hum" })).toMatchObject([["hub.noise@car#w4-road.heard", {}]]);
  expect(taken({ point: "hub.spin", place: "fr", word: "rough" })).toMatchObject([["hub.spin@FR#w7-hang.feel", {}]]);
});

test("[VF2] a wider place answers every such point inside it, but nothing safety-critical", () => {
  expect(taken({ point: "hub.kind", place: "axle-F", word: "taper" }).map(([key]) => key)).toEqual([
    "hub.kind@FL#w1-cold.kind",
    "hub.kind@FR#w1-cold.kind",
  ]);
  expect(taken({ point: "hub.kind", word: "unit" })).toHaveLength(4);
  expect(told({ point: "hub.rock", place: "axle-F", word: "none" })).toEqual(["visit.place-kind"]);
  expect(taken({ point: "hub.rock", word: "none" })).toEqual([]);
});

test("[VF3] a state only where there are several, a field where none fits by itself", () => {
  expect(told({ point: "hub.seen-twice", place: "FR", word: "torn" })).toEqual(["visit.state-missing"]);
  expect(told({ point: "hub.seen-twice", place: "FR", state: "w7-hang", word: "torn" })).toEqual([
    "visit.unknown-state",
  ]);
  expect(taken({ point: "hub.float", place: "FR", word: "bright" })).toMatchObject([["hub.float@FR#w8-off.mark", {}]]);
  expect(taken({ point: "hub.float", place: "FR", value: 0.22 })).toMatchObject([
    ["hub.float@FR#w8-off.play", { values: ["0.22"], unit: "mm" }],
  ]);
  expect(told({ point: "hub.float", place: "FR", field: "colour", word: "bright" })).toEqual(["visit.unknown-field"]);
});

test("[VF4] values as numbers or as typed, in units of the trade", () => {
  const float = (more: object) => taken({ point: "hub.float", place: "FR", ...more })[0]?.[1];
  expect(float({ value: "0,22" })).toEqual({ type: "reading", values: ["0.22"], unit: "mm" });
  expect(float({ value: "4 thou" })).toMatchObject({ values: ["4"], unit: "[mil_i]" });
  expect(float({ value: "3/32", unit: "in" })).toMatchObject({ values: ["3/32"], unit: "[in_i]" });
  expect(float({ values: [0.1, "0.12"], gauge: { resolution: 0.001, error: 0.002 } })).toEqual({
    type: "reading",
    values: ["0.1", "0.12"],
    unit: "mm",
    gauge: { resolution: 0.001, error: 0.002 },
  });
  expect(taken({ point: "hub.heat", place: "FR", value: 64, unit: "°C" })).toMatchObject([
    ["hub.heat@FR#w4-road.reading", { unit: "Cel" }],
  ]);
  expect(taken({ point: "hub.wall", place: "FR", value: "no-echo" })).toMatchObject([
    ["hub.wall@FR#w8-off.thick", { type: "words", words: ["no-echo"] }],
  ]);
  expect(taken({ point: "hub.studs", place: "FR", count: 4 })).toMatchObject([
    ["hub.studs@FR#w8-off.count", { type: "count", count: 4 }],
  ]);
});

test("[VF4] non-answers cover the point; an unlisted reason is kept in words", () => {
  expect(taken({ point: "hub.float", place: "FR", nonAnswer: "not_reached", reason: "no lift" })).toEqual([
    ["hub.float@FR#w8-off.*", { type: "non-answer", nonAnswer: "not-reached", reason: "no-lift" }],
  ]);
  expect(
    taken({ point: "hub.float", place: "FR", nonAnswer: "could-not-tell", reason: "dog on the seat" }),
  ).toMatchObject([["hub.float@FR#w8-off.*", { reason: "other", words: "dog on the seat" }]]);
});

const FAULTY: readonly (readonly [string, unknown])[] = [
  ["visit.unknown-point", { point: "hub.nothing", word: "none" }],
  ["visit.unknown-place", { point: "hub.rock", place: "XX", word: "none" }],
  ["visit.unknown-word", { point: "hub.rock", place: "FR", word: "wobbly" }],
  ["visit.words-together", { point: "hub.grease", place: "FR", words: ["clean", "burnt"] }],
  ["visit.words-together", { point: "hub.rock", place: "FR", words: ["none", "bad"] }],
  ["visit.fits-no-field", { point: "hub.float", place: "FR", value: "loose" }],
  ["visit.reading", { point: "hub.pad", place: "FR", value: "thin" }],
  ["visit.reading", { point: "hub.pad", place: "FR", value: null }],
  ["visit.unit", { point: "hub.pad", place: "FR", value: 3, unit: "bar" }],
  ["visit.units-mixed", { point: "hub.disc", place: "FR", values: ["1 mm", "4 thou"] }],
  ["visit.gauge", { point: "hub.pad", place: "FR", value: 3, gauge: { resolution: -1, error: 0 } }],
  ["visit.count", { point: "hub.studs", place: "FR", count: 9 }],
  ["visit.one-answer", { point: "hub.rock", place: "FR" }],
  ["visit.one-answer", { point: "hub.rock", place: "FR", word: "none", value: 2 }],
  ["visit.non-answer", { point: "hub.rock", place: "FR", nonAnswer: "forgot" }],
  ["visit.reply-shape", "rock is fine"],
];
test.each(FAULTY)("[VF5] %s: set aside and told, the rest stays", (code, faulty) => {
  const got = read({ replies: [faulty, { point: "hub.noise", word: "none" }] });
  expect(got.input.replies.map((r) => r.key.point)).toEqual(["hub.noise"]);
  expect(got.problems.map((p) => [p.code, p.where.path])).toEqual([[code, "replies[0]"]]);
  expect(tellProblem(got.problems[0] ?? { code: "", where: {}, params: {} })).toMatch(/^replies\[0\]: .*\w/);
});

test("[VF5] facts, figures, places and sheets nobody knows are told each with its path", () => {
  const got = read({
    who: "thief",
    at: "yesterday",
    sheets: ["hub", "nix"],
    exposure: 3,
    odometer: "far",
    nextVisit: "soon",
    complaints: [7],
    car: {
      firstUsed: "old",
      seat: "middle",
      places: [{ add: { id: "FR", kind: "corner", in: "axle-F" } }, { remove: "RR" }, 4],
      facts: { brakes: "drum", wings: 2, first_used: "1994" },
      limits: [
        { limit: "lim.nix", value: 1, unit: "mm" },
        { limit: "lim.pad", value: "thin", unit: "mm" },
        { limit: "lim.pad", value: 2, unit: "bar" },
      ],
    },
  });
  expect(got.problems.map((p) => p.where.path).sort()).toEqual(
    [
      "at",
      "car.facts.brakes",
      "car.facts.wings",
      "car.firstUsed",
      "car.limits[0]",
      "car.limits[1]",
      "car.limits[2]",
      "car.places[0]",
      "car.places[2]",
      "car.seat",
      "complaints[0]",
      "exposure",
      "nextVisit",
      "odometer",
      "sheets[1]",
      "who",
    ].sort(),
  );
  expect(got.input.car).toMatchObject({ places: [{ remove: "RR" }], facts: { "first-used": 1994 }, limits: [] });
  for (const p of got.problems) expect(tellProblem(p)).not.toContain(p.code);
});

test("the car as given: facts, a maker's figure in inches, a place more", () => {
  const { input, problems } = read({
    odometer: { value: 48210, unit: "mi" },
    exposure: 1,
    nextVisit: "2026-11-01",
    car: {
      firstUsed: 1994,
      country: "GB",
      seat: "right",
      places: [{ add: { id: "FL-upper", kind: "joint", in: "FL" } }],
      facts: { brakes: "outboard", track: "yes" },
      limits: [
        { limit: "lim.float_taper", place: "FR", value: "0.008", unit: "in", basis: "maker", source: "book" },
        { limit: "lim.pad", bands: { minor: 4, major: "3" }, unit: "mm" },
      ],
    },
    replies: [{ point: "hub.joint", place: "FL-upper", word: "clear" }],
  });
  expect(problems).toEqual([]);
  expect(input).toMatchObject({ odometer: { value: 48210, unit: "[mi_i]" }, exposure: 1, nextVisit: "2026-11-01" });
  expect(input.car).toMatchObject({ firstUsed: "1994", facts: { brakes: "outboard", track: true } });
  expect(input.car.limits).toEqual([
    { limit: "lim.float-taper", place: "FR", value: "0.008", unit: "[in_i]", basis: "maker", source: "book" },
    { limit: "lim.pad", bands: { minor: "4", major: "3" }, unit: "mm", basis: "maker" },
  ]);
  expect(input.replies.map((r) => r.key.place)).toEqual(["FL-upper"]);
});

test("[VF6] two replies on one key both stand, and earlier visits are read alike", () => {
  const got = read({
    replies: [
      { point: "hub.spin", place: "FR", word: "smooth" },
      { point: "hub.spin", place: "FR", word: "grumble" },
    ],
    earlier: [
      {
        at: "2025-05-01",
        odometer: { value: 46000, unit: "km" },
        replies: [
          { point: "hub.pad", place: "FR", value: 6.1 },
          { point: "hub.pad", place: "XX", value: 6 },
        ],
      },
    ],
  });
  expect(got.input.replies.map((r) => r.id)).toEqual(["replies[0]", "replies[1]"]);
  expect(got.input.earlier).toMatchObject([{ at: "2025-05-01", replies: [{ key: { point: "hub.pad" } }] }]);
  expect(got.problems.map((p) => p.where.path)).toEqual(["earlier[0].replies[1]"]);
});

test("[VF7] complaints by id or in the owner's words", () => {
  const complaint = { name: "Hum", says: ["humming"], suspects: {} };
  const texts = {
    language: "en",
    places: {},
    states: {},
    cautions: {},
    gates: {},
    gauges: {},
    access: {},
    facts: {},
    complaints: { "sym.hum": complaint },
  };
  const got = readVisitFile(
    { ...base, complaints: ["It is humming at speed", "sym.hum"] },
    built.common,
    built.sheets,
    texts,
  );
  expect(got.ok && got.value.input.complaints).toEqual(["It is humming at speed", "sym.hum"]);
});

test.each([[{}], [[]], ["text"], [null], [{ format: "leadlamp-visit/2" }]])("%j is no visit file", (data) => {
  const got = readVisitFile(data, built.common, built.sheets);
  expect(!got.ok && got.problems.map((p) => p.code)).toEqual(["visit.format"]);
});
