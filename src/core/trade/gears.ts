/** Helical gears on parallel shafts: does a replacement mesh with its mate in the old housing, and what would. */
import { refusal } from "./calculate.js";
import { row } from "./contract.js";
import { practice, published } from "./sources.js";

const TEXTBOOK = published(
  "Gear design textbook, helical gears",
  "module, centre distance, hand",
  "with a stock gear catalogue; symbols as in ISO 21771 from memory",
);
const MM_PER_INCH = 25.4;
/** Same module within this share. */
const MODULE_SHARE = 0.005;
/** Same helix within this, degrees: a screening only, the maker's lead or the contact pattern decides. */
const HELIX_DEGREES = 0.3;
const PRESSURE_DEGREES = 0.25;
/** Centre distance that play or a small profile shift takes up, mm. */
const CENTRE_MM = 0.05;
const SCREENING = practice(
  "±0.5 % module, ±0.3° helix, ±0.05 mm centre distance: a screening, the maker's data decide",
);

const teeth = { kind: "number", from: 5, to: 400, whole: true } as const;
const own = { ...teeth, name: "teeth", says: "Teeth" } as const;
const mate = { ...teeth, name: "mate_teeth", says: "Teeth of the mate" } as const;
const module_ = { name: "module", says: "Normal module", kind: "length", over: 0, to: 50 } as const;
const helix = { name: "helix", says: "Helix angle", kind: "angle", from: 0, under: 60 } as const;
const pressure = { name: "pressure_angle", says: "Normal pressure angle", kind: "angle", over: 5, under: 45 } as const;
const HANDS = ["left", "right", "straight"] as const;
const hand = { name: "hand", says: "Hand of the helix", kind: "word", words: HANDS } as const;
const centre = { name: "centre", says: "Centre distance of the housing", kind: "length", over: 0, to: 2000 } as const;
const ofMate = <A extends { readonly name: string; readonly says: string }>(one: A) => ({
  ...one,
  name: `mate_${one.name}` as const,
  says: `${one.says} of the mate`,
});

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const degreesOf = (value: number): number => (value * 180) / Math.PI;
const distance = (m: number, z1: number, z2: number, degrees: number): number =>
  (m * (z1 + z2)) / (2 * Math.cos(radians(degrees)));

const VERDICTS = [
  "meshes",
  "other-module",
  "other-pressure-angle",
  "other-helix",
  "same-hand",
  "other-centre-distance",
] as const;

export const GEARS = [
  row({
    name: "module_of_pitch",
    says: "Module of a diametral pitch",
    arguments: [{ name: "diametral_pitch", says: "Diametral pitch, teeth an inch", kind: "number", over: 0, to: 100 }],
    gives: "length",
    formula: "m = 25.4 / P",
    source: TEXTBOOK,
    work: (pitch) => MM_PER_INCH / pitch,
  }),
  row({
    name: "transverse_module",
    says: "Transverse module",
    arguments: [module_, helix],
    gives: "length",
    formula: "mₜ = mₙ / cos β",
    source: TEXTBOOK,
    work: (m, degrees) => m / Math.cos(radians(degrees)),
  }),
  row({
    name: "transverse_pressure_angle",
    says: "Transverse pressure angle",
    arguments: [pressure, helix],
    gives: "angle",
    formula: "αₜ = atan(tan αₙ / cos β)",
    source: TEXTBOOK,
    work: (normal, degrees) => degreesOf(Math.atan(Math.tan(radians(normal)) / Math.cos(radians(degrees)))),
  }),
  row({
    name: "gear_pitch_diameter",
    says: "Pitch diameter",
    arguments: [module_, own, helix],
    gives: "length",
    formula: "d = mₙ z / cos β",
    source: TEXTBOOK,
    work: (m, z, degrees) => (m * z) / Math.cos(radians(degrees)),
  }),
  row({
    name: "gear_outside_diameter",
    says: "Outside diameter without profile shift",
    arguments: [module_, own, helix],
    gives: "length",
    formula: "dₐ = d + 2 mₙ",
    source: TEXTBOOK,
    work: (m, z, degrees) => (m * z) / Math.cos(radians(degrees)) + 2 * m,
  }),
  row({
    name: "gear_lead",
    says: "Lead: how far along one whole turn of the tooth goes",
    arguments: [module_, own, { name: "helix", says: "Helix angle", kind: "angle", over: 0, under: 60 }],
    gives: "length",
    formula: "L = π d / tan β",
    source: TEXTBOOK,
    work: (m, z, degrees) => (Math.PI * m * z) / Math.sin(radians(degrees)),
  }),
  row({
    name: "module_of_loose_gear",
    says: "Module of a loose gear from its outside diameter",
    arguments: [{ name: "outside", says: "Outside diameter", kind: "length", over: 0, to: 2000 }, own, helix],
    gives: "length",
    formula: "mₙ = dₐ / (z / cos β + 2), without profile shift",
    source: TEXTBOOK,
    work: (outside, z, degrees) => outside / (z / Math.cos(radians(degrees)) + 2),
  }),
  row({
    name: "gear_centre_distance",
    says: "Centre distance of two gears",
    arguments: [module_, own, mate, helix],
    gives: "length",
    formula: "a = mₙ (z₁ + z₂) / (2 cos β)",
    source: TEXTBOOK,
    work: distance,
  }),
  row({
    name: "helix_for_centre_distance",
    says: "Helix angle these teeth need in this housing",
    arguments: [module_, own, mate, centre],
    gives: "angle",
    formula: "β = acos(mₙ (z₁ + z₂) / (2 a))",
    source: TEXTBOOK,
    work: (m, z1, z2, a) => {
      const cosine = (m * (z1 + z2)) / (2 * a);
      return cosine > 1
        ? refusal("gears-too-large", { argument: "centre", least: (m * (z1 + z2)) / 2 })
        : degreesOf(Math.acos(cosine));
    },
  }),
  row({
    name: "gears_mesh",
    says: "Whether a gear meshes with its mate in this housing",
    arguments: [
      module_,
      own,
      pressure,
      helix,
      hand,
      ofMate(module_),
      mate,
      ofMate(pressure),
      ofMate(helix),
      ofMate(hand),
      centre,
    ],
    gives: "word",
    words: VERDICTS,
    formula: "same module and pressure angle, same helix with opposite hands, a = mₙ (z₁ + z₂) / (2 cos β)",
    source: SCREENING,
    work: (m, z1, alpha, beta, side, mateM, z2, mateAlpha, mateBeta, mateSide, a): (typeof VERDICTS)[number] => {
      if (Math.abs(m - mateM) > MODULE_SHARE * m) return "other-module";
      if (Math.abs(alpha - mateAlpha) > PRESSURE_DEGREES) return "other-pressure-angle";
      if (Math.abs(beta - mateBeta) > HELIX_DEGREES) return "other-helix";
      const isOpposite = side === "straight" ? mateSide === "straight" : mateSide !== "straight" && side !== mateSide;
      if (!isOpposite) return "same-hand";
      return Math.abs(distance(m, z1, z2, beta) - a) > CENTRE_MM ? "other-centre-distance" : "meshes";
    },
  }),
  row({
    name: "mate_teeth_needed",
    says: "Teeth the mate must have for this gear in this housing",
    arguments: [module_, own, helix, centre],
    gives: "number",
    formula: "z₂ = 2 a cos β / mₙ − z₁, a whole number within the play of the centre distance",
    source: SCREENING,
    work: (m, z1, degrees, a) => {
      const exact = (2 * a * Math.cos(radians(degrees))) / m - z1;
      const whole = Math.round(exact);
      const isWhole = Math.abs(distance(m, z1, whole, degrees) - a) <= CENTRE_MM;
      return whole >= teeth.from && isWhole
        ? whole
        : refusal("no-mate", { argument: "centre", found: exact.toFixed(2) });
    },
  }),
  row({
    name: "backlash_at_pitch",
    says: "Backlash at the pitch circle from a reading at another radius",
    arguments: [
      { name: "reading", says: "Reading", kind: "length", from: 0, to: 10 },
      { name: "radius", says: "Radius of the reading", kind: "length", over: 0, to: 1000 },
      { name: "pitch_radius", says: "Pitch radius", kind: "length", over: 0, to: 1000 },
    ],
    gives: "length",
    formula: "j = reading · r(pitch) / r(reading), along the circle",
    source: TEXTBOOK,
    work: (reading, radius, pitchRadius) => (reading * pitchRadius) / radius,
  }),
];
